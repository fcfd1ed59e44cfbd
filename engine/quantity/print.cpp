#include "quantity/print.hpp"

#include "quantity/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace wetspell {

namespace {

/// The shortest digits that give the value back, without an exponent: "0.1", "-25", "1200000".
std::string shortest(double value) {
  char buffer[400]; // 309 digits before the point, or 324 after it with the shortest digits behind
  const auto [end, error] =
      std::to_chars(std::begin(buffer), std::end(buffer), value, std::chars_format::fixed);
  return error == std::errc{} ? std::string(buffer, end) : fmt::format("{}", value);
}

/// Adds one in the last place of a string of digits and at most one point; may grow by one digit.
void step_up(std::string& digits) {
  for (auto it = digits.rbegin(); it != digits.rend(); ++it) {
    if (*it == '.')
      continue;
    if (*it != '9') {
      ++*it;
      return;
    }
    *it = '0';
  }
  digits.insert(digits.begin(), '1');
}

/// Cuts `digits` (no sign) to `decimals`, rounding to nearest, ties to even.
void round_digits(std::string& digits, std::size_t decimals) {
  const auto point = digits.find('.');
  if (point == std::string::npos || digits.size() - point - 1 <= decimals)
    return;
  const std::size_t cut = point + 1 + decimals;
  const char next = digits[cut];
  const bool more = digits.find_first_not_of('0', cut + 1) != std::string::npos;
  digits.resize(decimals == 0 ? point : cut);
  const bool odd = (digits.back() - '0') % 2 != 0;
  if (next > '5' || (next == '5' && (more || odd)))
    step_up(digits);
}

std::string rounded(double value, int decimals, bool keep_zeros) {
  if (!std::isfinite(value))
    return "not known";
  std::string digits = shortest(std::fabs(value));
  const auto places = static_cast<std::size_t>(std::clamp(decimals, 0, 400));
  round_digits(digits, places);
  const auto point = digits.find('.');
  if (keep_zeros && places > 0) {
    const std::size_t have = point == std::string::npos ? 0 : digits.size() - point - 1;
    if (point == std::string::npos)
      digits += '.';
    digits.append(places - have, '0');
  } else if (!keep_zeros && point != std::string::npos) {
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.back() == '.')
      digits.pop_back();
  }
  const bool zero = digits.find_first_not_of("0.") == std::string::npos;
  return value < 0 && !zero ? "-" + digits : digits;
}

std::string with_symbol(std::string number, Unit unit) {
  if (number == "not known")
    return number;
  if (unit == Unit::percent)
    return number + "%";
  if ((unit == Unit::pace || unit == Unit::step) && number == "1")
    return fmt::format("1 {}", spec(unit).name);
  const auto sign = symbol(unit);
  return sign.empty() ? number : fmt::format("{} {}", number, sign);
}

bool counted(Unit unit) {
  return unit == Unit::pace || unit == Unit::step;
}

std::string number(double si, Unit unit, int more_decimals = 0) {
  return rounded(counted(unit) ? si : from_si(si, unit), spec(unit).decimals + more_decimals, false);
}

} // namespace

std::string fixed(double value, int decimals) {
  return rounded(value, std::min(decimals, 15), true);
}

std::string plain(double value, int decimals) {
  return rounded(value, decimals, false);
}

std::string print_number(double si, Unit unit) {
  return number(si, unit);
}

std::string print(double si, Unit unit) {
  return with_symbol(number(si, unit), unit);
}

std::array<std::string, 2> print_apart(double si, double other_si, Unit unit) {
  constexpr int most = 3;
  int more = 0;
  while (more < most && number(si, unit, more) == number(other_si, unit, more))
    ++more;
  return {with_symbol(number(si, unit, more), unit), with_symbol(number(other_si, unit, more), unit)};
}

std::string print_difference(double si, Unit unit) {
  const double difference = counted(unit) ? si : difference_from_si(si, unit);
  return with_symbol(rounded(difference, spec(unit).decimals, false), unit);
}

std::string print_date(double serial) {
  const auto date = date_of(serial);
  return date ? fmt::format("{:04}-{:02}-{:02}", date->year, date->month, date->day) : plain(serial);
}

std::string print_time(double fraction_of_day) {
  if (!(fraction_of_day >= 0 && fraction_of_day < 1))
    return plain(fraction_of_day);
  const auto minutes = std::min(1439L, std::lround(fraction_of_day * 1440));
  return fmt::format("{:02}:{:02}", minutes / 60, minutes % 60);
}

} // namespace wetspell
