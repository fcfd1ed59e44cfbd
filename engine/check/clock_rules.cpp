// Begin and end of a visit.
#include "check/identity_family.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace wetspell {

namespace {

constexpr double minutes_of_day = 24 * 60;

bool both_read(const Visit& visit) {
  return visit.start.has_value() && visit.end.has_value();
}

/// Fraction of a day, also from a cell that holds a date with the time.
double clock(const Quantity& time) {
  return time.si - std::floor(time.si);
}

double minutes(const Visit& visit) {
  return (clock(visit.end) - clock(visit.start)) * minutes_of_day;
}

Outcome clock_not_read(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const std::array<std::pair<Field, const Quantity*>, 2> times{
      {{Field::visit_start, &visit.start}, {Field::visit_end, &visit.end}}};
  bool any = false;
  for (const auto& [field, time] : times) {
    any = any || time->has_value();
    if (time->status == Status::bad)
      doubts.push_back(doubt(field, fmt::format("{} {} cannot be read as a time: {}.", heading(field),
                                                as_typed(view, field, visit.row), text(time->reason))));
  }
  if (!doubts.empty())
    return Outcome::fails;
  return any ? Outcome::holds : Outcome::undecided;
}

bool usual(const SeasonView& view, double length) {
  return length >= view.season.limits[Limit::clock_shortest] &&
         length <= view.season.limits[Limit::clock_longest];
}

Outcome end_before_start(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!both_read(visit))
    return Outcome::undecided;
  const double length = minutes(visit);
  if (length >= 0)
    return Outcome::holds;
  Doubt found = doubt(Field::visit_end,
                      fmt::format("The visit ends at {}, before it starts at {}.",
                                  print_time(clock(visit.end)), print_time(clock(visit.start))),
                      {Field::visit_start});
  // Two slips explain it: both times in each other's place, or an afternoon written without saying so.
  const double afternoon = clock(visit.end) + 0.5;
  const bool swapped = usual(view, -length);
  const bool half_day = afternoon < 1 && usual(view, length + minutes_of_day / 2);
  if (swapped && !half_day) {
    found.message += " Swapped, it lasted " + say_minutes(-length) + ".";
    found.proposals = {{Field::visit_start, Cell::of_date(clock(visit.end))},
                       {Field::visit_end, Cell::of_date(clock(visit.start))}};
  } else if (half_day && !swapped) {
    found.message +=
        " An end at " + print_time(afternoon) + " makes it " + say_minutes(length + minutes_of_day / 2) + ".";
    found.proposals = {{Field::visit_end, Cell::of_date(afternoon)}};
  }
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome lasted(const SeasonView& view, const Visit& visit, bool too_short, Doubts& doubts) {
  if (!both_read(visit))
    return Outcome::undecided;
  const double length = minutes(visit);
  if (length < 0) // end-before-start has it
    return Outcome::undecided;
  const double limit = view.season.limits[too_short ? Limit::clock_shortest : Limit::clock_longest];
  constexpr double slack = 1e-6; // minutes: times are fractions of a day and seldom exact
  if (too_short ? length >= limit - slack : length <= limit + slack)
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_end,
            fmt::format("The visit lasted {} ({} to {}); {} than {} is doubtful.", say_minutes(length),
                        print_time(clock(visit.start)), print_time(clock(visit.end)),
                        too_short ? "less" : "more", say_minutes(limit)),
            {Field::visit_start}));
  return Outcome::fails;
}

Outcome visit_too_short(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  return lasted(view, visit, true, doubts);
}

Outcome visit_too_long(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  return lasted(view, visit, false, doubts);
}

} // namespace

std::vector<RuleSpec> clock_rules() {
  return {
      {"clock-not-read",
       Family::identity,
       Level::fix,
       Scope::reading,
       "Start and end can be read as times of day",
       "Write the time as 9:40 or 2:15 pm.",
       "At what time was it, in the morning or in the afternoon?",
       "common practice, no source",
       {Field::visit_start},
       clock_not_read},
      {"end-before-start",
       Family::identity,
       Level::fix,
       Scope::visit,
       "A visit ends after it starts",
       "Check both times on the field sheet; write the afternoon as 2:15 pm or 14:15.",
       "When did the visit begin and when did it end? Please say of both whether it was morning or "
       "afternoon.",
       "common practice, no source",
       {Field::visit_start, Field::visit_end},
       end_before_start},
      {"visit-too-short",
       Family::identity,
       Level::ask,
       Scope::visit,
       "A visit lasts long enough to be made",
       "Ask how long the visit was; leave the end blank if nobody knows.",
       "When did the visit begin and when did it end?",
       "judgement: three temperatures alone take two minutes each",
       {Field::visit_start, Field::visit_end},
       visit_too_short},
      {"visit-too-long",
       Family::identity,
       Level::ask,
       Scope::visit,
       "A visit lasts hours, not a day",
       "Ask how long the visit was; a morning may have been written for an afternoon.",
       "When did the visit begin and when did it end? Please say of both whether it was morning or "
       "afternoon.",
       "judgement: the longest usual visit stands in the table of limits",
       {Field::visit_start, Field::visit_end},
       visit_too_long},
  };
}

} // namespace wetspell
