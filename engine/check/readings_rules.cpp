// The readings of one visit among each other, and the mean that was noted.
#include "check/readings.hpp"
#include "check/say.hpp"
#include "check/temperature_family.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace wetspell {

namespace {

const std::vector<Field>& three_fields() {
  static const std::vector<Field> three(temperature_fields.begin(), temperature_fields.begin() + 3);
  return three;
}

bool all_three(const Visit& visit) {
  return visit.temperature_1.has_value() && visit.temperature_2.has_value() &&
         visit.temperature_3.has_value();
}

Outcome odd_reading(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!all_three(visit))
    return Outcome::undecided;
  const auto odd = odd_one(view, visit);
  if (!odd)
    return Outcome::holds;
  const Quantity& reading = temperature(visit, *odd);
  const Quantity &one = temperature(visit, *odd == 0 ? 1 : 0), &two = temperature(visit, *odd == 2 ? 1 : 2);
  const double off = reading.si - (one.si + two.si) / 2;
  doubts.push_back(doubt(temperature_fields[*odd],
                         fmt::format("{} {} is {} {} than the mean of the other two, {} and {}.",
                                     heading(temperature_fields[*odd]), say(reading),
                                     say_difference(view, Kind::temperature, std::fabs(off)),
                                     off > 0 ? "warmer" : "colder", say(one), say(two)),
                         three_fields()));
  return Outcome::fails;
}

/// Whether two of the three can be compared.
bool two_readings(const Visit& visit) {
  return int{visit.temperature_1.has_value()} + int{visit.temperature_2.has_value()} +
             int{visit.temperature_3.has_value()} >=
         2;
}

Outcome wide_spread(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!view.signs_of(visit).readings_apart)
    return two_readings(visit) ? Outcome::holds : Outcome::undecided;
  const std::array<const Quantity*, 3> readings{&visit.temperature_1, &visit.temperature_2,
                                                &visit.temperature_3};
  double low = 0, high = 0;
  std::size_t n = 0, lowest = 0, highest = 0;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    if (!readings[i]->has_value())
      continue;
    const double si = readings[i]->si;
    if (n == 0 || si < low)
      low = si, lowest = i;
    if (n == 0 || si > high)
      high = si, highest = i;
    ++n;
  }
  const double limit = view.season.limits[Limit::temperature_spread];
  doubts.push_back(doubt(temperature_fields[highest],
                         fmt::format("The readings {} and {} lie {} apart; more than {} is doubtful.",
                                     say(*readings[lowest]), say(*readings[highest]),
                                     say_difference(view, Kind::temperature, high - low),
                                     say_difference(view, Kind::temperature, limit)),
                         three_fields()));
  return Outcome::fails;
}

Outcome mean_is_not_the_mean(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const auto& worked_out = view.derived_of(visit).temperature;
  if (!visit.temperature_mean.has_value() || !worked_out || worked_out->read < 2)
    return Outcome::undecided;
  if (std::fabs(visit.temperature_mean.si - worked_out->mean) <=
      view.season.limits[Limit::temperature_mean_slack])
    return Outcome::holds;
  const Unit unit = view.season.unit(Field::visit_temperature_mean);
  const std::string number = print_number(worked_out->mean, unit);
  double value = 0;
  std::from_chars(number.data(), number.data() + number.size(), value);
  doubts.push_back(
      doubt(Field::visit_temperature_mean,
            fmt::format("The mean as noted is {}, but the mean of the {} readings is {}.",
                        say(visit.temperature_mean), worked_out->read, print(worked_out->mean, unit)),
            three_fields(), {{Field::visit_temperature_mean, Cell::of_number(value)}}));
  return Outcome::fails;
}

Outcome readings_missing(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (all_three(visit))
    return Outcome::holds;
  std::size_t n = 0, first_missing = 3;
  for (std::size_t i = 0; i < 3; ++i) {
    const Quantity& reading = temperature(visit, i);
    if (reading.has_value())
      ++n;
    else if (reading.typed() && reading.status != Status::missing)
      return Outcome::undecided; // something stands there that cannot be used
    else
      first_missing = std::min(first_missing, i);
  }
  if (n == 0)
    return Outcome::undecided;
  doubts.push_back(doubt(temperature_fields[first_missing],
                         fmt::format("Only {} of 3 temperatures {} there; the mean rests on {}.", n,
                                     n == 1 ? "is" : "are", n == 1 ? "a single one" : "two"),
                         three_fields()));
  return Outcome::fails;
}

Outcome mean_without_readings(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (!visit.temperature_mean.has_value())
    return Outcome::undecided;
  if (visit.temperature_1.typed() || visit.temperature_2.typed() || visit.temperature_3.typed())
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_temperature_mean,
            fmt::format("A mean of {} is noted without the readings behind it.", say(visit.temperature_mean)),
            three_fields()));
  return Outcome::fails;
}

} // namespace

std::vector<RuleSpec> readings_rules() {
  const auto rule = [](std::string_view name, Level level, std::string_view expectation,
                       std::string_view advice, std::string_view question, std::string_view source,
                       std::vector<Field> needs, VisitRule look) {
    return RuleSpec{name,   Family::temperature, level, Scope::visit, expectation, advice, question,
                    source, std::move(needs),    look};
  };
  return {
      rule("one-reading-odd", Level::ask, "None of three readings lies far from the other two",
           "Ask for the reading; compare with the field sheet.",
           "What did the thermometer read at that spot?",
           "judgement: readings in one pool commonly differ by a degree or two Fahrenheit", three_fields(),
           odd_reading),
      rule("readings-far-apart", Level::ask, "The readings of one visit lie near each other",
           "Ask whether all readings were taken in the water, at the same depth.",
           "Were all readings taken in the water, at the same depth?",
           "judgement: readings in one pool commonly differ by a degree or two Fahrenheit",
           {Field::visit_temperature_1, Field::visit_temperature_2}, wide_spread),
      rule("mean-is-not-the-mean", Level::fix, "A mean that is noted is the mean of the readings",
           "Correct the mean, or clear it: it is worked out from the readings.",
           "Which is right, the readings or the mean?",
           "arithmetic; the rounding allowed stands in the table of limits",
           {Field::visit_temperature_1, Field::visit_temperature_mean}, mean_is_not_the_mean),
      rule("readings-missing", Level::note, "Three temperatures are read at each visit",
           "Ask whether the other readings are on the field sheet.",
           "What were the other readings? If there were none, please say so.", "common practice, no source",
           three_fields(), readings_missing),
      rule("mean-without-readings", Level::note, "A mean stands beside its readings",
           "Ask for the readings: without them the mean cannot be checked.",
           "What were the readings of which this is the mean?", "common practice, no source",
           {Field::visit_temperature_1, Field::visit_temperature_mean}, mean_without_readings),
  };
}

} // namespace wetspell
