// Rows that cannot both be right, and days on which nobody came.
#include "check/identity_family.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace wetspell {

namespace {

using Verdicts = std::vector<RowVerdict>;

Doubt against(Field field, std::uint32_t other, std::string message, std::vector<Field> behind) {
  Doubt found = doubt(field, std::move(message), std::move(behind));
  found.other_row = other;
  return found;
}

std::size_t row_number(const SeasonView& view, std::uint32_t visit) {
  return sheet_row(view, Field::visit_date, view.visit(visit).row);
}

/// Calls `use(first, last)` for every run of visits of one pool on one day, and gives an undecided verdict to
/// each visit that has no known pool, day or person.
template <class Use> void for_each_day(const SeasonView& view, Verdicts& verdicts, Use use) {
  const Season& season = view.season;
  verdicts.reserve(season.visits.size());
  for (std::uint32_t i = 0; i < season.visits.size(); ++i)
    if (view.place_in_pool[i] == SeasonView::nowhere || !season.visits[i].person.known())
      verdicts.push_back({i, Outcome::undecided, {}});
  std::vector<std::uint32_t> run;
  for (const auto& visits : view.pool_visits) {
    for (std::size_t i = 0; i < visits.size();) {
      const double day = std::floor(view.visit(visits[i]).date.si);
      run.clear();
      for (; i < visits.size() && std::floor(view.visit(visits[i]).date.si) == day; ++i)
        if (view.visit(visits[i]).person.known())
          run.push_back(visits[i]);
      use(run);
    }
  }
}

void double_visit(const SeasonView& view, Verdicts& verdicts) {
  for_each_day(view, verdicts, [&](std::vector<std::uint32_t>& run) {
    const auto person = [&](std::uint32_t i) { return view.visit(i).person.index; };
    std::stable_sort(run.begin(), run.end(), [&](auto a, auto b) { return person(a) < person(b); });
    for (std::size_t k = 0; k < run.size(); ++k) {
      const bool as_before = k > 0 && person(run[k - 1]) == person(run[k]);
      const bool as_next = k + 1 < run.size() && person(run[k + 1]) == person(run[k]);
      if (!as_before && !as_next) {
        verdicts.push_back({run[k], Outcome::holds, {}});
        continue;
      }
      const std::uint32_t other = as_before ? run[k - 1] : run[k + 1];
      const Visit& visit = view.visit(run[k]);
      verdicts.push_back(
          {run[k],
           Outcome::fails,
           {against(Field::visit_date, other,
                    fmt::format("The same person visited pool {} on {} in row {} too.", pool_of(view, visit),
                                print_date(visit.date.si), row_number(view, other)),
                    {Field::visit_pool, Field::visit_person, Field::visit_start})}});
    }
  });
}

void same_day(const SeasonView& view, Verdicts& verdicts) {
  for_each_day(view, verdicts, [&](const std::vector<std::uint32_t>& run) {
    for (std::size_t k = 0; k < run.size(); ++k) {
      if (k == 0 || view.visit(run[k - 1]).person == view.visit(run[k]).person) {
        verdicts.push_back({run[k], Outcome::holds, {}});
        continue;
      }
      const Visit& visit = view.visit(run[k]);
      verdicts.push_back(
          {run[k],
           Outcome::fails,
           {against(Field::visit_date, run[k - 1],
                    fmt::format("Pool {} was visited on {} by {} too, in row {}.", pool_of(view, visit),
                                print_date(visit.date.si),
                                as_typed(view, Field::visit_person, view.visit(run[k - 1]).row),
                                row_number(view, run[k - 1])),
                    {Field::visit_pool, Field::visit_person})}});
    }
  });
}

/// One person's stay at a pool, from the clock.
struct Stay {
  std::int32_t person;
  double from, to; ///< days
  std::uint32_t visit;

