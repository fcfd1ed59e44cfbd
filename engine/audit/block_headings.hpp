// Headings of a table in one row or two, and the row of units below them.
#pragma once

#include "audit/heading_scan.hpp"

namespace wetspell {

/// A heading as one line of text: breaks inside a cell become blanks; a number stands for itself.
std::string line_of(const Cell& cell);

struct HeadingLines {
  std::size_t first = 0;      ///< first row of headings
  std::size_t first_data = 0; ///< first row below headings and units
  std::vector<BlockHeading> headings;
};

/// `row` names columns; a row above it (not above `above`) may group them, one below may divide them.
HeadingLines headings_of(HeadingScan& scan, std::size_t row, std::size_t end, std::size_t above,
                         Span columns);

} // namespace wetspell
