// Finds the tables on a sheet: where each begins and ends, which rows are headings, units, sums, dividers.
#pragma once

#include "audit/grid.hpp"
#include "audit/heading_words.hpp"

#include <optional>
#include <string>
#include <vector>

namespace wetspell {

/// A row of a table that is no record, and why.
enum class RowUse : std::uint8_t { title, heading, units, blank, sums, section, no_pool };
std::string_view name(RowUse use); ///< "title", "heading", "units", "blank", "sums", "section", "no pool"

struct PassedRow {
  std::size_t row = 0; ///< of the block's grid
  RowUse use{};
  std::string text; ///< the first words in it
};

/// A heading of one column, with that above it where headings stand in two rows.
struct BlockHeading {
  std::string text;       ///< as it is shown: "Water temperature: 2"
  std::string alone;      ///< the lower row's words; the same as `text` where there is one row
  Unit unit = Unit::none; ///< what the row of units says
};

/// Of a table with pools down and days across: where they stand. The days head their columns.
struct DayTable {
  std::size_t names = 0;         ///< the column of pools
  std::vector<std::size_t> days; ///< the columns headed by days, from left to right
  double sure = 0;               ///< that the names are pools, 0 to 1
  std::string why;
};

/// A table as it stands on the sheet. Rows and columns are those of `grid`.
struct Block {
  Grid grid;
  std::vector<BlockHeading> headings; ///< one a column
  std::size_t first_data = 0;
  std::size_t end_data = 0;
  std::vector<PassedRow> passed;   ///< rows at first_data and later that are no records, in order
  std::vector<std::size_t> filled; ///< per column: records that hold something there
  std::vector<std::string> titles; ///< the words above the headings
  std::optional<DayTable> days;    ///< where each cell is a reading of one pool and day
  /// Whether a row is a record; `passed` is in order.
  [[nodiscard]] bool is_record(std::size_t row) const;
  [[nodiscard]] std::size_t records() const { return end_data - first_data - passed.size(); }
};

/// All tables of a sheet, from top to bottom and left to right. A sheet without any known heading gives the
/// one table that its shape suggests, or none.
std::vector<Block> find_tables(const Table& sheet);

} // namespace wetspell
