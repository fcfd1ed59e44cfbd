// The parts of the temperature family, each in a file of its own; temperature_rules() joins them.
#pragma once

#include "check/rule.hpp"

namespace wetspell {

std::vector<RuleSpec> reading_rules();    ///< one temperature at a time
std::vector<RuleSpec> readings_rules();   ///< the readings of a visit among each other
std::vector<RuleSpec> warm_water_rules(); ///< against water, depth and the visit before

} // namespace wetspell
