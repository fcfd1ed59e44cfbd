// The parts of the life family, each in a file of its own; life_rules() joins them.
#pragma once

#include "check/rule.hpp"

namespace wetspell {

std::vector<RuleSpec> life_count_rules(); ///< the three counts of one row
std::vector<RuleSpec> life_time_rules();  ///< against the season, the visits, and earlier counts

/// What a row of life counts is about, for messages: "wood frog, egg masses".
std::string animal_words(const Season& season, const LifeCount& life);

/// The count of animals or egg masses in a row: the larger of the two people's counts; nothing where neither
/// can be used.
std::optional<double> counted_animals(const LifeCount& life);

} // namespace wetspell
