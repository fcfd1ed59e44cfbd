// Rows that cannot both be right, and days on which nobody came.
#include "check/identity_family.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>
#include <unordered_set>

namespace wetspell {

namespace {

Doubt against(Field field, std::uint32_t other, std::string message, std::vector<Field> behind,
              std::string advice = {}) {
  Doubt found = doubt(field, std::move(message), std::move(behind));
  found.other_row = other;
  found.advice = std::move(advice);
  return found;
}

std::size_t row_number(const SeasonView& view, std::uint32_t visit) {
  return sheet_row(view, Field::visit_date, view.visit(visit).row);
}

double clock(const Quantity& time) {
  return time.si - std::floor(time.si);
}

/// The verdicts on visits that are their pool's only one of the day, or cannot be told apart.
void alone_on_their_day(const SeasonView& view, Verdicts& verdicts) {
  std::size_t shared = 0;
  for (const auto& day : view.shared_days.visits)
    shared += day.size();
  verdicts.holds(view.shared_days.looked_at - shared);
  verdicts.undecided(view.season.visits.size() - view.shared_days.looked_at);
}

void double_visit(const SeasonView& view, Verdicts& verdicts) {
  alone_on_their_day(view, verdicts);
  for (std::vector<std::uint32_t> day : view.shared_days.visits) {
    const auto person = [&](std::uint32_t i) { return view.visit(i).person.index; };
    std::stable_sort(day.begin(), day.end(), [&](auto a, auto b) { return person(a) < person(b); });
    for (std::size_t k = 0; k < day.size(); ++k) {
      const bool as_before = k > 0 && person(day[k - 1]) == person(day[k]);
      const bool as_next = k + 1 < day.size() && person(day[k + 1]) == person(day[k]);
      if (!as_before && !as_next) {
        verdicts.holds();
        continue;
      }
      const std::uint32_t other = as_before ? day[k - 1] : day[k + 1];
      const Visit &visit = view.visit(day[k]), &again = view.visit(other);
      verdicts.fails(
          day[k],
          against(Field::visit_date, other,
                  fmt::format("The same person visited pool {} on {} more than once{}.", pool_of(view, visit),
                              print_date(visit.date.si),
                              again.start.has_value()
                                  ? fmt::format("; another visit began at {}", print_time(clock(again.start)))
                                  : std::string()),
                  {Field::visit_pool, Field::visit_person, Field::visit_start},
                  fmt::format("Look at this row and at row {}; remove the one that was entered twice.",
                              row_number(view, other))));
    }
  }
}

void same_day(const SeasonView& view, Verdicts& verdicts) {
  alone_on_their_day(view, verdicts);
  for (const std::vector<std::uint32_t>& day : view.shared_days.visits) {
    for (std::size_t k = 0; k < day.size(); ++k) {
      if (k == 0 || view.visit(day[k - 1]).person == view.visit(day[k]).person) {
        verdicts.holds();
        continue;
      }
      const Visit &visit = view.visit(day[k]), &other = view.visit(day[k - 1]);
      verdicts.fails(day[k], against(Field::visit_date, day[k - 1],
                                     fmt::format("Pool {} was visited on {} by {} too.", pool_of(view, visit),
                                                 print_date(visit.date.si),
                                                 as_typed(view, Field::visit_person, other.row)),
                                     {Field::visit_pool, Field::visit_person},
                                     fmt::format("Compare the visit with that in row {}: they show how well "
                                                 "two people agree.",
                                                 row_number(view, day[k - 1]))));
    }
  }
}

/// One person's stay at a pool, from the clock.
struct Stay {
  double from, to; ///< days
  std::uint32_t visit;

