#include "audit/column_units.hpp"

#include "measure/refuse.hpp"

#include <array>

namespace wetspell {

namespace {

// Common practice, no source: where the readings of pools lie, widely taken, in SI.
struct Reach {
  double low, high;
};
constexpr Reach water{-3, 38};     // °C
constexpr Reach depths{0, 4};      // m
constexpr Reach lengths{0.1, 500}; // m
constexpr Reach areas{0.1, 1e5};   // m²

std::optional<Reach> reach(Kind kind) {
  switch (kind) {
  case Kind::temperature:
    return water;
  case Kind::depth:
    return depths;
  case Kind::length:
    return lengths;
  case Kind::area:
    return areas;
  default:
    return std::nullopt;
  }
}

ColumnUnit temperature(const AsKind& as) {
  constexpr double ice_in_fahrenheit = 30;
  constexpr double hot_in_celsius = 35;
  if (as.bare.size() >= 3 && as.high() < ice_in_fahrenheit && as.low() > -5)
    return {Unit::celsius, 0.9, numbers_in_words(as) + " are °C: in °F all of it would be ice"};
  if (as.bare.size() >= 3 && as.low() > hot_in_celsius - 2 && as.high() > hot_in_celsius && as.high() < 110)
    return {Unit::fahrenheit, 0.9, numbers_in_words(as) + " are °F: in °C no pool is that warm"};
  return {};
}

ColumnUnit by_system(Kind kind, const AsKind& as, UnitSystem system) {
  const bool metric = system == UnitSystem::metric;
  Unit unit = Unit::none;
  switch (kind) {
  case Kind::temperature:
    unit = metric ? Unit::celsius : Unit::fahrenheit;
    break;
  case Kind::depth: // whole numbers are small units, a few with decimals large ones
    if (as.high() <= 3 && as.share_with_decimals() >= 0.5)
      unit = metric ? Unit::metre : Unit::foot;
    else if (as.high() > 5)
      unit = metric ? Unit::centimetre : Unit::inch;
    break;
  case Kind::length:
    unit = metric ? Unit::metre : Unit::foot;
    break;
  case Kind::area:
    unit = metric ? Unit::square_metre : Unit::square_foot;
    break;
  default:
    break;
  }
  if (unit == Unit::none || as.bare.empty() || !possible(kind, unit, as))
    return {};
  return {unit, 0.75,
          fmt::format("{} {} {}, and the table's other units are {}", numbers_in_words(as),
                      as.bare.size() == 1 ? "fits" : "fit", symbol(unit), metric ? "metric" : "US customary"),
          true};
}

} // namespace

std::string numbers_in_words(const AsKind& as) {
  return as.bare.size() == 1 ? fmt::format("the number {}", in_words(as.lowest()))
                             : fmt::format("{} numbers between {} and {}", as.bare.size(),
                                           in_words(as.lowest()), in_words(as.highest()));
}

std::optional<UnitSystem> system_of(Unit unit) {
  switch (unit) {
  case Unit::celsius:
  case Unit::kelvin:
  case Unit::millimetre:
  case Unit::centimetre:
  case Unit::metre:
  case Unit::square_metre:
  case Unit::hectare:
    return UnitSystem::metric;
  case Unit::fahrenheit:
  case Unit::inch:
  case Unit::foot:
  case Unit::yard:
  case Unit::square_foot:
  case Unit::square_yard:
  case Unit::acre:
    return UnitSystem::us_customary;
  default:
    return std::nullopt;
  }
}

bool possible(Kind kind, Unit unit, const AsKind& as) {
  const auto within = reach(kind);
  if (!within || as.bare.empty() || unit == Unit::none || unit == Unit::pace || unit == Unit::step)
    return true;
  // The middle half decides: slips of the pen stand at the ends.
  return to_si(as.bare[as.bare.size() / 4], unit) >= within->low &&
         to_si(as.bare[as.bare.size() - 1 - as.bare.size() / 4], unit) <= within->high;
}

ColumnUnit unit_by_numbers(Kind kind, const AsKind& as, std::optional<UnitSystem> system) {
  if (kind == Kind::temperature)
    if (ColumnUnit told = temperature(as); told.unit != Unit::none)
      return told;
  if (kind == Kind::depth && as.bare.size() >= 3 && as.high() > 80 && as.high() <= 300)
    return {Unit::centimetre, 0.85,
            numbers_in_words(as) + " are cm: in inches the pool would be deeper than 2 m"};
  if (kind == Kind::percent && !as.bare.empty()) {
    const std::string_view are = as.bare.size() == 1 ? "is" : "are";
    if (as.highest() <= 1 && as.share_with_decimals() > 0.3)
      return {Unit::one, 0.85, fmt::format("{} {} fractions of one", numbers_in_words(as), are)};
    return {Unit::percent, 0.9, fmt::format("{} {} per cent", numbers_in_words(as), are)};
  }
  if (system)
    return by_system(kind, as, *system);
  return {};
}

ColumnUnit unit_told(Kind kind, Unit said, const AsKind& as, const UnitHints& hints) {
  const auto sure = [](Unit unit, std::string_view why) {
    return ColumnUnit{unit, 1, fmt::format("{} {}", symbol(unit), why)};
  };
  if (said != Unit::none && fits(said, kind))
    return sure(said, "as the heading says");
  if (as.most_say() && fits(as.typed, kind))
    return sure(as.typed, fmt::format("as {} of {} {}", as.with_typed, as.readable,
                                      as.readable == 1 ? "cell says" : "cells say"));
  if (const Unit above = hints.titles.of(kind); above != Unit::none && possible(kind, above, as))
    return sure(above, "as the lines above the table say");
  if (hints.settings != nullptr)
    return sure(hints.settings->unit_of(kind), "as the workbook's settings say");
  return as.say_different() ? ColumnUnit{} : unit_by_numbers(kind, as, hints.table_system);
}

} // namespace wetspell
