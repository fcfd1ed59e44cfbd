// A computed value with its standard uncertainty (JCGM 100:2008), in SI.
#pragma once

namespace wetspell {

struct Measured {
  double value = 0;       ///< SI
  double uncertainty = 0; ///< standard uncertainty, SI; 0 means not known, never "exact"
};

} // namespace wetspell
