// What words that stand beside a heading name: the reading of a whole table ("Depth (cm)" in its corner), or
// of the rows that bear the word.
#pragma once

#include "audit/candidates.hpp"
#include "audit/map_headings.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// What a name means for the cells that it is said of; left open where the words times `factor` are not sure
/// enough. `heading`: what a person reads there; `said_by`: where it stands, for the reason.
Mapping map_reading(const std::string& heading, const Column& named, std::string_view said_by, double factor);

/// Lets a person's word count for a reading at a pool.
void take_given(const GivenMapping& given, Mapping& reading);

/// A mapping for every word of a table with a row a reading, in the order in which the words come first.
std::vector<Mapping> map_reading_words(const Block& block, const BlockMap& map, const MapHints& hints);

} // namespace wetspell
