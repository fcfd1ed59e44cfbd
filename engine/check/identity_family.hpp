// The parts of the identity family, each in a file of its own; identity_rules() joins them.
#pragma once

#include "check/rule.hpp"

namespace wetspell {

std::vector<RuleSpec> who_rules();      ///< pools, people and words that no table knows
std::vector<RuleSpec> date_rules();     ///< one date
std::vector<RuleSpec> clock_rules();    ///< begin and end of a visit
std::vector<RuleSpec> same_day_rules(); ///< rows that cannot both be right, gaps
std::vector<RuleSpec> count_rules();    ///< pool, date and person of life counts

} // namespace wetspell
