// Which tables begin at a row of cells.
#pragma once

#include "season/field.hpp"
#include "table/table.hpp"

#include <cstdint>
#include <vector>

namespace wetspell {

/// A table that begins at a row: the columns of its fields.
struct FoundHeadings {
  TableKind kind{};
  std::vector<std::int32_t> columns; ///< per field of the table, in catalogue order; -1: none
  std::vector<Unit> units;           ///< per field: what the heading says; none: nothing
  int score = 0;                     ///< how many headings match; more: surer
  std::size_t first_column = 0;
  std::size_t last_column = 0;
};

/// Looks at rows of one sheet. Keeps what it learned about a column's texts, so that rows of data that
/// repeat the same words cost little.
class HeadingRows {
public:
  explicit HeadingRows(const Table& table);
  /// The tables that begin at this row; none for a row of data. Several when tables stand side by side.
  std::vector<FoundHeadings> at(std::size_t row);

private:
  struct Seen {
    std::string text;
    bool known = false;
  };
  [[nodiscard]] bool may_be_headings(std::size_t row);

  const Table& table_;
  std::vector<Seen> last_; ///< per column
};

} // namespace wetspell
