// The water temperature of a visit: the mean of three readings, and what is missing of them.
#pragma once

#include "base/result.hpp"
#include "quantity/quantity.hpp"

#include <span>

namespace wetspell {

/// All temperatures in °C, differences in °C as well.
struct ReadingsMean {
  int expected = 0;       ///< how many readings there should be
  int read = 0;           ///< how many can be used
  double mean = 0;        ///< °C
  double spread = 0;      ///< largest minus smallest; NaN with fewer than two readings
  double deviation = 0;   ///< sample standard deviation; NaN with fewer than two
  double uncertainty = 0; ///< of the mean: readings' scatter and the instrument's, combined; always > 0
  int blank = 0;
  int missing = 0; ///< said to be not measured
};

/// Standard uncertainty of a field thermometer where nothing better is known, in °C (rectangular ±0.5 °C).
double thermometer_uncertainty();

/// Mean of the usable readings (exact or about), as many as `readings` are expected.
///
/// Uncertainty, GUM 5.1.2: the scatter over the square root of the number of readings, and in quadrature the
/// thermometer's own error, which all readings of a visit share and which more readings do not make smaller.
/// With one usable reading the scatter over the pool is not known, and the uncertainty is the thermometer's
/// alone.
///
/// Refuses when no reading is usable (not_enough), and when one cannot be read, is a range, open-ended or not
/// a temperature (bad_argument).
Result<ReadingsMean> mean_of_readings(std::span<const Quantity> readings);

} // namespace wetspell
