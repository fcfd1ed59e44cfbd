// One quantity as somebody wrote it: what it says, in which unit, how surely.
#pragma once

#include "quantity/unit.hpp"

#include <cstdint>
#include <limits>
#include <string_view>

namespace wetspell {

/// How a text speaks of its quantity.
enum class Status : std::uint8_t {
  blank,   ///< nothing was typed
  missing, ///< words for "not measured" or "not known"
  value,   ///< one number
  about,   ///< one number, said to be approximate
  over,    ///< more than the number
  under,   ///< less than the number
  range,   ///< between two numbers
  paces,   ///< a length counted in paces (two steps each)
  steps,   ///< a length counted in single steps
  bad,     ///< cannot be read; `reason` says why
};

/// Why something is bad or missing. Listed in quantity/reason.hpp, the words in one table in
/// quantity/reason.cpp.
enum class Reason : std::uint8_t;
/// The reason in words; empty for Reason{}.
std::string_view text(Reason reason);

/// A quantity as written. Small and trivially copied: a season holds millions.
struct Quantity {
  static constexpr double no_value = std::numeric_limits<double>::quiet_NaN();

  double written =
      no_value; ///< the number as typed, in `unit` (the lower end of a range; the count of paces or steps)
  double si = no_value; ///< in SI; date: days since 1899-12-30; time: fraction of a day; truth: 1 or 0
  double si_high =
      no_value; ///< upper end of a range in SI; equals `si` for one value; NaN where open or not known
  float resolution = 0; ///< the step of the last digit written, in SI: 0.1 for "12.3 °C" (0: unknown)
  Status status = Status::blank;
  Unit unit = Unit::none;  ///< as typed, or the assumed one
  bool unit_typed = false; ///< whether the unit stood in the text
  Reason reason{};

  /// One usable number (value or about).
  [[nodiscard]] bool has_value() const { return status == Status::value || status == Status::about; }
  [[nodiscard]] bool typed() const { return status != Status::blank; }
};

/// The number as written (lower end of a range) in another unit, by one exact step from what was typed:
/// compare this, not `si`, with a limit in that unit. NaN when there is no number or the unit is of another
/// kind.
double in_unit(const Quantity& quantity, Unit unit);
/// The same for the upper end; NaN where open.
double high_in_unit(const Quantity& quantity, Unit unit);

} // namespace wetspell