  bool operator<(const Stay& other) const {
    return std::tie(from, to, visit) < std::tie(other.from, other.to, other.visit);
  }
};

std::optional<Stay> stay(const SeasonView& view, std::uint32_t index) {
  const Visit& visit = view.visit(index);
  if (!visit.date.has_value() || !visit.start.has_value() || !visit.end.has_value() ||
      visit.end.si < visit.start.si || !visit.pool.known() || !visit.person.known())
    return std::nullopt;
  const double day = std::floor(visit.date.si);
  return Stay{day + clock(visit.start), day + clock(visit.end), index};
}

Doubt elsewhere(const SeasonView& view, std::size_t person, const Stay& now, const Stay& earlier) {
  const Visit &here = view.visit(now.visit), &there = view.visit(earlier.visit);
  return against(Field::visit_start, earlier.visit,
                 fmt::format("{} was at pool {} from {} to {}, and at pool {} from {} to {} on the same day.",
                             view.season.people[person].code, pool_of(view, here),
                             print_time(clock(here.start)), print_time(clock(here.end)), pool_of(view, there),
                             print_time(clock(there.start)), print_time(clock(there.end))),
                 {Field::visit_end, Field::visit_date, Field::visit_person, Field::visit_pool},
                 fmt::format("Check date, times and person in this row and in row {}.",
                             row_number(view, earlier.visit)));
}

void two_places_at_once(const SeasonView& view, Verdicts& verdicts) {
  const Season& season = view.season;
  std::vector<std::pair<std::int32_t, std::uint32_t>> companions; // second person and visit
  for (std::uint32_t i = 0; i < season.visits.size(); ++i)
    if (const Visit& visit = season.visits[i];
        visit.second_person.known() && visit.second_person != visit.person)
      companions.emplace_back(visit.second_person.index, i);
  std::sort(companions.begin(), companions.end());
  std::unordered_set<std::uint32_t> failed;
  std::size_t timed = 0;
  auto companion = companions.begin();
  std::vector<Stay> stays;
  constexpr double slack = 1.0 / (24 * 60 * 60); // a second: one visit may begin as another ends
  for (std::size_t person = 0; person < season.people.size(); ++person) {
    stays.clear();
    for (const std::uint32_t visit : view.person_visits[person])
      if (const auto known = stay(view, visit))
        stays.push_back(*known);
    timed += stays.size();
    for (; companion != companions.end() && static_cast<std::size_t>(companion->first) == person; ++companion)
      if (const auto known = stay(view, companion->second))
        stays.push_back(*known);
    if (!std::is_sorted(stays.begin(), stays.end()))
      std::sort(stays.begin(), stays.end());
    std::size_t longest = 0; // the stay, so far, that ends last
    for (std::size_t k = 1; k < stays.size(); ++k) {
      const Stay &now = stays[k], &earlier = stays[longest];
      if (now.from < earlier.to - slack && view.visit(earlier.visit).pool != view.visit(now.visit).pool &&
          failed.insert(now.visit).second)
        verdicts.fails(now.visit, elsewhere(view, person, now, earlier));
      if (now.to > earlier.to)
        longest = k;
    }
  }
  verdicts.holds(timed - failed.size());
  verdicts.undecided(season.visits.size() - timed);
}

Outcome visit_gap(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  const double days = std::floor(now.date.si) - std::floor(before.date.si);
  const double most = view.season.limits[Limit::visit_gap];
  if (days <= most)
    return Outcome::holds;
  doubts.push_back(
      against(Field::visit_date, view.index(before),
              fmt::format("Pool {} was not visited for {} before {}; more than {} leave a gap.",
                          pool_of(view, now), say_days(days), print_date(now.date.si), say_days(most)),
              {Field::visit_pool}));
  return Outcome::fails;
}

Outcome pool_never_visited(const SeasonView& view, const Pool& pool, Doubts& doubts) {
  if (pool.code.empty() || view.season.visits.empty()) // a list of pools alone says nothing of visits
    return Outcome::undecided;
  if (!view.pool_visits[static_cast<std::size_t>(&pool - view.season.pools.data())].empty())
    return Outcome::holds;
  doubts.push_back(doubt(Field::pool_code, fmt::format("Pool {} has no visit with a date in this season.",
                                                       as_typed(view, Field::pool_code, pool.row))));
  return Outcome::fails;
}

constexpr std::string_view practice = "common practice, no source";

} // namespace

std::vector<RuleSpec> same_day_rules() {
  return {
      {"double-visit",
       Family::identity,
       Level::ask,
       Scope::season,
       "A person visits a pool once on one day",
       "Look at both rows; remove the one that was entered twice.",
       "Was the pool visited twice on that day, or was one visit written down twice?",
       practice,
       {Field::visit_pool, Field::visit_date, Field::visit_person},
       double_visit},
      {"two-places-at-once",
       Family::identity,
       Level::fix,
       Scope::season,
       "A person is at one pool at a time",
       "Check date, times and person in both rows.",
       "Which of the two pools was it at that time, and when was it the other one?",
       practice,
       {Field::visit_pool, Field::visit_date, Field::visit_person, Field::visit_start, Field::visit_end},
       two_places_at_once},
      {"same-pool-same-day",
       Family::identity,
       Level::note,
       Scope::season,
       "One visit is made to a pool on one day",
       "Compare the two visits: they show how well two people agree.",
       "Were these two visits, or one that two people wrote down?",
       practice,
       {Field::visit_pool, Field::visit_date, Field::visit_person},
       same_day},
      {"visit-gap",
       Family::identity,
       Level::note,
       Scope::pool_over_time,
       "Visits to a pool follow each other without a long gap",
       "Note that the pool may have dried and filled again in between.",
       "Was the pool visited in between, and is there a field sheet of it?",
       "judgement: the longest usual gap stands in the table of limits",
       {Field::visit_pool, Field::visit_date},
       visit_gap},
      {"pool-never-visited",
       Family::identity,
       Level::note,
       Scope::season,
       "Every pool is visited in the season",
       "Find out whether somebody still has the field sheet.",
       "Was this pool visited, and is there a field sheet of it?",
       practice,
       {Field::pool_code, Field::visit_pool},
       pool_never_visited},
  };
}

} // namespace wetspell
