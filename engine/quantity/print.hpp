// Print quantities for people: in the unit asked for, with sensible digits.
#pragma once

#include "quantity/unit.hpp"

#include <string>

namespace wetspell {

/// "64.2 °F", "25 in": `si` in `unit`, with as many decimals as suit the unit in field work.
std::string print(double si, Unit unit);
/// The number alone.
std::string print_number(double si, Unit unit);
/// A difference (a spread, a change): no zero offset.
std::string print_difference(double si, Unit unit);
/// "2026-03-21" from days since 1899-12-30.
std::string print_date(double serial);
/// Plain number: the shortest digits that give the value back, at most `decimals` decimals.
std::string plain(double value, int decimals = 12);

} // namespace wetspell
