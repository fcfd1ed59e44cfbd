#include "sheet/findings_look.hpp"

#include "sheet/strip.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>

#include <algorithm>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using Target = FindingsTarget;

namespace {

Any styleOf(const Target& target, sal_Int32 column, sal_Int32 row) {
  return Reference<css::beans::XPropertySet>(target.sheet->getCellByPosition(column, row), UNO_QUERY_THROW)
      ->getPropertyValue("CellStyle");
}

Reference<css::beans::XPropertySet> rowsOf(const Target& target, sal_Int32 from, sal_Int32 end) {
  const Reference<css::table::XColumnRowRange> range(
      target.sheet->getCellRangeByPosition(0, from, 0, end - 1), UNO_QUERY_THROW);
  return {range->getRows(), UNO_QUERY_THROW};
}

/// Rows as high as their sentences need. Finding that takes long (about a millisecond a row), so in a long
/// list the rows further down get the height of the highest above.
void findHeights(const Target& target, sal_Int32 end) {
  constexpr sal_Int32 looked = 300;
  const sal_Int32 near = std::min(end, target.first + looked);
  rowsOf(target, target.first, near)->setPropertyValue("OptimalHeight", Any(true));
  if (near == end)
    return;
  sal_Int32 highest = 0;
  for (sal_Int32 row = target.first; row < near; ++row) {
    sal_Int32 height = 0;
    rowsOf(target, row, row + 1)->getPropertyValue("Height") >>= height;
    highest = std::max(highest, height);
  }
  rowsOf(target, near, end)->setPropertyValue("Height", Any(highest));
}

} // namespace

void layOut(const SheetDocument& document, const Target& target, sal_Int32 at, Field field) {
  constexpr sal_Int32 forSentences = 8000; // 1/100 mm
  const Reference<css::beans::XPropertySet> cells(target.column(at, 0, lastRowOfSheets + 1), UNO_QUERY_THROW);
  if (field == Field::finding_date)
    cells->setPropertyValue("NumberFormat", Any(dateFormat(document, false)));
  if (field != Field::finding_message && field != Field::finding_advice && field != Field::finding_note)
    return;
  cells->setPropertyValue("IsTextWrapped", Any(true));
  const Reference<css::table::XColumnRowRange> range(target.sheet, UNO_QUERY_THROW);
  Reference<css::beans::XPropertySet>(range->getColumns()->getByIndex(at), UNO_QUERY_THROW)
      ->setPropertyValue("Width", Any(forSentences));
}

void makeReady(const Target& target, sal_Int32 end) {
  Strip strip;
  strip.sheet = target.sheet;
  strip.left = lastRowOfSheets;
  for (const sal_Int32 at : target.columns)
    if (at >= 0) {
      strip.left = std::min(strip.left, at);
      strip.right = std::max(strip.right, at);
    }
  const auto isReady = [&, look = styleOf(target, strip.left, target.first)](sal_Int32 row) {
    return styleOf(target, strip.left, row) == look;
  };
  if (isReady(end - 1))
    return;
  sal_Int32 ready = target.first, bare = end - 1;
  while (bare - ready > 1) {
    const sal_Int32 middle = ready + (bare - ready) / 2;
    (isReady(middle) ? ready : bare) = middle;
  }
  strip.first = target.first;
  strip.last = ready;
  grow(strip, end - 1 - ready);
}

void keepTexts(const SheetDocument& document, const Target& target, sal_Int32 end) {
  const auto all = fields(TableKind::findings);
  for (std::size_t c = 0; c < target.columns.size(); ++c)
    if (target.columns[c] >= 0 && all[c].role != Role::typed && all[c].field != Field::finding_date)
      Reference<css::beans::XPropertySet>(target.column(target.columns[c], target.first, end),
                                          UNO_QUERY_THROW)
          ->setPropertyValue("NumberFormat", Any(textFormat(document)));
}

void holdHeights(const Target& target, sal_Int32 end) {
  if (end <= target.first)
    return;
  const auto rows = rowsOf(target, target.first, end);
  rows->setPropertyValue("Height", rows->getPropertyValue("Height"));
}

void showRows(const Target& target, sal_Int32 end) {
  const sal_Int32 last = std::max({target.end, end, target.first + 1});
  rowsOf(target, target.first, last)->setPropertyValue("IsVisible", Any(true));
  if (end > target.first)
    findHeights(target, end);
  if (last > end)
    rowsOf(target, std::max(end, target.first), last)->setPropertyValue("OptimalHeight", Any(true));
}

void fitPrint(const Target& target, sal_Int32 end) {
  constexpr sal_Int32 leastRows = 20; // enough to see what an empty page is for
  const Reference<css::sheet::XPrintAreas> print(target.sheet, UNO_QUERY_THROW);
  Sequence<css::table::CellRangeAddress> areas = print->getPrintAreas();
  bool changed = false;
  for (css::table::CellRangeAddress& area : areas) {
    const sal_Int32 wanted = std::max(target.first + leastRows, end) - 1;
    if (area.StartRow > target.first || area.EndRow < target.first || area.EndRow == wanted)
      continue;
    area.EndRow = wanted;
    changed = true;
  }
  if (changed)
    print->setPrintAreas(areas);
}

} // namespace wetspell::addin
