// A rectangle of cells and the place each came from: the one form in which every source reaches the engine.
#pragma once

#include "base/zeroed.hpp"
#include "table/cell.hpp"

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// Where a cell stands: sheet (or file) name, row from 1 as Calc numbers it, column from 0 (A).
struct Place {
  std::string sheet;
  std::size_t row = 1;
  std::size_t column = 0;
  bool operator==(const Place&) const = default;
};

/// The most cells that are read from one sheet or file, so that a far-flung one stays within memory.
inline constexpr std::size_t most_cells = std::size_t{1} << 26;

/// "A", "Z", "AA": the letters Calc shows for a column counted from 0.
std::string column_letters(std::size_t column);

/// "Visits.F23", with the sheet name quoted where Calc would quote it.
std::string to_text(const Place& place);

/// A rectangle of cells. Rows and columns are counted from 0 inside the table. In memory a column's cells
/// follow each other: what is asked most of a long table is asked of one column from its top to its end.
class Table {
public:
  Table() = default;
  /// An empty table of `rows` x `columns` cells whose first cell stands at `origin`.
  Table(Place origin, std::size_t rows, std::size_t columns);

  [[nodiscard]] const std::string& sheet() const { return origin_.sheet; }
  [[nodiscard]] std::size_t rows() const { return rows_; }
  [[nodiscard]] std::size_t columns() const { return columns_; }
  [[nodiscard]] const Cell& at(std::size_t row, std::size_t column) const {
    return cells_[column * rows_ + row];
  }
  [[nodiscard]] Cell& at(std::size_t row, std::size_t column) { return cells_[column * rows_ + row]; }
  /// For a loop that is the first to fill a long table, before it does anything else with an empty row: a
  /// page that is read before it is written to is mapped twice, and the second time stops all processors.
  void open_row(std::size_t row) {
    for (std::size_t column = 0; column < columns_; ++column)
      std::construct_at(&at(row, column));
  }
  /// Row from 1 as Calc numbers it.
  [[nodiscard]] std::size_t sheet_row(std::size_t row) const { return origin_.row + row; }
  /// Column from 0 (A) in the sheet.
  [[nodiscard]] std::size_t sheet_column(std::size_t column) const { return origin_.column + column; }
  [[nodiscard]] Place place(std::size_t row, std::size_t column) const;

private:
  Place origin_;
  std::size_t rows_ = 0;
  std::size_t columns_ = 0;
  std::vector<Cell, Zeroed<Cell>> cells_;
};

} // namespace wetspell
