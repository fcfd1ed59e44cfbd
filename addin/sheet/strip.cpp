#include "sheet/strip.hpp"

#include "sheet/sheets.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/CellInsertMode.hpp>
#include <com/sun/star/sheet/FillDirection.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeMovement.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XCellSeries.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>

namespace wetspell::addin {

namespace {

using css::table::CellRangeAddress;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

constexpr sal_Int32 typedContent =
    css::sheet::CellFlags::VALUE | css::sheet::CellFlags::DATETIME | css::sheet::CellFlags::STRING;

void clearTyped(const Reference<css::table::XCellRange>& range) {
  Reference<css::sheet::XSheetOperation>(range, UNO_QUERY_THROW)
      ->clearContents(typedContent | css::sheet::CellFlags::ANNOTATION);
}

Reference<css::beans::XPropertySet> rowsOf(const Reference<css::table::XCellRange>& range) {
  return {Reference<css::table::XColumnRowRange>(range, UNO_QUERY_THROW)->getRows(), UNO_QUERY_THROW};
}

/// Rows that were given a height keep it; the others find theirs.
void copyHeight(const Strip& strip, sal_Int32 from, sal_Int32 to, sal_Int32 model) {
  const auto given = rowsOf(strip.rows(model, model));
  bool optimal = true;
  given->getPropertyValue("OptimalHeight") >>= optimal;
  if (!optimal)
    rowsOf(strip.rows(from, to))->setPropertyValue("Height", given->getPropertyValue("Height"));
}

} // namespace

CellRangeAddress addressOf(const Reference<css::uno::XInterface>& range) {
  return Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
}

bool holdsContent(const Reference<css::table::XCellRange>& range, bool formulasToo) {
  const sal_Int32 kinds = typedContent | (formulasToo ? css::sheet::CellFlags::FORMULA : 0);
  return Reference<css::sheet::XCellRangesQuery>(range, UNO_QUERY_THROW)
      ->queryContentCells(static_cast<sal_Int16>(kinds))
      ->getRangeAddresses()
      .hasElements();
}

void grow(const Strip& strip, sal_Int32 count) {
  const sal_Int32 last = strip.last;
  if (count > lastRowOfSheets - last ||
      holdsContent(strip.rows(lastRowOfSheets - count + 1, lastRowOfSheets), true))
    refuse("A sheet has 1048576 rows; there is no room for " + std::to_string(count) + " more.");
  const sal_Int32 end = last + count;
  const sal_Int16 number = addressOf(strip.sheet).Sheet;
  const auto row = [&](sal_Int32 at) { return addressOf(strip.rows(at, at)); };
  const bool typed = holdsContent(strip.rows(last, last), false);
  const Reference<css::sheet::XCellRangeMovement> cells(strip.sheet, UNO_QUERY_THROW);

  cells->insertCells(addressOf(strip.rows(last, end - 1)), css::sheet::CellInsertMode_DOWN);
  // The office does not say when it cannot: then the last row still stands where it stood.
  if (holdsContent(strip.rows(last, end - 1), true))
    refuse("Merged cells below the last row are in the way; nothing was changed.");
  rowsOf(strip.rows(last, end))->setPropertyValue("IsVisible", Any(true)); // no filter knows the new rows
  if (typed) // back to where it stood, and what points to it with it
    cells->moveRange({number, strip.left, last}, row(end));
  const sal_Int32 from = typed ? last + 1 : last;
  const sal_Int32 model = strip.model >= 0 && strip.model < last ? strip.model : typed ? last : end;
  cells->copyRange({number, strip.left, from}, row(model));
  clearTyped(strip.rows(from, from));
  if (from < end)
    Reference<css::sheet::XCellSeries>(strip.rows(from, end), UNO_QUERY_THROW)
        ->fillAuto(css::sheet::FillDirection_TO_BOTTOM, 1);
  copyHeight(strip, from, end, from == last ? end : last);
}

} // namespace wetspell::addin
