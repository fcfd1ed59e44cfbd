// A rectangle of cells and the place each came from: the one form in which every source reaches the engine.
#pragma once

#include "table/cell.hpp"

#include <cstddef>
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

/// A rectangle of cells, rows one after another. Rows and columns are counted from 0 inside the table.
class Table {
public:
  Table() = default;
  /// An empty table of `rows` x `columns` cells whose first cell stands at `origin`.
  Table(Place origin, std::size_t rows, std::size_t columns);

  [[nodiscard]] const std::string& sheet() const { return origin_.sheet; }
  [[nodiscard]] std::size_t rows() const { return rows_; }
  [[nodiscard]] std::size_t columns() const { return columns_; }
  [[nodiscard]] const Cell& at(std::size_t row, std::size_t column) const {
    return cells_[row * columns_ + column];
  }
  [[nodiscard]] Cell& at(std::size_t row, std::size_t column) { return cells_[row * columns_ + column]; }
  /// Row from 1 as Calc numbers it.
  [[nodiscard]] std::size_t sheet_row(std::size_t row) const { return origin_.row + row; }
  /// Column from 0 (A) in the sheet.
  [[nodiscard]] std::size_t sheet_column(std::size_t column) const { return origin_.column + column; }
  [[nodiscard]] Place place(std::size_t row, std::size_t column) const;

private:
  Place origin_;
  std::size_t rows_ = 0;
  std::size_t columns_ = 0;
  std::vector<Cell> cells_;
};

} // namespace wetspell
