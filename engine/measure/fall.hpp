// A pool that falls: which readings belong to the fall since the last high water, and when it will be dry.
#pragma once

#include "base/result.hpp"
#include "measure/line.hpp"
#include "measure/measured.hpp"
#include "measure/sen_line.hpp"

#include <cstddef>
#include <optional>
#include <span>

namespace wetspell {

struct DepthReading {
  double day = 0;
  Measured depth; ///< m
};

/// Index of the reading with which the last fall begins: the deepest one since the last rise. A rise is one
/// between neighbours that is more than twice the standard uncertainty of their difference; where that is not
/// known, any. Readings stand in the order of days. 0 for none.
std::size_t last_high_water(std::span<const DepthReading> readings);

struct Drying {
  std::size_t n = 0;                ///< readings of the fall
  Line line;                        ///< depth in m on days
  SenLine robust;                   ///< the same by Theil and Sen
  Measured fall_a_day;              ///< m a day, over 0 while it falls
  Crossing dry;                     ///< day on which a reading would show 0
  std::optional<double> robust_dry; ///< the same by the robust line; empty when that does not fall
};

/// When a pool will be dry, from the readings of its last fall: least squares of depth on days, Fieller's
/// interval. The scatter about the line is taken as no smaller than the readings' own uncertainty. Refuses
/// fewer than three readings or days (not_enough), a last reading of 0 (bad_argument: it is dry), and a depth
/// that does not fall (bad_argument), with both numbers.
Result<Drying> drying(std::span<const DepthReading> fall, double level);

} // namespace wetspell
