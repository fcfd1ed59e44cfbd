// The parts of the setting family; setting_rules() joins them.
#pragma once

#include "check/rule.hpp"

namespace wetspell {

std::vector<RuleSpec> setting_change_rules(); ///< a setting that changes between visits, or is never given

} // namespace wetspell
