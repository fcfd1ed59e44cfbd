// Print quantities for people: in the unit asked for, with sensible digits.
#pragma once

#include "quantity/unit.hpp"

#include <array>
#include <string>

namespace wetspell {

// Rounding is that of NIST SP 811 (2008), B.7.1: to the nearest, and a value exactly half way (as its
// shortest decimal digits stand) to the even digit. Zeros at the end of the decimals are left out.

/// "64.2 °F", "25 in", "75%": `si` in `unit`, with as many decimals as suit the unit in field work. For paces
/// and steps the number is the count itself. Not a finite number: "not known".
std::string print(double si, Unit unit);
/// Two values that a message sets against each other: with as many more decimals, up to three, as tell them
/// apart ("1.5 ft²" and "1.6 ft²", not "2 ft²" twice).
std::array<std::string, 2> print_apart(double si, double other_si, Unit unit);
/// The number alone.
std::string print_number(double si, Unit unit);
/// A difference (a spread, a change): no zero offset.
std::string print_difference(double si, Unit unit);
/// "2026-03-21" from days since 1899-12-30; the plain number when it lies outside the years 1 to 9999.
std::string print_date(double serial);
/// "09:05" from the fraction of a day, to the nearest minute.
std::string print_time(double fraction_of_day);
/// Exactly `decimals` decimals (0 to 15), ties to even: fixed(6.9749515, 4) is "6.9750".
std::string fixed(double value, int decimals);
/// Plain number: the shortest digits that give the value back, at most `decimals` decimals.
std::string plain(double value, int decimals = 12);

} // namespace wetspell
