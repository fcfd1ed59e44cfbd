#include "estimate/pairs.hpp"

#include <utility>

namespace wetspell {

std::vector<VisitPair> visit_pairs(const SeasonHistory& history) {
  std::vector<VisitPair> pairs;
  const auto person = [&](const CountedVisit& visit) { return history.season.visits[visit.visit].person; };
  for (const PoolHistory& pool : history.pools)
    for (auto one = pool.visits.begin(); one != pool.visits.end(); ++one)
      for (auto other = one + 1; other != pool.visits.end() && other->day == one->day; ++other) {
        const Ref here = person(*one);
        const Ref there = person(*other);
        if (!here.known() || !there.known() || here == there)
          continue;
        VisitPair pair{here.index, there.index, one->day, &*one, &*other};
        if (there.index < here.index) {
          std::swap(pair.first_person, pair.second_person);
          std::swap(pair.first, pair.second);
        }
        pairs.push_back(pair);
      }
  return pairs;
}

} // namespace wetspell
