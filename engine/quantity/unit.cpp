#include "quantity/unit.hpp"

#include "quantity/decimal.hpp"

#include <array>
#include <cstddef>
#include <limits>

namespace wetspell {

namespace {

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

constexpr std::string_view by_definition = "SI: by definition";
constexpr std::string_view lengths = "NIST SP 811 (2008), B.8, exact";
constexpr std::string_view squares = "square of the length factor of NIST SP 811 (2008), B.8, exact";
constexpr std::string_view cubes =
    "cube of the length factor of NIST SP 811 (2008), B.8, exact: (381/1250)^3 in lowest terms";

// Numerators and denominators are integers, so that a product with what somebody typed is exact.
constexpr std::array<UnitSpec, 21> table{{
    {Unit::none, Kind::count, "", "number", 1, 1, 0, 12, by_definition},
    {Unit::celsius, Kind::temperature, "°C", "degree Celsius", 1, 1, 0, 1, by_definition},
    {Unit::fahrenheit, Kind::temperature, "°F", "degree Fahrenheit", 5, 9, 32, 1,
     "NIST SP 811 (2008), B.9, exact"},
    {Unit::kelvin, Kind::temperature, "K", "kelvin", 1, 1, 273.15, 1, "NIST SP 811 (2008), B.9, exact"},
    {Unit::millimetre, Kind::length, "mm", "millimetre", 1, 1000, 0, 0, by_definition},
    {Unit::centimetre, Kind::length, "cm", "centimetre", 1, 100, 0, 1, by_definition},
    {Unit::metre, Kind::length, "m", "metre", 1, 1, 0, 2, by_definition},
    {Unit::inch, Kind::length, "in", "inch", 254, 10000, 0, 1, lengths},
    {Unit::foot, Kind::length, "ft", "foot", 3048, 10000, 0, 2, lengths},
    {Unit::yard, Kind::length, "yd", "yard", 9144, 10000, 0, 2, lengths},
    {Unit::square_metre, Kind::area, "m²", "square metre", 1, 1, 0, 1, by_definition},
    {Unit::square_foot, Kind::area, "ft²", "square foot", 9290304, 100000000, 0, 0, squares},
    {Unit::square_yard, Kind::area, "yd²", "square yard", 83612736, 100000000, 0, 1, squares},
    {Unit::acre, Kind::area, "ac", "acre", 40468564224, 10000000, 0, 3,
     "43 560 international square feet, exact; NIST SP 811 gives the acre of survey feet, withdrawn in 2022"},
    {Unit::hectare, Kind::area, "ha", "hectare", 10000, 1, 0, 4, by_definition},
    {Unit::cubic_metre, Kind::volume, "m³", "cubic metre", 1, 1, 0, 1, by_definition},
    {Unit::cubic_foot, Kind::volume, "ft³", "cubic foot", 55306341, 1953125000, 0, 0, cubes},
    {Unit::percent, Kind::percent, "%", "per cent", 1, 100, 0, 1, by_definition},
    {Unit::one, Kind::percent, "of 1", "fraction of one", 1, 1, 0, 3, by_definition},
    {Unit::pace, Kind::length, "paces", "pace", 2, 1, 0, 1, "common practice, no source: two steps"},
    {Unit::step, Kind::length, "steps", "step", 1, 1, 0, 1, "common practice, no source"},
}};

consteval bool in_order() {
  for (std::size_t i = 0; i < table.size(); ++i)
    if (static_cast<std::size_t>(table[i].unit) != i)
      return false;
  return true;
}
static_assert(in_order(), "the table of units follows the order of the enum");

constexpr bool walked(Unit unit) {
  return unit == Unit::pace || unit == Unit::step;
}

constexpr std::array<std::string_view, kinds_of_quantity> kind_names{
    "temperature", "depth", "length", "area", "volume", "percent", "count", "date", "time", "truth"};

constexpr bool can_be_in(const UnitSpec& u, Kind kind) {
  switch (kind) {
  case Kind::temperature:
  case Kind::area:
  case Kind::volume:
  case Kind::percent:
  case Kind::length:
    return u.unit != Unit::none && u.kind == kind;
  case Kind::depth:
    return u.kind == Kind::length && !walked(u.unit);
  case Kind::count:
  case Kind::date:
  case Kind::time:
  case Kind::truth:
    return u.unit == Unit::none;
  }
  return false;
}

/// can_be_in() for every unit and kind: the reader asks for each cell.
constexpr auto fitting = [] {
  std::array<std::array<bool, kind_names.size()>, table.size()> all{};
  for (std::size_t u = 0; u < table.size(); ++u)
    for (std::size_t k = 0; k < kind_names.size(); ++k)
      all[u][k] = can_be_in(table[u], static_cast<Kind>(k));
  return all;
}();

} // namespace

std::span<const UnitSpec> units() {
  return table;
}

const UnitSpec& spec(Unit unit) {
  const auto index = static_cast<std::size_t>(unit);
  return table[index < table.size() ? index : 0];
}

std::string_view symbol(Unit unit) {
  return spec(unit).symbol;
}

bool fits(Unit unit, Kind kind) {
  const auto row = static_cast<std::size_t>(unit);
  const auto column = static_cast<std::size_t>(kind);
  return row < fitting.size() && column < fitting[row].size() && fitting[row][column];
}

Unit usual_unit(Kind kind) {
  switch (kind) {
  case Kind::temperature:
    return Unit::celsius;
  case Kind::depth:
  case Kind::length:
    return Unit::metre;
  case Kind::area:
    return Unit::square_metre;
  case Kind::volume:
    return Unit::cubic_metre;
  case Kind::percent:
    return Unit::percent;
  case Kind::count:
  case Kind::date:
  case Kind::time:
  case Kind::truth:
    return Unit::none;
  }
  return Unit::none;
}

double convert(double value, Unit from, Unit to) {
  if (from == to)
    return value;
  const UnitSpec& a = spec(from);
  const UnitSpec& b = spec(to);
  if (a.kind != b.kind || walked(from) != walked(to))
    return nothing;
  return scaled(decimal_of(value), a.zero, a.numerator * b.denominator, a.denominator * b.numerator, b.zero);
}

double to_si(double value, Unit unit) {
  if (walked(unit))
    return nothing;
  const UnitSpec& u = spec(unit);
  if (u.numerator == u.denominator && u.zero == 0)
    return value;
  return scaled(decimal_of(value), u.zero, u.numerator, u.denominator, 0);
}

double from_si(double si, Unit unit) {
  if (walked(unit))
    return nothing;
  const UnitSpec& u = spec(unit);
  if (u.numerator == u.denominator && u.zero == 0)
    return si;
  return scaled(decimal_of(si), 0, u.denominator, u.numerator, u.zero);
}

double difference_to_si(double difference, Unit unit) {
  if (walked(unit))
    return nothing;
  const UnitSpec& u = spec(unit);
  return scaled(decimal_of(difference), 0, u.numerator, u.denominator, 0);
}

double difference_from_si(double si, Unit unit) {
  if (walked(unit))
    return nothing;
  const UnitSpec& u = spec(unit);
  return scaled(decimal_of(si), 0, u.denominator, u.numerator, 0);
}

std::string_view name(Kind kind) {
  const auto index = static_cast<std::size_t>(kind);
  return index < kind_names.size() ? kind_names[index] : std::string_view{};
}

std::optional<Kind> kind_named(std::string_view text) {
  for (std::size_t i = 0; i < kind_names.size(); ++i)
    if (kind_names[i] == text)
      return static_cast<Kind>(i);
  return std::nullopt;
}

} // namespace wetspell
