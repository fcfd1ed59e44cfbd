// The parts of the depth family, each in a file of its own; depth_rules() joins them.
#pragma once

#include "check/rule.hpp"

namespace wetspell {

std::vector<RuleSpec> depth_reading_rules(); ///< one depth: can it be read, and can it be right
std::vector<RuleSpec> wet_or_dry_rules();    ///< depth, class and the word for water
std::vector<RuleSpec> depth_change_rules();  ///< from visit to visit, and how it was taken

} // namespace wetspell
