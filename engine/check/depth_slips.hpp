// What a depth may have been meant to be.
#pragma once

#include "check/rule.hpp"

#include <optional>

namespace wetspell {

enum class DepthSlip : std::uint8_t { none, centimetres_as_inches, inches_as_centimetres, decimal };

struct MeantDepth {
  DepthSlip slip = DepthSlip::none;
  double written = 0; ///< in `unit`
  Unit unit = Unit::none;
  double si = 0;
};

/// For a depth that is deeper than usual for the pool, far from both its neighbours in time, or outside the
/// class that was judged: the one slip that explains it. Evidence is asked in this order: the class judged on
/// the spot, the visits before and after, the pool's deepest. `none` when no slip fits, or when two do.
MeantDepth meant_depth(const SeasonView& view, const Visit& visit);

} // namespace wetspell
