// The share of pools that a species used, when looking does not always find it.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <span>
#include <string>

namespace wetspell {

/// One pool in one season: how often it was looked at, and how often the species was found.
struct Looks {
  std::size_t looks = 0;
  std::size_t found = 0;
};

struct Occupancy {
  std::size_t pools = 0;
  std::size_t looks = 0;
  double found_in = 0; ///< share of pools in which it was found at all
  double used = 0;     ///< share of pools estimated to be used
  double used_error = 0;
  Interval used_interval;    ///< on the logit scale
  double found_per_look = 0; ///< chance that one look at a used pool finds it
  double found_error = 0;
  Interval found_interval;
  double log_likelihood = 0;
  std::string caution; ///< why the interval is not what it should be; empty: nothing to say
};

/// Single-season occupancy with one chance of use and one of finding (MacKenzie et al. 2002), by maximum
/// likelihood; standard errors from the observed information. Pools that were never looked at are passed
/// over.
///
/// Taken for granted: a pool is used for the whole of its looks or not at all; looks find independently; a
/// find is never a mistake; all pools and looks are alike.
///
/// Where the estimate ends at a limit, errors are 0, the intervals are exact ones (Clopper and Pearson) of
/// what was seen, and the caution says so. Refuses (not_enough) when no pool was looked at, when no pool was
/// looked at twice, and when the species was never found; (bad_argument) more finds than looks.
Result<Occupancy> occupancy(std::span<const Looks> pools, double level);

/// How many looks without a find it takes to be sure at `level` that a pool is not used (Kery 2002): not
/// rounded. Refuses chances and levels not between 0 and 1 (bad_argument).
Result<double> looks_to_be_sure(double found_per_look, double level);

} // namespace wetspell
