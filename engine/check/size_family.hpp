// The parts of the size family, each in a file of its own; size_rules() joins them.
#pragma once

#include "check/rule.hpp"

namespace wetspell {

std::vector<RuleSpec> size_slip_rules();   ///< written in another unit or way of counting
std::vector<RuleSpec> pacing_rules();      ///< lines that were paced
std::vector<RuleSpec> calibration_rules(); ///< people's calibration runs

} // namespace wetspell
