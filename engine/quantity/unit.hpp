// Kinds of quantity, their units, and the exact factors between them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace wetspell {

/// What a cell is about. `truth` is yes/no, `time` a time of day, `count` a whole number of things.
enum class Kind : std::uint8_t {
  temperature,
  depth,
  length,
  area,
  volume,
  percent,
  count,
  date,
  time,
  truth
};
inline constexpr std::size_t kinds_of_quantity = 10;

enum class Unit : std::uint8_t {
  none, // counts, dates, times, yes/no
  celsius,
  fahrenheit,
  kelvin,
  millimetre,
  centimetre,
  metre,
  inch,
  foot,
  yard,
  square_metre,
  square_foot,
  square_yard,
  acre, // international acre
  hectare,
  cubic_metre,
  cubic_foot,
  percent,
  one,  // a fraction of one
  pace, // two steps; has no length until somebody's calibration is known
  step,
};

/// One unit: exact factor (SI = value * numerator / denominator + offset) and how it is printed.
struct UnitSpec {
  Unit unit;
  Kind kind;               ///< length units serve depth and length alike and say `length`
  std::string_view symbol; ///< as printed after a number: "in", "ft", "°C"
  std::string_view name;   ///< "inch"
  double numerator;        ///< to SI: (value - zero) * numerator / denominator
  double denominator;
  double zero;             ///< what reads 0 in SI: 32 for °F, 273.15 for K, otherwise 0
  int decimals;            ///< at most so many decimals when printed: what field work can tell apart
  std::string_view source; ///< where the factor stands
};

/// All units, in the order of the enum.
std::span<const UnitSpec> units();
const UnitSpec& spec(Unit unit);
std::string_view symbol(Unit unit);

/// Whether a quantity of this kind can be written in this unit (paces and steps: length only).
bool fits(Unit unit, Kind kind);

/// The unit a person means by this word or sign ("in", "inches", "″", "°F", "sq ft"), if there is one.
/// A closed vocabulary; capitals, full stops and extra spaces do not matter.
std::optional<Unit> unit_named(std::string_view text);
/// The known unit word one slip of the pen away from `word` ("inchs": "inches"), empty when there is none or
/// when words of different units are equally near. For a hint only; nothing is read by it.
std::string_view unit_word_near(std::string_view word);

/// The unit of a bare number where nothing else was agreed: °C, m, m², m³, %; none for counts, dates, times,
/// truth.
Unit usual_unit(Kind kind);

/// From one unit to another of the same kind, by the exact factors, with one rounding: a value typed with up
/// to eight decimals comes out as the double nearest to the true answer, so 91.44 cm is exactly 36 in (and
/// the other way round), also on the way through SI. NaN when the kinds differ; paces and steps: only 1 pace
/// = 2 steps.
double convert(double value, Unit from, Unit to);

/// Value in SI (metre, °C, square metre, cubic metre, fraction of one). NaN for paces and steps.
double to_si(double value, Unit unit);
double from_si(double si, Unit unit);
/// A difference or standard deviation: the zero of the scale plays no part.
double difference_to_si(double difference, Unit unit);
double difference_from_si(double si, Unit unit);

/// The name of a kind as commands and functions spell it: "temperature".
std::string_view name(Kind kind);
std::optional<Kind> kind_named(std::string_view text);

} // namespace wetspell
