// How sure a share is that was counted (so many of so many), and how sure a count is.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

namespace wetspell {

/// Interval of the share `some` of `all`, Wilson (1927), without continuity correction: covers close to its
/// level on the average over shares. Never leaves 0 to 1, and ends there exactly for none and for all.
///
/// Refuses 0 of 0 (not_enough), `some` over `all`, counts below 0 or not whole and a level not between 0 and
/// 1 (bad_argument), and what is not finite (not_a_number).
Result<Interval> wilson_interval(double some, double all, double level);

/// The same by Clopper and Pearson (1934): covers at least its level whatever the share, and so is wider.
Result<Interval> exact_interval(double some, double all, double level);

/// Interval of the mean of a Poisson count, Garwood (1936): covers at least its level. Refuses as above.
Result<Interval> poisson_interval(double count, double level);

} // namespace wetspell
