#include "estimate/looks.hpp"

#include "season/species.hpp"

#include <algorithm>
#include <optional>
#include <set>

namespace wetspell {

namespace {

bool of_breeding(const Choice& form) {
  return form.is(SeenAs::egg_masses) || form.is(SeenAs::larvae);
}

bool counted(const CountedLife& life) {
  return life.by_first || life.by_second || life.by_both;
}

bool any_seen(const CountedLife& life) {
  return life.by_first.value_or(0) > 0 || life.by_second.value_or(0) > 0 || life.by_both.value_or(0) > 0;
}

/// The days of the year at which egg masses or larvae of one species are to be expected.
class Expected {
public:
  Expected(const Season& season, std::int32_t species) {
    const std::string& name = season.species_names[static_cast<std::size_t>(species)];
    for (const Species& each : season.species)
      if (each.name == name && (!each.seen_as.chosen() || of_breeding(each.seen_as)))
        rows_.push_back(&each);
  }

  [[nodiscard]] bool on(double day) const {
    return rows_.empty() || std::any_of(rows_.begin(), rows_.end(), [&](const Species* each) {
             return within_days(day, each->first_day, each->last_day);
           });
  }

private:
  std::vector<const Species*> rows_;
};

bool seen_dry(const PoolHistory& pool, double day) {
  bool dry = false;
  for (const CountedVisit& visit : pool.visits)
    if (visit.day == day && visit.wet) {
      if (*visit.wet)
        return false;
      dry = true;
    }
  return dry;
}

} // namespace

std::vector<std::int32_t> species_looked_for(const SeasonHistory& history) {
  std::set<std::int32_t> found;
  for (const PoolHistory& pool : history.pools)
    for (const CountedLife& life : pool.life)
      if (of_breeding(life.seen_as) && counted(life))
        found.insert(life.species);
  return {found.begin(), found.end()};
}

std::vector<Looks> breeding_looks(const SeasonHistory& history, std::int32_t species) {
  const Expected expected(history.season, species);
  std::vector<Looks> all;
  all.reserve(history.pools.size());
  for (const PoolHistory& pool : history.pools) {
    Looks looks;
    for (auto from = pool.life.begin(); from != pool.life.end();) {
      const double day = from->day;
      const auto to =
          std::find_if(from, pool.life.end(), [day](const CountedLife& life) { return life.day != day; });
      const bool found = std::any_of(from, to, [&](const CountedLife& life) {
        return life.species == species && of_breeding(life.seen_as) && any_seen(life);
      });
      const bool looked = std::any_of(from, to, counted);
      if (found || (looked && expected.on(day) && !seen_dry(pool, day))) {
        ++looks.looks;
        looks.found += found;
      }
      from = to;
    }
    all.push_back(looks);
  }
  return all;
}

} // namespace wetspell
