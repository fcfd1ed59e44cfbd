// Who, where and when of life counts.
#include "check/identity_family.hpp"
#include "check/say.hpp"
#include "check/season_span.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

bool nothing(const Quantity& quantity) {
  return quantity.status == Status::blank || quantity.status == Status::missing;
}

Outcome count_incomplete(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  std::string missing;
  Field field = Field::life_pool;
  const auto lacks = [&](bool lacking, Field which, std::string_view word) {
    if (!lacking)
      return;
    if (missing.empty())
      field = which;
    missing += (missing.empty() ? "" : " and ") + std::string(word);
  };
  lacks(!life.pool.typed(), Field::life_pool, "no pool");
  lacks(nothing(life.date), Field::life_date, "no date");
  if (!missing.empty()) {
    doubts.push_back(
        doubt(field,
              fmt::format("The life count{} has {}.",
                          life.species.typed() ? " of " + as_typed(view, Field::life_species, life.row)
                                               : std::string(),
                          missing),
              {Field::life_pool, Field::life_date, Field::life_species}));
    return Outcome::fails;
  }
  return life.date.status == Status::bad ? Outcome::undecided : Outcome::holds;
}

Outcome count_pool_unknown(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  if (life.pool.known())
    return Outcome::holds;
  if (!life.pool.typed())
    return Outcome::undecided;
  Doubt found = doubt(Field::life_pool, fmt::format("Pool {} of the life count is not in the table of pools.",
                                                    as_typed(view, Field::life_pool, life.row)));
  if (const auto near = view.pool_codes.find(to_text(view.season.cell(Field::life_pool, life.row)))) {
    const std::string& code = view.season.pools[*near].code;
    found.message.back() = ';';
    found.message += fmt::format(" the nearest code is {}.", code);
    found.proposals.push_back({Field::life_pool, Cell::of_text(code)});
  }
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome count_person_unknown(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  for (const auto& [field, ref] : {std::pair{Field::life_person, life.person},
                                   std::pair{Field::life_second_person, life.second_person}}) {
    if (ref.known() || !ref.typed())
      continue;
    Doubt found = doubt(field, fmt::format("{} {} of the life count is not in the table of people.",
                                           heading(field), as_typed(view, field, life.row)));
    if (const auto near = view.person_codes.find(to_text(view.season.cell(field, life.row)))) {
      const std::string& code = view.season.people[*near / 2].code;
      found.message.back() = ';';
      found.message += fmt::format(" the nearest is {}.", code);
      found.proposals.push_back({field, Cell::of_text(code)});
    }
    doubts.push_back(std::move(found));
  }
  if (!doubts.empty())
    return Outcome::fails;
  return life.person.typed() || life.second_person.typed() ? Outcome::holds : Outcome::undecided;
}

Outcome count_date_not_read(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  if (nothing(life.date))
    return Outcome::undecided;
  if (life.date.has_value())
    return Outcome::holds;
  const std::string typed = as_typed(view, Field::life_date, life.row);
  Doubt found = doubt(Field::life_date, {});
  if (const auto both = two_readings(view.season, Field::life_date, life.row, life.date)) {
    const double a = both->month_first, b = both->day_first;
    found.message =
        fmt::format("Date {} of the life count can be {} or {}.", typed, print_date(a), print_date(b));
    const auto& span = view.span;
    if (span && fits_season(view.season, *span, a) != fits_season(view.season, *span, b))
      found.proposals.push_back(
          {Field::life_date, Cell::of_date(fits_season(view.season, *span, a) ? a : b)});
  } else {
    const auto reason = text(life.date.reason);
    found.message = fmt::format("Date {} of the life count cannot be read: {}.", typed,
                                reason.empty() ? "it is not one day" : reason);
  }
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome count_outside_season(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  const auto& span = view.span;
  if (!span || !life.date.has_value())
    return Outcome::undecided;
  if (fits_season(view.season, *span, life.date.si))
    return Outcome::holds;
  const bool future = std::floor(life.date.si) > view.season.settings.today;
  Doubt found =
      doubt(Field::life_date,
            future ? fmt::format("The life count is dated {}, after {}, the day of this check.",
                                 print_date(life.date.si), print_date(view.season.settings.today))
                   : fmt::format("The life count is dated {}; the season runs from {} to {}.",
                                 print_date(life.date.si), print_date(span->first), print_date(span->last)));
  if (const auto day = in_season_year(view.season, *span, life.date.si))
    found.proposals.push_back({Field::life_date, Cell::of_date(*day)});
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome count_without_visit(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  // A sheet of counts alone says nothing of visits.
  if (!life.pool.known() || !life.date.has_value() || view.season.visits.empty())
    return Outcome::undecided;
  const auto& visits = view.pool_visits[static_cast<std::size_t>(life.pool.index)];
  const double day = std::floor(life.date.si);
  const auto found =
      std::lower_bound(visits.begin(), visits.end(), day,
                       [&](std::uint32_t visit, double from) { return view.visit(visit).date.si < from; });
  if (found != visits.end() && view.visit(*found).date.si < day + 1)
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::life_date,
            fmt::format("Animals were counted at pool {} on {}, but no visit is entered for that day.",
                        view.season.pools[static_cast<std::size_t>(life.pool.index)].code, print_date(day)),
            {Field::life_pool}));
  return Outcome::fails;
}

constexpr std::string_view practice = "common practice, no source";

} // namespace

std::vector<RuleSpec> count_rules() {
  return {
      {"count-incomplete",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A life count names its pool and its day",
       "Find pool and day on the field sheet.",
       "At which pool was it, and on which day?",
       practice,
       {Field::life_pool, Field::life_date},
       count_incomplete},
      {"count-pool-unknown",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A life count's pool is in the table of pools",
       "Correct the code, or add the pool to the table of pools.",
       "Which pool is meant? Its name, or where it lies, will do.",
       practice,
       {Field::life_pool, Field::pool_code},
       count_pool_unknown},
      {"count-person-unknown",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A life count's people are in the table of people",
       "Correct the code, or add the person to the table of people.",
       "Who is meant? The full name will do.",
       practice,
       {Field::life_person, Field::person_code},
       count_person_unknown},
      {"count-date-not-read",
       Family::identity,
       Level::fix,
       Scope::reading,
       "The date of a life count can be read in one way",
       "Write the date as year-month-day, or the month as a word.",
       "On which day was it? Please write the month as a word.",
       practice,
       {Field::life_date},
       count_date_not_read},
      {"count-outside-season",
       Family::identity,
       Level::ask,
       Scope::reading,
       "A life count lies in the season and in the past",
       "Check the date against that of the visit.",
       "On which day was this counted?",
       "judgement: the margin stands in the table of limits",
       {Field::life_date},
       count_outside_season},
      {"count-without-visit",
       Family::identity,
       Level::note,
       Scope::season,
       "A life count belongs to a visit of the same day",
       "Add the visit, or correct the date or pool of the count.",
       "Was the pool visited on that day, and what else was noted of it?",
       practice,
       {Field::life_pool, Field::life_date, Field::visit_pool, Field::visit_date},
       count_without_visit},
  };
}

} // namespace wetspell
