// From visits that saw water or none: when a pool filled, when it dried, and how long it can have held water.
#pragma once

#include "estimate/between.hpp"
#include "estimate/history.hpp"

#include <span>
#include <vector>

namespace wetspell {

/// At least so many days, and fewer than `most` (infinity: open).
struct DaysBetween {
  double least = 0;
  double most = 0;
};

/// One run of visits that saw water, from filling to drying. The day of neither is ever known, only the
/// visits around it, so no day is made up.
struct WetSpell {
  Between filled; ///< after the last dry visit before; open when the pool held water at its first visit
  Between dried;  ///< after the last wet visit, by the first dry one; open when it was never seen dry again
};

struct PoolWater {
  std::vector<WetSpell> spells; ///< none: never seen wet
  std::size_t days = 0;         ///< days with a visit that says wet or dry
  double first_day = 0;         ///< of these
  double last_day = 0;
  bool wet_at_first = false;
  bool wet_at_last = false;
};

/// A visit that does not say whether water stood is passed over; of two on one day that differ, the wet one
/// counts, since a pool that is seen wet holds water on that day. The visits stand in the order of days.
PoolWater water_of(std::span<const CountedVisit> visits);

/// How long a spell lasted: from the first wet visit to the last at least, and less than from the dry visit
/// before it to the dry visit after it. What the visits did not see is taken not to have happened: that the
/// pool dried and filled again between two wet visits, or the other way round.
DaysBetween days_wet(const WetSpell& spell);

/// The same for all spells of a season together.
DaysBetween days_wet(std::span<const WetSpell> spells);

} // namespace wetspell
