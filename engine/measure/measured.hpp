// A computed value with its standard uncertainty (JCGM 100:2008), in SI.
#pragma once

namespace wetspell {

struct Measured {
  double value = 0;       ///< SI
  double uncertainty = 0; ///< standard uncertainty, SI; 0 means not known, never "exact"
};

/// Both ends of an interval.
struct Interval {
  double low = 0, high = 0;
};

} // namespace wetspell
