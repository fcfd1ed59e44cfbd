// Headings that name an animal, for sheets in which every kind has a column of its own.
#pragma once

#include "audit/heading_words.hpp"

namespace wetspell {

/// "Wood frog egg masses", "spotted sal. masses", "Fairy shrimp": the animal of the species catalogue and its
/// form (egg masses where only "eggs" or "masses" is said, the animal's first form in the catalogue where
/// nothing is). Nothing when no animal is named.
std::optional<CountColumn> count_heading(std::string_view text);

} // namespace wetspell
