// Lengths by paces: a person's pace from runs over a taped distance, and the length of a paced line.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"
#include "quantity/quantity.hpp"

#include <span>

namespace wetspell {

/// One walk over a taped distance.
struct CalibrationRun {
  double distance = 0; ///< metres
  double count = 0;    ///< paces or steps, in the person's own way of counting
};

/// Whether somebody counts every second step (a pace is two steps) or every step.
enum class CountedAs : std::uint8_t { paces, steps };

struct PaceLength {
  Measured pace; ///< metres for one pace (two steps)
  int runs = 0;
  double variation = 0; ///< relative standard deviation between runs; NaN for one run
};

/// Pace length through the origin (distance = pace * count, least squares weights as the runs' distances),
/// uncertainty from the runs' scatter; from the half-count rounding alone for one run.
Result<PaceLength> pace_from_runs(std::span<const CalibrationRun> runs, CountedAs counted);

/// Length of a line of `count` paces or steps, with the count's rounding (rectangular, half a count either
/// way, GUM 4.3.7) and the pace's uncertainty (GUM 5.1.2).
Result<Measured> paced_length(double count, CountedAs counted, const Measured& pace);

} // namespace wetspell
