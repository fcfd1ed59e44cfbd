// The share that is left by moment where every event is known to the moment, or is only known not to have
// happened up to a last look.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace wetspell {

struct FollowedUp {
  double moment = 0;
  bool happened = false; ///< the event at that moment; false: not until then
};

struct LeftStep {
  double moment = 0;
  std::size_t at_risk = 0; ///< right before; one last seen without its event at this moment is among them
  std::size_t events = 0;
  double share = 0;  ///< left after it
  double error = 0;  ///< standard error, Greenwood (1926)
  Interval interval; ///< on the scale of log(-log(share)); 0 to 1 where the share is 0 or 1
};

/// Kaplan and Meier (1958): one step for every moment with an event. Refuses nothing at all (not_enough),
/// moments that are not finite (not_a_number) and a level not between 0 and 1 (bad_argument).
Result<std::vector<LeftStep>> kaplan_meier(std::span<const FollowedUp> all, double level);

/// The first moment at which no more than half are left, and where the steps' intervals come down to a half
/// (Brookmeyer and Crowley 1982). Empty: not within what was followed.
struct LeftMedian {
  std::optional<double> median, low, high;
};
LeftMedian median_of(std::span<const LeftStep> steps);

} // namespace wetspell
