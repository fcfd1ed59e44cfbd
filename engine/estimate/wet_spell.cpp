#include "estimate/wet_spell.hpp"

#include <algorithm>

namespace wetspell {

namespace {

struct Day {
  double day = 0;
  bool wet = false;
};

std::vector<Day> days_of(std::span<const CountedVisit> visits) {
  std::vector<Day> days;
  days.reserve(visits.size());
  for (const CountedVisit& visit : visits) {
    if (!visit.wet)
      continue;
    if (!days.empty() && days.back().day == visit.day)
      days.back().wet = days.back().wet || *visit.wet;
    else
      days.push_back({visit.day, *visit.wet});
  }
  return days;
}

} // namespace

PoolWater water_of(std::span<const CountedVisit> visits) {
  const std::vector<Day> days = days_of(visits);
  PoolWater water;
  water.days = days.size();
  if (days.empty())
    return water;
  water.first_day = days.front().day;
  water.last_day = days.back().day;
  water.wet_at_first = days.front().wet;
  water.wet_at_last = days.back().wet;
  for (std::size_t i = 0; i < days.size(); ++i) {
    const bool before = i > 0 && days[i - 1].wet;
    if (days[i].wet && !before) {
      WetSpell& begun = water.spells.emplace_back();
      begun.filled.by = days[i].day;
      if (i > 0)
        begun.filled.after = days[i - 1].day;
    }
    if (days[i].wet)
      water.spells.back().dried.after = days[i].day;
    else if (before)
      water.spells.back().dried.by = days[i].day;
  }
  return water;
}

DaysBetween days_wet(const WetSpell& spell) {
  return {std::max(0.0, spell.dried.after - spell.filled.by), spell.dried.by - spell.filled.after};
}

DaysBetween days_wet(std::span<const WetSpell> spells) {
  DaysBetween all;
  for (const WetSpell& spell : spells) {
    const DaysBetween one = days_wet(spell);
    all.least += one.least;
    all.most += one.most;
  }
  return all;
}

} // namespace wetspell