  bool operator<(const Stay& other) const {
    return std::tie(person, from, to, visit) < std::tie(other.person, other.from, other.to, other.visit);
  }
};

std::vector<Stay> stays(const SeasonView& view, Verdicts& verdicts) {
  const Season& season = view.season;
  std::vector<Stay> all;
  all.reserve(season.visits.size());
  for (std::uint32_t i = 0; i < season.visits.size(); ++i) {
    const Visit& visit = season.visits[i];
    const bool timed = visit.date.has_value() && visit.start.has_value() && visit.end.has_value() &&
                       visit.end.si >= visit.start.si && visit.pool.known() && visit.person.known();
    verdicts.push_back({i, timed ? Outcome::holds : Outcome::undecided, {}});
    if (!timed)
      continue;
    const double day = std::floor(visit.date.si);
    const auto clock = [](double si) { return si - std::floor(si); };
    const Stay stay{visit.person.index, day + clock(visit.start.si), day + clock(visit.end.si), i};
    all.push_back(stay);
    if (visit.second_person.known() && visit.second_person != visit.person)
      all.push_back({visit.second_person.index, stay.from, stay.to, i});
  }
  if (!std::is_sorted(all.begin(), all.end()))
    std::sort(all.begin(), all.end());
  return all;
}

void two_places_at_once(const SeasonView& view, Verdicts& verdicts) {
  verdicts.reserve(view.season.visits.size());
  const auto all = stays(view, verdicts);
  constexpr double slack = 1.0 / (24 * 60 * 60); // a second: one visit may begin as another ends
  std::size_t longest = 0;                       // the stay, so far, that ends last
  for (std::size_t k = 1; k < all.size(); ++k) {
    const Stay& now = all[k];
    const Stay& earlier = all[longest];
    if (earlier.person == now.person && now.from < earlier.to - slack &&
        view.visit(earlier.visit).pool != view.visit(now.visit).pool &&
        verdicts[now.visit].outcome == Outcome::holds) {
      const auto& person = view.season.people[static_cast<std::size_t>(now.person)].code;
      const Visit &here = view.visit(now.visit), &there = view.visit(earlier.visit);
      verdicts[now.visit] = {
          now.visit,
          Outcome::fails,
          {against(
              Field::visit_start, earlier.visit,
              fmt::format(
                  "{} was at pool {} from {} to {}, and at pool {} from {} to {} on the same day (row {}).",
                  person, pool_of(view, here), print_time(here.start.si), print_time(here.end.si),
                  pool_of(view, there), print_time(there.start.si), print_time(there.end.si),
                  row_number(view, earlier.visit)),
              {Field::visit_end, Field::visit_date, Field::visit_person, Field::visit_pool})}};
    }
    if (earlier.person != now.person || now.to > earlier.to)
      longest = k;
  }
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
  if (pool.code.empty())
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
       practice,
       {Field::visit_pool, Field::visit_date, Field::visit_person},
       double_visit},
      {"two-places-at-once",
       Family::identity,
       Level::fix,
       Scope::season,
       "A person is at one pool at a time",
       "Check date, times and person in both rows.",
       practice,
       {Field::visit_pool, Field::visit_date, Field::visit_person, Field::visit_start, Field::visit_end},
       two_places_at_once},
      {"same-pool-same-day",
       Family::identity,
       Level::note,
       Scope::season,
       "One visit is made to a pool on one day",
       "Compare the two visits: they show how well two people agree.",
       practice,
       {Field::visit_pool, Field::visit_date, Field::visit_person},
       same_day},
      {"visit-gap",
       Family::identity,
       Level::note,
       Scope::pool_over_time,
       "Visits to a pool follow each other without a long gap",
       "Note that the pool may have dried and filled again in between.",
       "judgement: the longest usual gap stands in the table of limits",
       {Field::visit_pool, Field::visit_date},
       visit_gap},
      {"pool-never-visited",
       Family::identity,
       Level::note,
       Scope::season,
       "Every pool is visited in the season",
       "Find out whether somebody still has the field sheet.",
       practice,
       {Field::pool_code, Field::visit_pool},
       pool_never_visited},
  };
}

} // namespace wetspell
