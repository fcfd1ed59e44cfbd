// How many there were, when two people counted the same things and know what both had seen.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <optional>

namespace wetspell {

/// What one person found of those that the other found.
struct FoundOfOther {
  double share = 0;
  Interval interval; ///< Wilson
};

struct TwoCounts {
  double seen = 0;     ///< by one or both: there are at least so many
  double estimate = 0; ///< Chapman (1951)
  double error = 0;    ///< standard error, Seber (1982); 0 when one saw all that the other saw
  Interval
      interval; ///< profile likelihood, to the nearest whole thing; no upper end (infinity) when both is 0
  Interval log_interval; ///< of the number missed by both, on the logarithm; for comparison
  std::optional<FoundOfOther> first_finds, second_finds; ///< empty when the other saw none
};

/// `first` and `second` counted by each, `both` of them seen by both. Taken for granted: nothing comes or
/// goes between the counts, the two search without help from each other, and all things are equally easy to
/// find; where some are harder to see for both, the estimate is too small.
///
/// The interval is that of the profile likelihood: the logarithmic one closes on the number seen when one
/// person saw all that the other saw, and in simulated counts of 60 with nine in ten found it held the true
/// number half of the times, where this one held it 97 times in a hundred.
///
/// Refuses counts below 0, not whole, or of both over either (bad_argument), what is not finite
/// (not_a_number), and a level not between 0 and 1 (bad_argument).
Result<TwoCounts> two_counts(double first, double second, double both, double level);

} // namespace wetspell
