#pragma once
// How the findings look on their sheet: rows made ready, heights, formats, print. Each leaves the contents
// alone.

#include "season/field.hpp"
#include "sheet/sheets.hpp"

#include <vector>

namespace wetspell::addin {

/// Where the findings go: the sheet, the column of every field (-1: the person took it away), the first row,
/// and one behind the last that is in use. Columns and rows from 0 as the office counts them.
struct FindingsTarget {
  css::uno::Reference<css::sheet::XSpreadsheet> sheet;
  std::vector<sal_Int32> columns;
  sal_Int32 first = 0;
  sal_Int32 end = 0;

  [[nodiscard]] css::uno::Reference<css::table::XCellRange> column(sal_Int32 at, sal_Int32 from,
                                                                   sal_Int32 to) const {
    return sheet->getCellRangeByPosition(at, from, at, to - 1);
  }
};

/// A column of a new sheet: sentences are wrapped in a wide one, dates look like dates.
void layOut(const SheetDocument& document, const FindingsTarget& target, sal_Int32 at, Field field);

/// A season may have more findings than the sheet had rows ready; `end` is one behind the last row needed.
/// The last row that looks as the first one does is the last that was made ready.
void makeReady(const FindingsTarget& target, sal_Int32 end);

/// Texts stay the texts they are: without the format of texts, the office gives it to every cell in which a
/// text looks like a number, and leaves it there when the check is undone.
void keepTexts(const SheetDocument& document, const FindingsTarget& target, sal_Int32 end);

/// While rows have a given height the office does not look for a new one at every cell that is written.
void holdHeights(const FindingsTarget& target, sal_Int32 end);

/// Findings that a filter over the old ones hides would be overlooked. Rows are as high as their sentences
/// need, and rows that are empty now are low again.
void showRows(const FindingsTarget& target, sal_Int32 end);

/// A print ends with the findings, whatever number of rows is ready below them.
void fitPrint(const FindingsTarget& target, sal_Int32 end);

} // namespace wetspell::addin
