// The rows that a workbook is made with, and where its tables end.
#pragma once

#include "model.hpp"
#include "workbook.hpp"

#include <cstddef>

namespace wetspell::workbook {

/// Everything the sheets need to know about the content: looked up by field, checked once.
class Filling {
public:
  explicit Filling(const WorkbookContent& content);

  /// The typed cell of a table's row, from 0; an empty cell where nothing was given.
  [[nodiscard]] const Cell& at(Field field, std::size_t row) const;
  [[nodiscard]] const Cell& setting(Setting setting) const;
  /// Rows with content.
  [[nodiscard]] std::size_t filled(TableKind table) const;
  /// Rows with content or ready for it.
  [[nodiscard]] std::size_t ready(TableKind table) const;
  /// Rows that a print shows.
  [[nodiscard]] std::size_t printed(TableKind table) const;

  /// The last row of a table, from 0, that other sheets look into: of pools and people far below the ready
  /// ones, so that a row which somebody types there is offered and looked up like the others.
  [[nodiscard]] std::size_t last_row(TableKind table) const;

  /// "$Visits.$A$5:.$A$504": the cells of a field that other sheets look into.
  [[nodiscard]] std::string range(Field field) const;

private:
  std::vector<FilledTable> tables_;
  std::vector<Cell> settings_;
  bool print_filled_only_ = false;
};

/// Puts a typed cell into a sheet cell.
void put(SheetCell& into, const Cell& cell, Look look);

} // namespace wetspell::workbook
