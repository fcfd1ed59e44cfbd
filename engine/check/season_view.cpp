#include "check/rule.hpp"

#include "season/words.hpp"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace wetspell {

namespace {

/// Records of one owner, gathered before sorting: sorting small keys beats sorting through wide records.
struct Timed {
  std::uint32_t owner;
  std::uint32_t record;
  double day;
  double start; ///< fraction of the day; 0 where not known
  double depth; ///< of a visit, where measured

  bool operator<(const Timed& other) const {
    return std::tie(owner, day, start, record) < std::tie(other.owner, other.day, other.start, other.record);
  }
};

/// The records sorted by owner and time; `ends` becomes where each owner's begin, and one behind the last.
std::vector<Timed> sorted_by_owner(const std::vector<Timed>& all, std::size_t owners,
                                   std::vector<std::uint32_t>& ends) {
  // Counting the owners first keeps the sorts short: one owner's records at a time.
  ends.assign(owners + 1, 0);
  for (const Timed& one : all)
    ++ends[one.owner + 1];
  for (std::size_t i = 1; i < ends.size(); ++i)
    ends[i] += ends[i - 1];
  std::vector<Timed> sorted(all.size());
  auto next = ends;
  for (const Timed& one : all)
    sorted[next[one.owner]++] = one;
  for (std::size_t owner = 0; owner < owners; ++owner) {
    const auto first = sorted.begin() + ends[owner], last = sorted.begin() + ends[owner + 1];
    if (!std::is_sorted(first, last))
      std::sort(first, last);
  }
  return sorted;
}

/// The records of each owner in time order; `use(before, now, after)` is called for each with its neighbours.
template <class Use>
std::vector<std::vector<std::uint32_t>> in_time_order(const std::vector<Timed>& all, std::size_t owners,
                                                      Use use) {
  std::vector<std::uint32_t> ends;
  const auto sorted = sorted_by_owner(all, owners, ends);
  std::vector<std::vector<std::uint32_t>> lists(owners);
  for (std::size_t owner = 0; owner < owners; ++owner) {
    lists[owner].reserve(ends[owner + 1] - ends[owner]);
    for (std::uint32_t i = ends[owner]; i < ends[owner + 1]; ++i) {
      lists[owner].push_back(sorted[i].record);
      if (i > ends[owner] && i + 1 < ends[owner + 1])
        use(sorted[i - 1], sorted[i], sorted[i + 1]);
    }
  }
  return lists;
}

std::vector<std::vector<std::uint32_t>> in_time_order(const std::vector<Timed>& all, std::size_t owners) {
  return in_time_order(all, owners, [](const Timed&, const Timed&, const Timed&) {});
}

/// Whether a depth could be a slip: far from both neighbours in the same direction, in proportion and in
/// inches.
OutOfLine line_of(double before, double now, double after) {
  constexpr double factor = 1.8, inches = 0.15; // m; a slip by 2.54 or 10 is well beyond
  if (now > factor * std::max(before, after) && now > std::max(before, after) + inches)
    return OutOfLine::above;
  if (factor * now < std::min(before, after) && now + inches < std::min(before, after))
    return OutOfLine::below;
  return OutOfLine::no;
}

Compared compared_of(const Visit& visit, const DerivedVisit& derived) {
  return {visit.date.si, derived.depth ? derived.depth->value : Quantity::no_value,
          visit.fill.has_value() ? visit.fill.si : Quantity::no_value,
          derived.temperature ? derived.temperature->mean : Quantity::no_value};
}

/// For each record another one with the same code (case and blanks aside), or nowhere.
template <class Records> std::vector<std::uint32_t> twins(const Records& records) {
  std::vector<std::uint32_t> twin(records.size(), SeasonView::nowhere);
  std::unordered_map<std::string, std::uint32_t> first;
  std::string buffer;
  for (std::uint32_t i = 0; i < records.size(); ++i) {
    const auto code = plain_code(records[i].code, buffer);
    if (code.empty())
      continue;
    if (const auto [known, is_new] = first.try_emplace(std::string(code), i); !is_new) {
      twin[i] = known->second;
      twin[known->second] = i;
    }
  }
  return twin;
}

} // namespace

SeasonView::SeasonView(const Season& s) : season(s), span(season_span(s)) {
  std::vector<Timed> by_pool, by_person, life;
  derived.reserve(s.visits.size());
  signs.reserve(s.visits.size());
  compared.reserve(s.visits.size());
  by_pool.reserve(s.visits.size());
  by_person.reserve(s.visits.size());
  for (std::uint32_t i = 0; i < s.visits.size(); ++i) {
    const Visit& v = s.visits[i];
    derived.push_back(derive(s, v));
    signs.push_back(signs_of_readings(s, v));
    compared.push_back(compared_of(v, derived.back()));
    if (!v.date.has_value())
      continue;
    const double start = v.start.has_value() ? v.start.si : 0;
    if (v.pool.known())
      by_pool.push_back({static_cast<std::uint32_t>(v.pool.index), i, v.date.si, start,
                         v.depth.has_value() ? v.depth.si : Quantity::no_value});
    if (v.person.known())
      by_person.push_back({static_cast<std::uint32_t>(v.person.index), i, v.date.si, start, 0});
  }
  for (std::uint32_t i = 0; i < s.life.size(); ++i)
    if (s.life[i].date.has_value() && s.life[i].pool.known())
      life.push_back({static_cast<std::uint32_t>(s.life[i].pool.index), i, s.life[i].date.si, 0, 0});
  pool_visits = in_time_order(by_pool, s.pools.size(), [&](const Timed& a, const Timed& now, const Timed& b) {
    signs[now.record].depth_line = line_of(a.depth, now.depth, b.depth); // not a number compares as false
  });
  person_visits = in_time_order(by_person, s.people.size());
  pool_life = in_time_order(life, s.pools.size());
  pool_twin = twins(s.pools);
  person_twin = twins(s.people);
  for (const Pool& pool : s.pools)
    pool_codes.add(pool.code);
  for (const Person& person : s.people) {
    person_codes.add(person.code);
    person_codes.add(person.name);
  }
  place_in_pool.assign(s.visits.size(), nowhere);
  for (const auto& visits : pool_visits)
    for (std::uint32_t i = 0; i < visits.size(); ++i)
      place_in_pool[visits[i]] = i;
}

const Visit* SeasonView::before(const Visit& visit) const {
  const std::uint32_t at = place_in_pool[index(visit)];
  if (at == nowhere || at == 0)
    return nullptr;
  return &season.visits[pool_visits[static_cast<std::size_t>(visit.pool.index)][at - 1]];
}

const Visit* SeasonView::after(const Visit& visit) const {
  const std::uint32_t at = place_in_pool[index(visit)];
  if (at == nowhere)
    return nullptr;
  const auto& all = pool_visits[static_cast<std::size_t>(visit.pool.index)];
  return at + 1 < all.size() ? &season.visits[all[at + 1]] : nullptr;
}

} // namespace wetspell
