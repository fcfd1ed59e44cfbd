#include "sheet/prepare_rows.hpp"

#include "base/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/FillDirection.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeMovement.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XCellSeries.hpp>
#include <com/sun/star/sheet/XDatabaseRange.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/table/CellAddress.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>

namespace wetspell::addin {

namespace {

using css::table::CellRangeAddress;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

constexpr sal_Int32 lastRowOfSheets = 1048575; // from 0

CellRangeAddress addressOf(const Reference<css::uno::XInterface>& range) {
  return Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
}

/// The last row (from 0) in which the table's columns hold anything: typed or a formula.
sal_Int32 lastPrepared(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 left, sal_Int32 right,
                       sal_Int32 first) {
  using namespace css::sheet::CellFlags;
  const Reference<css::sheet::XCellRangesQuery> below(
      sheet->getCellRangeByPosition(left, first, right, lastRowOfSheets), UNO_QUERY_THROW);
  sal_Int32 last = -1;
  for (const CellRangeAddress& part :
       below->queryContentCells(VALUE | DATETIME | STRING | FORMULA)->getRangeAddresses())
    last = std::max(last, part.EndRow);
  return last;
}

/// Filter ranges and print ranges that ended with the table end with it again.
void stretchRanges(const SheetDocument& document, const Reference<css::sheet::XSpreadsheet>& sheet,
                   sal_Int32 oldEnd, sal_Int32 newEnd) {
  const sal_Int16 number = addressOf(sheet).Sheet;
  const auto stretch = [&](CellRangeAddress area) {
    if (area.Sheet == number && area.EndRow == oldEnd)
      area.EndRow = newEnd;
    return area;
  };
  Reference<css::container::XIndexAccess> ranges;
  Reference<css::beans::XPropertySet>(document, UNO_QUERY_THROW)->getPropertyValue("DatabaseRanges") >>=
      ranges;
  for (sal_Int32 i = 0; ranges.is() && i < ranges->getCount(); ++i) {
    const Reference<css::sheet::XDatabaseRange> range(ranges->getByIndex(i), UNO_QUERY_THROW);
    range->setDataArea(stretch(range->getDataArea()));
  }
  const Reference<css::sheet::XPrintAreas> print(sheet, UNO_QUERY_THROW);
  Sequence<CellRangeAddress> areas = print->getPrintAreas();
  std::transform(areas.begin(), areas.end(), areas.begin(), stretch);
  if (areas.hasElements())
    print->setPrintAreas(areas);
}

} // namespace

void prepareRows(const SheetDocument& document, const Located& where, std::size_t rows) {
  const Reference<css::sheet::XSpreadsheet> sheet = sheetNamed(document, where.table->sheet());
  if (Reference<css::util::XProtectable>(sheet, UNO_QUERY_THROW)->isProtected())
    refuse("The sheet '" + where.table->sheet() +
           "' is protected; nothing was changed. Take its protection off first.");
  sal_Int32 left = lastRowOfSheets;
  sal_Int32 right = 0;
  for (const std::int32_t column : where.columns)
    if (column >= 0) {
      const auto at = static_cast<sal_Int32>(where.table->sheet_column(static_cast<std::size_t>(column)));
      left = std::min(left, at);
      right = std::max(right, at);
    }
  const sal_Int32 last =
      lastPrepared(sheet, left, right, static_cast<sal_Int32>(where.table->sheet_row(where.heading_row)));
  if (last < 0)
    refuse("There is no row below the headings of '" + where.table->sheet() +
           "' whose formulas could be followed.");
  if (rows == 0 || last + static_cast<sal_Int64>(rows) > lastRowOfSheets)
    refuse("A sheet has 1048576 rows; there is no room for " + std::to_string(rows) + " more.");

  // One copy of the last row, without what was typed there, then filled down: quick for any number of rows.
  const sal_Int32 newLast = last + static_cast<sal_Int32>(rows);
  Reference<css::sheet::XCellRangeMovement>(sheet, UNO_QUERY_THROW)
      ->copyRange({addressOf(sheet).Sheet, left, last + 1},
                  addressOf(sheet->getCellRangeByPosition(left, last, right, last)));
  using namespace css::sheet::CellFlags;
  Reference<css::sheet::XSheetOperation>(sheet->getCellRangeByPosition(left, last + 1, right, last + 1),
                                         UNO_QUERY_THROW)
      ->clearContents(VALUE | DATETIME | STRING | ANNOTATION);
  Reference<css::sheet::XCellSeries>(sheet->getCellRangeByPosition(left, last + 1, right, newLast),
                                     UNO_QUERY_THROW)
      ->fillAuto(css::sheet::FillDirection_TO_BOTTOM, 1);
  stretchRanges(document, sheet, last, newLast);
}

} // namespace wetspell::addin
