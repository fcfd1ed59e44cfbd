#pragma once
// Whole blocks of cells at once, so that undo and redo are quick and leave nothing behind.

#include "sheet/sheets.hpp"

#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/table/CellRangeAddress.hpp>

#include <cstddef>
#include <string>
#include <vector>

namespace wetspell::addin {

inline constexpr sal_Int32 allContents = css::sheet::CellFlags::VALUE | css::sheet::CellFlags::DATETIME |
                                         css::sheet::CellFlags::STRING | css::sheet::CellFlags::FORMULA;

/// A block of neighbouring cells on a sheet, rows and columns from 0 as the office counts them.
struct Corner {
  css::uno::Reference<css::sheet::XSpreadsheet> sheet;
  sal_Int32 column = 0;
  sal_Int32 row = 0;

  /// The cell so many rows below and columns beside.
  [[nodiscard]] Corner at(std::size_t down, std::size_t beside) const {
    return {sheet, column + static_cast<sal_Int32>(beside), row + static_cast<sal_Int32>(down)};
  }
  [[nodiscard]] css::uno::Reference<css::table::XCellRange> range(std::size_t columns,
                                                                  std::size_t rows) const {
    return sheet->getCellRangeByPosition(column, row, column + static_cast<sal_Int32>(columns) - 1,
                                         row + static_cast<sal_Int32>(rows) - 1);
  }
};

/// Writes the table's columns from `begin` to before `end`, from the corner on.
void putCells(const SheetDocument& document, const Corner& corner, const Table& table, std::size_t begin,
              std::size_t end);
/// The whole table.
void putCells(const SheetDocument& document, const Corner& corner, const Table& table);

/// One formula (in English, as files hold them) a row, from the corner on.
void putFormulas(const Corner& corner, const std::vector<std::string>& formulas);

/// Several ranges as one, so that what is done to them is one change.
css::uno::Reference<css::uno::XInterface> together(const SheetDocument& document,
                                                   const std::vector<css::table::CellRangeAddress>& ranges);

void clearCells(const css::uno::Reference<css::uno::XInterface>& range);

} // namespace wetspell::addin
