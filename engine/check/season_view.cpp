#include "check/rule.hpp"

#include "base/in_parts.hpp"
#include "season/words.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <span>
#include <tuple>
#include <unordered_map>

namespace wetspell {

namespace {

/// What orders the records of one owner, gathered before sorting: sorting small keys beats sorting through
/// wide records.
struct Timed {
  std::uint32_t record;
  std::uint32_t pool, person; ///< nowhere: not known, or the day is not
  double day;
  double start; ///< fraction of the day; 0 where not known
  double depth; ///< of a visit, where measured

  bool operator<(const Timed& other) const {
    return std::tie(day, start, record) < std::tie(other.day, other.start, other.record);
  }
};

template <class Record> Timed timed_of(std::uint32_t index, const Record& record) {
  const auto owner = [&](Ref who) {
    return who.known() && record.date.has_value() ? static_cast<std::uint32_t>(who.index)
                                                  : SeasonView::nowhere;
  };
  return {index, owner(record.pool), owner(record.person), record.date.si, 0, 0};
}

Timed timed_visit(std::uint32_t index, const Visit& visit) {
  Timed timed = timed_of(index, visit);
  timed.start = visit.start.has_value() ? visit.start.si : 0;
  timed.depth = visit.depth.has_value() ? visit.depth.si : Quantity::no_value;
  return timed;
}

/// The records of each owner in time order; `use(those of one owner)` is called for each owner.
template <class Use>
std::vector<std::vector<std::uint32_t>>
in_time_order(const FixedArray<Timed>& all, std::uint32_t Timed::*whose, std::size_t owners, const Use& use) {
  // Counting the owners first keeps the sorts short: one owner's records at a time.
  std::vector<std::uint32_t> next(owners + 1); // where each owner's next record goes
  for (const Timed& one : all)
    if (const std::uint32_t owner = one.*whose; owner != SeasonView::nowhere)
      ++next[owner + 1];
  std::partial_sum(next.begin(), next.end(), next.begin());
  FixedArray<Timed> sorted(next.back());
  for (const Timed& one : all)
    if (const std::uint32_t owner = one.*whose; owner != SeasonView::nowhere)
      sorted.make(next[owner]++, one);
  std::vector<std::vector<std::uint32_t>> lists(owners);
  std::size_t first = 0;
  for (std::size_t owner = 0; owner < owners; ++owner) {
    const std::span<Timed> own(sorted.data() + first, next[owner] - first);
    if (!std::is_sorted(own.begin(), own.end()))
      std::sort(own.begin(), own.end());
    lists[owner].reserve(own.size());
    for (const Timed& one : own)
      lists[owner].push_back(one.record);
    use(std::span<const Timed>(own));
    first = next[owner];
  }
  return lists;
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

/// Days with several visits by known people, of one pool's visits in time order.
void find_shared_days(std::span<const Timed> visits, SharedDays& days) {
  for (std::size_t i = 0; i < visits.size();) {
    const double date = std::floor(visits[i].day);
    const std::size_t first = i;
    std::size_t known = 0;
    for (; i < visits.size() && std::floor(visits[i].day) == date; ++i)
      known += visits[i].person != SeasonView::nowhere;
    days.looked_at += known;
    if (known < 2)
      continue;
    std::vector<std::uint32_t>& day = days.visits.emplace_back();
    for (std::size_t k = first; k < i; ++k)
      if (visits[k].person != SeasonView::nowhere)
        day.push_back(visits[k].record);
  }
}

Compared compared_of(const Visit& visit, const DerivedVisit& derived) {
  return {visit.date.si, derived.depth ? derived.depth->value : Quantity::no_value,
          visit.fill.has_value() ? visit.fill.si : Quantity::no_value,
          derived.temperature                  ? derived.temperature->mean
          : visit.temperature_mean.has_value() ? visit.temperature_mean.si
                                               : Quantity::no_value};
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

SeasonView::SeasonView(const Season& s)
    : season(s), derived(s.visits.size()), signs(s.visits.size()), compared(s.visits.size()),
      span(season_span(s)) {
  FixedArray<Timed> visits(s.visits.size());
  constexpr std::size_t least = 20'000;
  in_ranges(s.visits.size(), least, [&](std::size_t first, std::size_t end) {
    for (std::size_t i = first; i < end; ++i) {
      const Visit& v = s.visits[i];
      compared.make(i, compared_of(v, derived.make(i, derive(s, v))));
      signs.make(i, signs_of_readings(s, v));
      visits.make(i, timed_visit(static_cast<std::uint32_t>(i), v));
    }
  });
  const auto look_at_pool = [&](std::span<const Timed> own) {
    for (std::size_t i = 1; i + 1 < own.size(); ++i) // not a number compares as false
      signs[own[i].record].depth_line = line_of(own[i - 1].depth, own[i].depth, own[i + 1].depth);
    find_shared_days(own, shared_days);
  };
  constexpr auto nothing_more = [](std::span<const Timed>) {};
  const auto order = [&](std::size_t first, std::size_t end) {
    for (std::size_t i = first; i < end; ++i)
      if (i == 0)
        pool_visits = in_time_order(visits, &Timed::pool, s.pools.size(), look_at_pool);
      else
        person_visits = in_time_order(visits, &Timed::person, s.people.size(), nothing_more);
  };
  in_ranges(2, s.visits.size() < least ? 2 : 1, order);
  FixedArray<Timed> life(s.life.size());
  for (std::uint32_t i = 0; i < s.life.size(); ++i)
    life.make(i, timed_of(i, s.life[i]));
  pool_life = in_time_order(life, &Timed::pool, s.pools.size(), nothing_more);
  place_in_pool.assign(s.visits.size(), nowhere);
  for (const auto& own : pool_visits)
    for (std::uint32_t i = 0; i < own.size(); ++i)
      place_in_pool[own[i]] = i;
  pool_twin = twins(s.pools);
  person_twin = twins(s.people);
  for (const Pool& pool : s.pools)
    pool_codes.add(pool.code);
  for (const Person& person : s.people) {
    person_codes.add(person.code);
    person_codes.add(person.name);
  }
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
