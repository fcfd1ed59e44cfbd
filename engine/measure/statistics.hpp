// Mean, standard deviation and their uncertainty, safe against cancellation; quantiles; robust location and
// scale.
#pragma once

#include "base/result.hpp"

#include <cstddef>
#include <span>

namespace wetspell {

struct Moments {
  std::size_t n = 0;
  double mean = 0;
  double deviation = 0;        ///< sample standard deviation (n - 1); 0 for one value
  double mean_uncertainty = 0; ///< deviation / sqrt(n), GUM 4.2.3
  double smallest = 0;
  double largest = 0;
};

/// Two-pass with compensation. Refuses an empty set (not_enough) and values that are not finite
/// (not_a_number).
Result<Moments> moments(std::span<const double> values);

/// Half-width of the two-sided interval of the mean at `level` (0.95), Student's t with n - 1 degrees of
/// freedom.
Result<double> mean_half_width(const Moments& moments, double level);

/// Quantile `p` in 0..1, definition 7 of Hyndman and Fan (1996), the one spreadsheets use. Sorts a copy.
Result<double> quantile(std::span<const double> values, double p);

/// Median and 1.4826 times the median absolute deviation.
struct Robust {
  double median = 0;
  double deviation = 0;
};
Result<Robust> robust(std::span<const double> values);

} // namespace wetspell
