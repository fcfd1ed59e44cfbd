// The unit in a heading: in brackets, after a comma or a blank, run on behind the last word.
#pragma once

#include "quantity/unit.hpp"

#include <string>
#include <string_view>

namespace wetspell {

struct HeadingUnit {
  Unit unit = Unit::none;
  std::string text; ///< the words read as the unit
  std::string rest; ///< the heading without them
};

/// Looks for a unit at the end or in brackets. "Depth_cm", "DepthCm", "depth, in.", "Temp (deg. C)",
/// "Temp Celcius". The whole text is never a unit.
HeadingUnit unit_in_heading(std::string_view text);

/// The unit a text names, misspelt by one slip at most.
Unit unit_meant(std::string_view text);

} // namespace wetspell
