// The decimal number a person typed, found again behind the binary one.
#pragma once

#include <cmath>
#include <cstdint>

namespace wetspell {

/// `digits` / `scale`, with `scale` a power of ten, when `exact`; otherwise the value itself over 1.
struct Decimal {
  double digits = 0;
  double scale = 1; ///< 1e8 at most
  bool exact = false;
};

/// 91.44 as a double is not 91.44, and every factor applied to it carries the difference along. Nobody types
/// more than a few decimals, so a value that is the double nearest to n / 10^k (k up to 8) is taken as n /
/// 10^k. Integer arithmetic on n then gives the double nearest to the true answer with a single rounding.
inline Decimal decimal_of(double value) {
  constexpr double largest = 4503599627370496.0; // 2^52: every integer below, and its half, is exact
  constexpr double scales[] = {1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8};
  for (const double scale : scales) {
    const double scaled = value * scale;
    if (!(std::fabs(scaled) < largest))
      break;
    const auto whole = static_cast<double>(static_cast<std::int64_t>(scaled + (scaled < 0 ? -0.5 : 0.5)));
    if (scale == 1 ? whole == value : whole / scale == value)
      return {whole, scale, true};
  }
  return {value, 1, false};
}

/// ((value - zero) * up / down) + new_zero with one rounding wherever the value is a short decimal.
inline double scaled(const Decimal& d, double zero, double up, double down, double new_zero) {
  if (zero == 0 && new_zero == 0)
    return d.digits * up / (d.scale * down);
  if (!d.exact)
    return (d.digits - zero) * up / down + new_zero;
  // Zeros of scales have at most two decimals: with the scale at 100 or more they are whole numbers too.
  const double more = d.scale < 100 ? 100 / d.scale : 1;
  const double scale = d.scale * more;
  const auto whole = [scale](double z) { return std::floor(z * scale + 0.5); };
  return ((d.digits * more - whole(zero)) * up + whole(new_zero) * down) / (scale * down);
}

} // namespace wetspell
