// Where tables begin on a sheet.
#pragma once

#include "audit/heading_scan.hpp"

#include <vector>

namespace wetspell {

/// What the row in which a table begins holds.
enum class Begins : std::uint8_t {
  headings,    ///< names of columns
  days_across, ///< days, with pools below in a column of their own
  days_down,   ///< pools, with days below in a column of their own
};

struct Beginning {
  std::size_t row = 0;
  Begins with{};
};

/// The rows in which tables begin, from top to bottom. Inside a table another one begins only below a gap; a
/// row of the same cells as that of the table above is the same table's, on the next page of a print.
std::vector<Beginning> beginnings(HeadingScan& scan);

/// The columns that hold something from a row up to an end, in runs without a blank column.
std::vector<Span> filled_columns(const Grid& grid, std::size_t row, std::size_t end);

inline constexpr std::size_t titles_above = 12; ///< rows above the headings that may tell about the table

// Rows that are searched one by one. Further down a table only ends where a row is blank, so that long tables
// are not read twice.
inline constexpr std::size_t searched_closely = 2000;

} // namespace wetspell
