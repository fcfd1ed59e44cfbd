// A straight line through points by least squares, with what it is worth: standard errors, intervals, and the
// place where it reaches a given height.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <optional>
#include <span>

namespace wetspell {

/// y = intercept + slope * x. Everything about scatter is 0 for two points, where it is not known.
struct Line {
  std::size_t n = 0;
  double x_mean = 0, y_mean = 0;
  double intercept = 0, slope = 0;
  double intercept_uncertainty = 0, slope_uncertainty = 0;
  double correlation = 0;        ///< of the errors of intercept and slope
  double residual_squares = 0;   ///< sum of squared distances from the line, along y
  double residual_deviation = 0; ///< sqrt(residual_squares / (n - 2))
  double x_squares = 0;          ///< sum of squared distances of x from their mean
  double r_squared = 0;          ///< share of y's squares about their mean that the line explains
  double f = 0;                  ///< what the line explains over the residual variance

  [[nodiscard]] double freedom() const { return static_cast<double>(n) - 2; }
  [[nodiscard]] double at(double x) const { return y_mean + slope * (x - x_mean); }
  /// Standard uncertainty of the line itself at `x`; of one more reading there when `reading`.
  [[nodiscard]] double uncertainty_at(double x, bool reading) const;
};

/// Ordinary least squares of y on x, centred and with compensated sums. Refuses fewer than two points and x
/// that are all the same (not_enough), unequal numbers (bad_argument), and what is not finite (not_a_number).
Result<Line> least_squares(std::span<const double> x, std::span<const double> y);

/// Half-width at `x` of the interval of the line (`reading` false) or of one more reading there (true), by
/// Student's t. Refuses fewer than three points (not_enough) and a bad level (bad_argument).
Result<double> half_width_at(const Line& line, double x, double level, bool reading);

/// Half-width of the interval of the slope. Refuses as half_width_at does.
Result<double> slope_half_width(const Line& line, double level);

/// Where the line reaches a height, with the interval of the x at which one more reading would show it. An
/// end that is empty lies beyond all bounds: the slope is not sure enough.
struct Crossing {
  double x = 0;
  std::optional<double> low, high;
};

/// Fieller's interval (inverse prediction): all x whose prediction interval holds `y`. Refuses as
/// half_width_at does, and a level line (not_enough), which reaches nothing.
Result<Crossing> crossing(const Line& line, double y, double level);

} // namespace wetspell
