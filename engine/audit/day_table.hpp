// Tables with pools down one side and days along the other, each cell one reading.
#pragma once

#include "audit/heading_scan.hpp"

#include <optional>
#include <span>
#include <string>

namespace wetspell {

/// What a grid holds that has such a table's days in its first row. Nothing where it has none, or where
/// nothing says surely enough that the names are pools. `about`: what titles and the sheet's name say.
std::optional<DayTable> day_table(HeadingScan& scan, const Grid& grid, std::span<const std::string> about);

/// Whether a row could hold the days of such a table, or the column of the row's first cell. Quick: to be
/// asked before day_table().
bool days_may_lie_across(const Grid& grid, std::size_t row);
bool days_may_lie_below(const Grid& grid, std::size_t row);

} // namespace wetspell
