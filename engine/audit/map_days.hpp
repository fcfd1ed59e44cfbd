// What the cells of a table with pools down one side and days along the other are readings of.
#pragma once

#include "audit/map_headings.hpp"

namespace wetspell {

/// Maps a block with days. Where neither corner, titles nor sheet name a reading it stays open, and the table
/// is none of ours until a person says what was read: under the heading that the columns of days share.
BlockMap map_days(const Block& block, const MapHints& hints);

/// How many cells under the days of such a block hold something.
std::size_t filled_cells(const Block& block);

} // namespace wetspell
