#pragma once
// A table's cells on a sheet, and more rows for it.

#include "base/css.hpp"

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/table/CellRangeAddress.hpp>
#include <com/sun/star/table/XCellRange.hpp>

namespace wetspell::addin {

inline constexpr sal_Int32 lastRowOfSheets = 1048575; ///< from 0

/// Rows and columns from 0 as the office counts them. `last` may stand before `first`: no rows.
struct Strip {
  css::uno::Reference<css::sheet::XSpreadsheet> sheet;
  sal_Int32 left = 0;
  sal_Int32 right = 0;
  sal_Int32 first = 0;
  sal_Int32 last = -1;
  sal_Int32 model = -1; ///< the row whose formulas and formats new rows get; -1: the last one

  [[nodiscard]] css::uno::Reference<css::table::XCellRange> rows(sal_Int32 from, sal_Int32 to) const {
    return sheet->getCellRangeByPosition(left, from, right, to);
  }
};

css::table::CellRangeAddress addressOf(const css::uno::Reference<css::uno::XInterface>& range);

/// Whether anything stands in the range: a typed content, and formulas too if asked.
bool holdsContent(const css::uno::Reference<css::table::XCellRange>& range, bool formulasToo);

/// Adds `count` rows at the strip's end, with the model row's formulas, drop-downs and formats and without
/// its typed contents. They are put in before the last row, so that whatever covers the table (names, other
/// cells' formulas, filters, print ranges) covers them too. Refuses in words, with nothing changed, when the
/// sheet is too short or merged cells are in the way.
void grow(const Strip& strip, sal_Int32 count);

} // namespace wetspell::addin
