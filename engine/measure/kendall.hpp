// Kendall's rank correlation of values with time: whether there is a trend at all.
#pragma once

#include "base/result.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace wetspell {

/// One series: `y` at the times `x`, in any order.
struct Series {
  std::vector<double> x, y;
};

struct Kendall {
  std::size_t n = 0;
  std::int64_t s = 0;  ///< pairs that rise minus pairs that fall
  double variance = 0; ///< of s when there is no trend, with ties in y taken into account
  double z = 0;        ///< s brought one nearer to 0, over the root of the variance; 0 for s = 0
  double p = 1;        ///< two-sided: the chance of an s as far from 0 when there is no trend
  bool exact = false;  ///< p by counting all orders, not by the normal distribution
  double tau_a = 0;    ///< s over the number of pairs
  double tau_b = 0;    ///< the same with pairs of equal y left out (in part); 0 when all y are equal
};

/// No values are counted exactly beyond so many.
inline constexpr std::size_t exact_kendall_most = 40;

/// Mann-Kendall test. p is exact where no two y are equal and there are at most exact_kendall_most values;
/// else normal with continuity correction. Refuses fewer than two values and unequal numbers as
/// least_squares does, and times that stand twice (bad_argument).
Result<Kendall> mann_kendall(const Series& series);

/// What the values of several series at one time have to do with each other: nothing, or what their ranks
/// show (a dry year is dry in every month and in every pool).
enum class Together : std::uint8_t { independent, dependent };

/// The variance of the sum of several series' s when none has a trend, with ties taken into account.
/// Dependent: with the covariances that the ranks show (Dietz and Killeen 1981; Hirsch and Slack 1984); a
/// series may lack some of the times.
double variance_of_sum(std::span<const Series> seasons, Together together);

/// The seasonal test (Hirsch, Slack and Smith 1982): each season's s and variance added up, with the
/// covariances of Hirsch and Slack (1984) for dependent ones; always normal. `n` counts all values.
Result<Kendall> seasonal_kendall(std::span<const Series> seasons, Together together = Together::independent);

/// The chance that n values without ties in random order give an s of at least `s`.
double kendall_upper_tail(std::size_t n, std::int64_t s);

/// The least number of values from which a perfect rise can have a two-sided p of at most `p`.
std::size_t fewest_for(double p);

} // namespace wetspell
