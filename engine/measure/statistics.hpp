// Mean, standard deviation and their uncertainty, safe against cancellation; quantiles; robust location and
// scale.
#pragma once

#include "base/result.hpp"

#include <cstddef>
#include <span>

namespace wetspell {

/// All in the unit of the values.
struct Moments {
  std::size_t n = 0;
  double mean = 0;
  double deviation = 0;        ///< sample standard deviation (n - 1); 0 for one value
  double mean_uncertainty = 0; ///< deviation / sqrt(n), GUM 4.2.3; 0 for one value: scatter is not known
  double smallest = 0;
  double largest = 0;
};

/// Two passes with compensated sums. Refuses an empty set (not_enough), values that are not finite, and
/// values so large that their sum is not (both not_a_number).
Result<Moments> moments(std::span<const double> values);

/// Half-width of the two-sided interval of the mean at `level` (0.95), Student's t with n - 1 degrees of
/// freedom. Refuses fewer than two values (not_enough) and a level that is not between 0 and 1
/// (bad_argument).
Result<double> mean_half_width(const Moments& moments, double level);

/// Quantile `p` in 0..1, definition 7 of Hyndman and Fan (1996), the one spreadsheets use. Sorts a copy.
/// Refuses as `moments` does, and a `p` outside 0..1 (bad_argument).
Result<double> quantile(std::span<const double> values, double p);

/// Median and 1.4826 times the median absolute deviation, which for normal scatter estimates the standard
/// deviation.
struct Robust {
  double median = 0;
  double deviation = 0;
};
/// Refuses as `moments` does.
Result<Robust> robust(std::span<const double> values);

/// The line y = slope * x through the origin by weighted least squares.
struct OriginLine {
  double slope = 0;
  double slope_uncertainty =
      0;                       ///< from the scatter about the line, n - 1 degrees of freedom; 0 for one point
  double residual_squares = 0; ///< weighted sum of squared distances from the line, along y
};
/// `x`, `y` and `weights` of equal length; a weight is in proportion to 1 / variance of that y. Refuses an
/// empty set (not_enough), unequal lengths and weights that are not over 0 (bad_argument), and data that give
/// no finite slope (not_a_number).
Result<OriginLine> line_through_origin(std::span<const double> x, std::span<const double> y,
                                       std::span<const double> weights);

} // namespace wetspell
