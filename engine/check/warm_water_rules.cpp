// Temperature against what else is known: water, depth, the visit before.
#include "check/readings.hpp"
#include "check/say.hpp"
#include "check/temperature_family.hpp"
#include "check/wet_signs.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

Outcome temperature_in_dry_pool(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen())
    return Outcome::undecided;
  if (!visit.water.is(Water::none) || !view.signs_of(visit).temperature)
    return Outcome::holds;
  if (signs_of_water(visit).count() > 1) // then the word for water is in doubt: dry-yet-measured
    return Outcome::undecided;
  const std::size_t first = first_temperature(visit);
  doubts.push_back(doubt(temperature_fields[first],
                         fmt::format("{} is {}, but no standing water is noted.",
                                     heading(temperature_fields[first]), say(temperature(visit, first))),
                         {Field::visit_water}));
  return Outcome::fails;
}

Outcome warm_under_ice(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen())
    return Outcome::undecided;
  if (!visit.water.is(Water::frozen))
    return Outcome::holds;
  const auto known = visit_temperature(view, visit);
  if (!known)
    return Outcome::undecided;
  constexpr double densest = 4; // °C: fresh water is heaviest there and lies at the bottom under ice
  const double limit = densest + view.season.limits[Limit::temperature_spread];
  if (*known <= limit)
    return Outcome::holds;
  doubts.push_back(
      doubt(temperature_fields[first_temperature(visit)],
            fmt::format("The pool is noted as frozen over, but its water has {}; under ice it has "
                        "hardly more than {}.",
                        say(view, Kind::temperature, *known), say(view, Kind::temperature, densest)),
            {Field::visit_water}));
  return Outcome::fails;
}

Outcome too_shallow_for_probe(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (!visit.probe_depth.has_value() || !visit.depth.has_value())
    return Outcome::undecided;
  if (visit.probe_depth.si <= visit.depth.si)
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_probe_depth,
            fmt::format("The thermometer was {} deep, but the pool is only {} deep at its deepest.",
                        say(visit.probe_depth), say(visit.depth)),
            {Field::visit_depth}));
  return Outcome::fails;
}

Outcome no_temperature(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen())
    return Outcome::undecided;
  const auto typed = [&](std::size_t i) { return temperature(visit, i).typed(); };
  if (!visit.water.is(Water::standing) || typed(0) || typed(1) || typed(2) || typed(3))
    return Outcome::holds;
  constexpr double probe = 0.1524; // m: 6 in, the least depth below the surface in common practice
  if (visit.depth.has_value() && visit.depth.si < probe)
    return Outcome::holds; // too shallow to measure
  const auto& fields = temperature_fields;
  const Field column =
      *std::find_if(fields.begin(), fields.end(), [&](Field field) { return view.season.has(field); });
  doubts.push_back(
      doubt(column, fmt::format("Water stood in {}, but no temperature is given.", pool_and_day(view, visit)),
            {Field::visit_water}));
  return Outcome::fails;
}

Outcome temperature_leaps(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  const auto then = visit_temperature(view, before), today = visit_temperature(view, now);
  if (!then || !today)
    return Outcome::undecided;
  const double days = std::max(1.0, std::floor(now.date.si) - std::floor(before.date.si));
  const double change = *today - *then;
  const double per_day = view.season.limits[Limit::temperature_jump_per_day];
  if (std::fabs(change) <= per_day * days)
    return Outcome::holds;
  doubts.push_back(
      doubt(temperature_fields[first_temperature(now)],
            fmt::format("The water went from {} to {} within {}; more than {} a day is doubtful.",
                        say(view, Kind::temperature, *then), say(view, Kind::temperature, *today),
                        say_days(days), say_difference(view, Kind::temperature, per_day)),
            {temperature_fields.begin(), temperature_fields.end()}));
  doubts.back().behind.push_back(Field::visit_date);
  doubts.back().other_row = view.index(before);
  return Outcome::fails;
}

constexpr std::string_view practice = "common practice, no source";

} // namespace

std::vector<RuleSpec> warm_water_rules() {
  return {
      {"temperature-in-dry-pool",
       Family::temperature,
       Level::fix,
       Scope::visit,
       "A pool without standing water has no water temperature",
       "Ask whether there was water, or whether the reading belongs to another pool.",
       "Was there water in the pool, or is this the reading of another pool?",
       practice,
       {Field::visit_water},
       temperature_in_dry_pool,
       {temperature_fields.begin(), temperature_fields.end()}},
      {"warm-under-ice",
       Family::temperature,
       Level::ask,
       Scope::visit,
       "Water under ice is cold",
       "Ask whether the pool was frozen over, and whether the reading is of that day.",
       "Was the pool frozen over, and was this read on that day?",
       "fresh water is densest at 4 °C; the margin is the spread in the table of limits",
       {Field::visit_water},
       warm_under_ice,
       {temperature_fields.begin(), temperature_fields.end()}},
      {"too-shallow-for-probe",
       Family::temperature,
       Level::ask,
       Scope::visit,
       "The thermometer is no deeper in the water than the pool is deep",
       "Ask at which depth the temperature was read, and how deep the pool was.",
       "How deep in the water was the thermometer, and how deep was the pool?",
       practice,
       {Field::visit_probe_depth, Field::visit_depth},
       too_shallow_for_probe},
      {"temperature-leaps",
       Family::temperature,
       Level::ask,
       Scope::pool_over_time,
       "A pool warms and cools by a few degrees from day to day",
       "Ask for the readings; compare both visits with their field sheets.",
       "What did the thermometer read on that day, and where in the water was it held?",
       "judgement: shallow water follows the air by a few degrees from one day to the next",
       {Field::visit_pool, Field::visit_date},
       temperature_leaps,
       {temperature_fields.begin(), temperature_fields.end()}},
      {"no-temperature",
       Family::temperature,
       Level::note,
       Scope::visit,
       "The temperature is read wherever water stands deep enough",
       "Ask whether the readings are on the field sheet; write \"not measured\" when there are none.",
       "Was the temperature read, and what was it?",
       practice,
       {Field::visit_water},
       no_temperature,
       {temperature_fields.begin(), temperature_fields.end()}},
  };
}

} // namespace wetspell
