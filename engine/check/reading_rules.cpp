// One temperature at a time: can it be read, and can it be right?
#include "check/readings.hpp"
#include "check/say.hpp"
#include "check/temperature_family.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

/// The outcome for a visit in which nothing is conspicuous.
Outcome quiet(Signs signs) {
  return signs.temperature ? Outcome::holds : Outcome::undecided;
}

/// Runs `look(index, reading)` over the four temperatures, and tells the outcome.
template <class Look>
Outcome each_temperature(const SeasonView& view, const Visit& visit, const Doubts& doubts, Look look) {
  for (std::size_t i = 0; i < temperature_fields.size(); ++i)
    look(i, temperature(visit, i));
  return doubts.empty() ? quiet(view.signs_of(visit)) : Outcome::fails;
}

Outcome temperature_not_read(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Signs signs = view.signs_of(visit);
  if (!signs.not_a_reading)
    return quiet(signs);
  return each_temperature(view, visit, doubts, [&](std::size_t i, const Quantity& reading) {
    if (reading.status == Status::bad)
      doubts.push_back(
          doubt(temperature_fields[i],
                fmt::format("{} {} cannot be read: {}.", heading(temperature_fields[i]),
                            as_typed(view, temperature_fields[i], visit.row), text(reading.reason))));
  });
}

Outcome not_one_temperature(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Signs signs = view.signs_of(visit);
  if (!signs.not_a_reading)
    return quiet(signs);
  return each_temperature(view, visit, doubts, [&](std::size_t i, const Quantity& reading) {
    if (reading.status == Status::range || reading.status == Status::over || reading.status == Status::under)
      doubts.push_back(
          doubt(temperature_fields[i], fmt::format("{} {} is not one temperature, so no mean can be taken.",
                                                   heading(temperature_fields[i]),
                                                   as_typed(view, temperature_fields[i], visit.row))));
  });
}

std::string_view slip_words(TemperatureSlip slip) {
  switch (slip) {
  case TemperatureSlip::celsius_as_fahrenheit:
    return "looks like degrees Celsius written as Fahrenheit";
  case TemperatureSlip::fahrenheit_as_celsius:
    return "looks like degrees Fahrenheit written as Celsius";
  default:
    return "looks like a slipped decimal point";
  }
}

template <TemperatureSlip slip> Outcome slipped(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Signs signs = view.signs_of(visit);
  if (!signs.unusual_water && !signs.readings_apart)
    return quiet(signs);
  return each_temperature(view, visit, doubts, [&](std::size_t i, const Quantity& reading) {
    const MeantTemperature meant = meant_temperature(view, visit, i);
    if (meant.slip != slip)
      return;
    const Field field = temperature_fields[i];
    const Quantity read_as{meant.written, meant.si, meant.si, 0, Status::value, meant.unit, true, {}};
    // A bare number stays bare when only the point moves.
    const bool bare = slip == TemperatureSlip::decimal && !reading.unit_typed;
    doubts.push_back(doubt(
        field,
        fmt::format("{} {} {}: {} would fit.", heading(field), say(reading), slip_words(slip), say(read_as)),
        {}, {{field, bare ? Cell::of_number(meant.written) : with_unit(meant.written, meant.unit)}}));
  });
}

Outcome not_liquid_water(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Signs signs = view.signs_of(visit);
  if (!signs.not_water)
    return quiet(signs);
  const double low = view.season.limits[Limit::temperature_lowest];
  const double high = view.season.limits[Limit::temperature_highest];
  return each_temperature(view, visit, doubts, [&](std::size_t i, const Quantity& reading) {
    if (reading.has_value() && (reading.si < low || reading.si > high))
      doubts.push_back(doubt(temperature_fields[i],
                             fmt::format("{} {} cannot be the temperature of a pool: the limit is {}.",
                                         heading(temperature_fields[i]), say(reading),
                                         say(view, Kind::temperature, reading.si < low ? low : high))));
  });
}

template <int side> Outcome unusual_water(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Signs signs = view.signs_of(visit);
  if (!signs.unusual_water)
    return quiet(signs);
  const double limit =
      view.season.limits[side < 0 ? Limit::temperature_doubtful_low : Limit::temperature_doubtful_high];
  return each_temperature(view, visit, doubts, [&](std::size_t i, const Quantity& reading) {
    if (reading.has_value() && unusual(view, reading) == side)
      doubts.push_back(
          doubt(temperature_fields[i],
                fmt::format("{} {} is {} than pools usually are: {} {} is doubtful.",
                            heading(temperature_fields[i]), say(reading), side < 0 ? "colder" : "warmer",
                            side < 0 ? "below" : "above", say(view, Kind::temperature, limit))));
  });
}

constexpr std::string_view practice = "common practice, no source";
constexpr std::string_view slips = "judgement: a slip is named only when it alone explains the reading";

} // namespace

std::vector<RuleSpec> reading_rules() {
  const auto rule = [](std::string_view name, Level level, std::string_view expectation,
                       std::string_view advice, std::string_view question, std::string_view source,
                       VisitRule look) {
    return RuleSpec{name,
                    Family::temperature,
                    level,
                    Scope::reading,
                    expectation,
                    advice,
                    question,
                    source,
                    {},
                    look,
                    {temperature_fields.begin(), temperature_fields.end()}};
  };
  return {
      rule("temperature-not-read", Level::fix, "A temperature can be read as a number",
           "Correct the reading from the field sheet; write \"not measured\" when there is none.",
           "What did the thermometer read? If it was not read, please say so.", practice,
           temperature_not_read),
      rule("not-one-temperature", Level::ask, "A temperature is one number",
           "Ask for the reading itself; leave the cell blank when it was not noted.",
           "Which one number did the thermometer read?", practice, not_one_temperature),
      rule("celsius-as-fahrenheit", Level::fix, "A reading in Fahrenheit is not a number of degrees Celsius",
           "Write the reading with its unit, or ask which thermometer was used.",
           "Was the thermometer read in °F or in °C, and what did it read?", slips,
           slipped<TemperatureSlip::celsius_as_fahrenheit>),
      rule("fahrenheit-as-celsius", Level::fix, "A reading in Celsius is not a number of degrees Fahrenheit",
           "Write the reading with its unit, or ask which thermometer was used.",
           "Was the thermometer read in °C or in °F, and what did it read?", slips,
           slipped<TemperatureSlip::fahrenheit_as_celsius>),
      rule("temperature-decimal-slipped", Level::fix,
           "The decimal point of a temperature stands in its place",
           "Compare with the field sheet, and move the decimal point.",
           "What did the thermometer read, and where does the decimal point belong?", slips,
           slipped<TemperatureSlip::decimal>),
      rule("not-liquid-water", Level::fix, "Water is neither far below freezing nor hot",
           "Correct the reading from the field sheet.", "What did the thermometer read, and in which unit?",
           "USGS National Field Manual 6.1.3.B, scope of the method", not_liquid_water),
      rule("colder-than-water", Level::ask, "Liquid water is not colder than freezing",
           "Ask whether the thermometer was in the water, and what it shows in melting ice.",
           "Was the thermometer in the water, and what does it read in a glass of melting ice?",
           "judgement: half a degree is left for the thermometer", unusual_water<-1>),
      rule("warmer-than-usual", Level::ask, "A pool is not warmer than shaded water usually gets",
           "Ask whether the thermometer lay in the sun or in very shallow water.",
           "Did the thermometer lie in the sun, or in very shallow water?",
           "judgement: shaded pools in spring and summer stay well below", unusual_water<1>),
  };
}

} // namespace wetspell
