// What the pools of a season do in common, and which of them differs: robust, after the season's own spread.
#pragma once

#include "check/rule.hpp"

#include <vector>

namespace wetspell {

/// One reading of one visit, in SI.
struct PoolReading {
  std::uint32_t visit = 0; ///< index into Season::visits
  double day = 0;
  double value = 0;
};

/// Readings pool after pool, each pool's in time order, in one long list.
struct PoolReadings {
  std::vector<PoolReading> all;
  std::vector<std::size_t> ends; ///< per pool: one behind its last reading
};

/// How far is far.
struct FarTest {
  double floor = 0;   ///< a deviation that is always allowed for, in SI: what a reading is off by
  double lowest = 0;  ///< readings stop here: a pool that reached it can fall no further
  double highest = 0; ///< and here
  double far = 0;     ///< how many deviations are far
  double least = 0;   ///< how many other pools there must be
};

/// A reading that is far from the others.
struct Apart {
  std::uint32_t visit = 0;
  std::uint32_t other =
      SeasonView::nowhere; ///< the visit it was compared with; nowhere: the others' readings
  double usual = 0;        ///< the other pools' change (or reading)
  std::size_t others = 0;  ///< how many they are
};

/// One verdict a reading; only those that fail are listed, the others are counted.
struct Aparts {
  std::vector<Apart> failing;
  std::size_t holding = 0;
  std::size_t undecided = 0; ///< too few other pools, or nothing to compare with
};

/// Compares every change between two readings of a pool with what the others did in the same days. The
/// changes a day of all pools that were between two visits on a day give that day's usual change; the usual
/// change of a longer time is the sum over its days. One verdict for every reading after a pool's first;
/// where one reading makes the changes before and after it far, that reading alone fails (it may be a pool's
/// first). Cost: in proportion to the readings; where visits are far apart several days are taken together.
Aparts changes_apart(const PoolReadings& readings, const FarTest& test);

/// Compares every reading with those of other pools on the same day, the day before and the day after. Cost:
/// in proportion to the readings, and the first far one of a day sorts those around it.
Aparts levels_apart(const PoolReadings& readings, const FarTest& test);

} // namespace wetspell
