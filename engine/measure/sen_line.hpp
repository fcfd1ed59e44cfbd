// The line of Theil and Sen: the median of the slopes between all pairs of points, which a few wild values do
// not move.
#pragma once

#include "base/result.hpp"
#include "measure/kendall.hpp"

#include <cstddef>
#include <optional>
#include <span>

namespace wetspell {

struct SenLine {
  std::size_t n = 0;
  double slope = 0;
  std::optional<double> low, high; ///< of the slope; empty: too few points to bound it at this level
  double intercept = 0;            ///< median of y minus slope times median of x (Conover)
  double middle_intercept = 0; ///< median of y - slope * x (Hollander and Wolfe); one wild y moves it less
};

/// Pairs at the same x have no slope and are left out. Interval after Gilbert (1987, p. 218) from the
/// variance of Kendall's s, ends between two slopes by straight interpolation. Refuses fewer than two places
/// x (not_enough), unequal numbers and a bad level (bad_argument), and what is not finite (not_a_number).
Result<SenLine> theil_sen(std::span<const double> x, std::span<const double> y, double level);

/// The same with slopes within each season only; the intercepts are 0, since every season has its own.
/// Refuses times that stand twice in a season as well (bad_argument).
Result<SenLine> seasonal_sen(std::span<const Series> seasons, double level,
                             Together together = Together::independent);

} // namespace wetspell
