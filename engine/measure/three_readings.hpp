// The water temperature of a visit: the mean of three readings, and what is missing of them.
#pragma once

#include "base/result.hpp"
#include "quantity/quantity.hpp"

#include <span>

namespace wetspell {

struct ReadingsMean {
  int expected = 0;       ///< how many readings there should be
  int read = 0;           ///< how many can be used
  double mean = 0;        ///< °C (or the SI unit of the readings)
  double spread = 0;      ///< largest minus smallest; NaN with fewer than two readings
  double deviation = 0;   ///< sample standard deviation; NaN with fewer than two
  double uncertainty = 0; ///< of the mean: readings' scatter and the instrument's, combined; always > 0
  int blank = 0;
  int missing = 0;
  int unreadable = 0;
};

/// Standard uncertainty of a field thermometer where nothing better is known, in °C (rectangular ±0.5 °C).
double thermometer_uncertainty();

/// Mean of the usable readings. Refuses only when none is usable (not_enough) or one is unreadable
/// (bad_argument).
Result<ReadingsMean> mean_of_readings(std::span<const Quantity> readings);

} // namespace wetspell
