// The date of a visit: there, read, and possible.
#include "check/identity_family.hpp"
#include "check/say.hpp"
#include "check/season_span.hpp"
#include "quantity/calendar.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <cmath>

namespace wetspell {

namespace {

Outcome date_missing(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (visit.date.status == Status::bad)
    return Outcome::undecided;
  if (visit.date.status != Status::blank && visit.date.status != Status::missing)
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_date,
            fmt::format("The visit to pool {} has no date.", as_typed(view, Field::visit_pool, visit.row)),
            {Field::visit_pool, Field::visit_person}));
  return Outcome::fails;
}

Outcome date_ambiguous(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.date.typed())
    return Outcome::undecided;
  const auto both = two_readings(view.season, Field::visit_date, visit.row, visit.date);
  if (!both)
    return Outcome::holds;
  const double a = both->month_first, b = both->day_first;
  Doubt found = doubt(Field::visit_date,
                      fmt::format("Date {} can be {} or {}.", as_typed(view, Field::visit_date, visit.row),
                                  print_date(a), print_date(b)));
  if (const auto& span = view.span) {
    const bool a_fits = fits_season(view.season, *span, a), b_fits = fits_season(view.season, *span, b);
    if (a_fits != b_fits) {
      found.message += " Only the " + std::string(a_fits ? "first" : "second") + " lies in the season.";
      found.proposals.push_back({Field::visit_date, Cell::of_date(a_fits ? a : b)});
    }
  }
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome date_not_read(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (visit.date.has_value())
    return Outcome::holds;
  if (visit.date.status == Status::blank || visit.date.status == Status::missing)
    return Outcome::undecided;
  const auto reason = text(visit.date.reason);
  doubts.push_back(doubt(Field::visit_date, fmt::format("Date {} cannot be read: {}.",
                                                        as_typed(view, Field::visit_date, visit.row),
                                                        reason.empty() ? "it is not one day" : reason)));
  return Outcome::fails;
}

Outcome wrong_year(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const auto& span = view.span;
  if (!span || !visit.date.has_value())
    return Outcome::undecided;
  if (span->near(visit.date.si))
    return Outcome::holds;
  const auto day = in_season_year(view.season, *span, visit.date.si);
  if (!day)
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_date,
                         fmt::format("Date {} is of another year; {} lies in the season.",
                                     print_date(visit.date.si), print_date(*day)),
                         {}, {{Field::visit_date, Cell::of_date(*day)}}));
  return Outcome::fails;
}

Outcome day_and_month_swapped(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const auto& span = view.span;
  if (!span || !visit.date.has_value())
    return Outcome::undecided;
  if (span->near(visit.date.si))
    return Outcome::holds;
  const auto typed = date_of(visit.date.si);
  if (!typed || typed->day > 12 || typed->day == typed->month)
    return Outcome::holds;
  const auto other = serial_of({typed->year, typed->day, typed->month});
  if (!other || !fits_season(view.season, *span, *other))
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_date,
            fmt::format("Date {} lies outside the season; with day and month swapped it is {}, which "
                        "lies in it.",
                        print_date(visit.date.si), print_date(*other)),
            {}, {{Field::visit_date, Cell::of_date(*other)}}));
  return Outcome::fails;
}

Outcome date_in_future(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.date.has_value())
    return Outcome::undecided;
  const double today = view.season.settings.today;
  const double day = std::floor(visit.date.si);
  if (day <= today)
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_date, fmt::format("Date {} is {} after {}, the day of this check.", print_date(day),
                                           say_days(day - today), print_date(today))));
  return Outcome::fails;
}

Outcome far_from_season(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const auto& span = view.span;
  if (!span || !visit.date.has_value())
    return Outcome::undecided;
  const double day = std::floor(visit.date.si);
  if (span->near(day))
    return Outcome::holds;
  const bool early = day < span->first;
  doubts.push_back(
      doubt(Field::visit_date,
            fmt::format("Date {} is {} {} the season, which {} on {}.", print_date(day),
                        say_days(early ? span->first - day : day - span->last), early ? "before" : "after",
                        early ? "begins" : "ends", print_date(early ? span->first : span->last))));
  return Outcome::fails;
}

constexpr std::string_view practice = "common practice, no source";

} // namespace

std::vector<RuleSpec> date_rules() {
  return {
      {"date-missing",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A visit has a date",
       "Ask the person for the day, or find it on the field sheet.",
       "On which day was it?",
       practice,
       {Field::visit_date},
       date_missing},
      {"date-ambiguous",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A date can be read in one way only",
       "Write the month as a word, or the date as year-month-day.",
       "Which of the two days was it?",
       practice,
       {Field::visit_date},
       date_ambiguous},
      {"date-not-read",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A date can be read",
       "Write the date as year-month-day, or with the month as a word.",
       "On which day was it? Please write the month as a word.",
       practice,
       {Field::visit_date},
       date_not_read},
      {"wrong-year",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A date is of the season's year",
       "Correct the year, or move the visit to the workbook of its own season.",
       "On which day was it, and in which year?",
       practice,
       {Field::visit_date},
       wrong_year},
      {"day-and-month-swapped",
       Family::identity,
       Level::ask,
       Scope::reading,
       "A date does not need day and month swapped to lie in the season",
       "Ask which day it was; swap day and month if they were typed the other way round.",
       "On which day was it? Please write the month as a word.",
       practice,
       {Field::visit_date},
       day_and_month_swapped},
      {"date-in-future",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A visit lies in the past",
       "Correct the date from the field sheet.",
       "On which day was it?",
       practice,
       {Field::visit_date},
       date_in_future},
      {"far-from-season",
       Family::identity,
       Level::ask,
       Scope::reading,
       "A visit lies in the season or near it",
       "Ask which day it was; check the season's first and last day on the start page.",
       "Is the day right, or which day was it?",
       "judgement: the margin stands in the table of limits",
       {Field::visit_date},
       far_from_season},
  };
}

} // namespace wetspell
