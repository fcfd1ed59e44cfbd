// A part of a sheet looked at as rows of records, turned over where the sheet has a column a record.
#pragma once

#include "table/table.hpp"

#include <cstddef>
#include <utility>

namespace wetspell {

/// Positions from `first` up to, not including, `end`.
struct Span {
  std::size_t first = 0;
  std::size_t end = 0;
  [[nodiscard]] std::size_t size() const { return end > first ? end - first : 0; }
};

/// Rows and columns are counted from 0 inside the grid; place() says where a cell stands in the sheet.
class Grid {
public:
  Grid() = default;
  /// `rows` and `columns` are those of the table; `turned`: the table's columns become the grid's rows.
  Grid(const Table& table, Span rows, Span columns, bool turned = false)
      : table_(&table), rows_(rows), columns_(columns), turned_(turned) {}
  explicit Grid(const Table& table) : Grid(table, {0, table.rows()}, {0, table.columns()}) {}

  [[nodiscard]] std::size_t rows() const { return turned_ ? columns_.size() : rows_.size(); }
  [[nodiscard]] std::size_t columns() const { return turned_ ? rows_.size() : columns_.size(); }
  [[nodiscard]] bool turned() const { return turned_; }
  [[nodiscard]] const Table& table() const { return *table_; }
  [[nodiscard]] const Cell& at(std::size_t row, std::size_t column) const {
    return turned_ ? table_->at(rows_.first + column, columns_.first + row)
                   : table_->at(rows_.first + row, columns_.first + column);
  }
  [[nodiscard]] Place place(std::size_t row, std::size_t column) const {
    return turned_ ? table_->place(rows_.first + column, columns_.first + row)
                   : table_->place(rows_.first + row, columns_.first + column);
  }
  /// A part of this grid.
  [[nodiscard]] Grid part(Span rows, Span columns) const {
    if (turned_)
      std::swap(rows, columns);
    return {*table_,
            {rows_.first + rows.first, rows_.first + rows.end},
            {columns_.first + columns.first, columns_.first + columns.end},
            turned_};
  }
  /// The same cells, rows for columns.
  [[nodiscard]] Grid turned_over() const { return {*table_, rows_, columns_, !turned_}; }

private:
  const Table* table_ = nullptr;
  Span rows_, columns_;
  bool turned_ = false;
};

} // namespace wetspell
