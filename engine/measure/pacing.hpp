// Lengths by paces: a person's pace from runs over a taped distance, and the length of a paced line.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <cstdint>
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

/// Pace length from one or more runs: all metres over all counts, which is least squares through the origin
/// of counts on distances when a count's variance grows with the distance walked. Tape errors are taken as
/// none. Uncertainty: the runs' scatter (two runs or more) and the rounding of each count (rectangular, half
/// a count either way, GUM 4.3.7) in quadrature. Rounding is partly in the scatter already, so this errs on
/// the large side. Refuses no run (not_enough), a distance or count that is not over 0 (bad_argument), or not
/// finite (not_a_number).
Result<PaceLength> pace_from_runs(std::span<const CalibrationRun> runs, CountedAs counted);

/// Length in metres of a line of `count` paces or steps, with the count's rounding (rectangular, half a count
/// either way, GUM 4.3.7) and the pace's uncertainty (GUM 5.1.2). A pace whose uncertainty is not known (0)
/// gives a length whose uncertainty is not known. A count of 0 is a length of 0; refuses a count below 0 or a
/// pace that is not over 0 (bad_argument), and what is not finite (not_a_number).
Result<Measured> paced_length(double count, CountedAs counted, const Measured& pace);

} // namespace wetspell
