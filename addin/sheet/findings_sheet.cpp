#include "sheet/findings_sheet.hpp"

#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/strip.hpp"
#include "sheet/undo_step.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <set>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

/// Where the findings go: the sheet, the column of every field (-1: the person took it away), the first row,
/// and one behind the last that is in use. Columns and rows from 0 as the office counts them.
struct Target {
  Reference<css::sheet::XSpreadsheet> sheet;
  std::vector<sal_Int32> columns;
  sal_Int32 first = 0;
  sal_Int32 end = 0;
};

Any styleOf(const Target& target, sal_Int32 column, sal_Int32 row) {
  return Reference<css::beans::XPropertySet>(target.sheet->getCellByPosition(column, row), UNO_QUERY_THROW)
      ->getPropertyValue("CellStyle");
}

Reference<css::table::XCellRange> column(const Target& target, sal_Int32 at, sal_Int32 first, sal_Int32 end) {
  return target.sheet->getCellRangeByPosition(at, first, at, end - 1);
}

std::optional<Target> targetIn(const SheetDocument& document, const Season& season) {
  const Located& where = season.where(TableKind::findings);
  if (!where.found())
    return std::nullopt;
  Target target{sheetNamed(document, where.table->sheet()), {}, 0, 0};
  for (const std::int32_t at : where.columns)
    target.columns.push_back(
        at < 0 ? -1 : static_cast<sal_Int32>(where.table->sheet_column(static_cast<std::size_t>(at))));
  target.first = static_cast<sal_Int32>(where.table->sheet_row(where.first_row)) - 1;
  target.end = std::max(target.first, static_cast<sal_Int32>(where.table->sheet_row(where.end_row)) - 1);
  return target;
}

std::string freeName(const SheetDocument& document) {
  const Reference<css::container::XNameAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
  std::string name(spec(TableKind::findings).sheet);
  for (int i = 2; sheets->hasByName(toOffice(name)); ++i)
    name = std::string(spec(TableKind::findings).sheet) + " " + std::to_string(i);
  return name;
}

/// Sentences are wrapped in a wide column, dates look like dates.
void layOut(const SheetDocument& document, const Target& target, Field field) {
  constexpr sal_Int32 forSentences = 8000; // 1/100 mm
  const sal_Int32 at = target.columns.back();
  const Reference<css::beans::XPropertySet> cells(column(target, at, 0, lastRowOfSheets + 1),
                                                  UNO_QUERY_THROW);
  if (field == Field::finding_date)
    cells->setPropertyValue("NumberFormat", Any(dateFormat(document, false)));
  if (field != Field::finding_message && field != Field::finding_advice && field != Field::finding_note)
    return;
  cells->setPropertyValue("IsTextWrapped", Any(true));
  const Reference<css::table::XColumnRowRange> range(target.sheet, UNO_QUERY_THROW);
  Reference<css::beans::XPropertySet>(range->getColumns()->getByIndex(at), UNO_QUERY_THROW)
      ->setPropertyValue("Width", Any(forSentences));
}

/// A plain findings sheet for a document that was not made from the template.
Target newTarget(const SheetDocument& document) {
  const std::string name = freeName(document);
  const Reference<css::container::XNameAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
  document->getSheets()->insertNewByName(toOffice(name),
                                         static_cast<sal_Int16>(sheets->getElementNames().getLength()));
  Target target{sheetNamed(document, name), {}, 1, 1};
  const auto columns = fields(TableKind::findings);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const Place heading{name, 1, i};
    write(document, heading, Cell::of_text(std::string(columns[i].heading)));
    Reference<css::beans::XPropertySet>(cellAt(document, heading), UNO_QUERY_THROW)
        ->setPropertyValue("CharWeight", Any(150.0F));
    target.columns.push_back(static_cast<sal_Int32>(i));
    layOut(document, target, columns[i].field);
  }
  return target;
}

void requireUnprotected(const Target& target) {
  if (Reference<css::util::XProtectable>(target.sheet, UNO_QUERY_THROW)->isProtected())
    refuse("The findings sheet is protected; nothing was written. Take its protection off first.");
}

void clear(const Target& target) {
  using namespace css::sheet::CellFlags;
  if (target.end <= target.first)
    return;
  for (const sal_Int32 at : target.columns)
    if (at >= 0)
      Reference<css::sheet::XSheetOperation>(column(target, at, target.first, target.end), UNO_QUERY_THROW)
          ->clearContents(VALUE | DATETIME | STRING | FORMULA);
}

/// A season may have more findings than the sheet had rows ready: the last row that looks as the first one
/// does is the last that was made ready.
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

/// Texts stay the texts they are: without the format of texts, the office gives it to every cell in which a
/// text looks like a number, and leaves it there when the check is undone.
void keepTexts(const SheetDocument& document, const Target& target, sal_Int32 end) {
  const auto all = fields(TableKind::findings);
  for (std::size_t c = 0; c < target.columns.size(); ++c)
    if (target.columns[c] >= 0 && all[c].role != Role::typed && all[c].field != Field::finding_date)
      Reference<css::beans::XPropertySet>(column(target, target.columns[c], target.first, end),
                                          UNO_QUERY_THROW)
          ->setPropertyValue("NumberFormat", Any(textFormat(document)));
}

/// Cell by cell, although a whole block could be written at once: undone, a block that the office was given
/// stays in all cells that were empty before, and redone, cells that the block left empty keep what they held
/// (seen in LibreOffice 7.4).
void fill(const SheetDocument& document, const Target& target, const Table& table) {
  constexpr std::size_t rowsInAStep = 1000; // the office keeps no more than 65535 changes in one step
  const double zero = dayZero(document);
  for (std::size_t begin = 0; begin < table.rows(); begin += rowsInAStep) {
    const UndoStep part(document, "Findings");
    for (std::size_t row = begin; row < std::min(table.rows(), begin + rowsInAStep); ++row)
      for (std::size_t c = 0; c < target.columns.size(); ++c) {
        const Cell& cell = table.at(row, c);
        if (target.columns[c] < 0 || cell.empty())
          continue;
        const Reference<css::table::XCell> into =
            target.sheet->getCellByPosition(target.columns[c], target.first + static_cast<sal_Int32>(row));
        if (cell.kind == CellKind::number)
          into->setValue(cell.number);
        else if (cell.kind == CellKind::date)
          into->setValue(cell.number - zero);
        else
          Reference<css::text::XTextRange>(into, UNO_QUERY_THROW)->setString(toOffice(cell.text));
      }
  }
}

Reference<css::beans::XPropertySet> rowsOf(const Target& target, sal_Int32 from, sal_Int32 end) {
  const Reference<css::table::XColumnRowRange> range(
      target.sheet->getCellRangeByPosition(0, from, 0, end - 1), UNO_QUERY_THROW);
  return {range->getRows(), UNO_QUERY_THROW};
}

/// While rows have a given height the office does not look for a new one at every cell that is written.
void holdHeights(const Target& target, sal_Int32 end) {
  const auto rows = rowsOf(target, target.first, end);
  rows->setPropertyValue("Height", rows->getPropertyValue("Height"));
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

/// Findings hidden by a filter over the old ones would be overlooked. Rows that are empty now are low again.
void showRows(const Target& target, sal_Int32 end) {
  const sal_Int32 last = std::max({target.end, end, target.first + 1});
  rowsOf(target, target.first, last)->setPropertyValue("IsVisible", Any(true));
  if (end > target.first)
    findHeights(target, end);
  if (last > end)
    rowsOf(target, std::max(end, target.first), last)->setPropertyValue("OptimalHeight", Any(true));
}

/// A print ends with the findings, whatever number of rows is ready below them.
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

/// The findings, and after a check that was ended early also the old rows with an answer that it did not come
/// across again: an answer is somebody's work.
Table contents(const Season& season, const CheckReport& report) {
  Table found = findings_table(season, report, Place{});
  const Located& where = season.where(TableKind::findings);
  if (!report.cancelled || !where.found())
    return found;
  std::set<std::string> keys;
  for (const Finding& finding : report.findings)
    keys.insert(finding.key);
  std::vector<std::uint32_t> kept;
  for (auto row = static_cast<std::uint32_t>(where.first_row); row < where.end_row; ++row) {
    const bool answered =
        !season.cell(Field::finding_answer, row).empty() || !season.cell(Field::finding_note, row).empty();
    if (answered && keys.count(to_text(season.cell(Field::finding_key, row))) == 0)
      kept.push_back(row);
  }
  const auto columns = fields(TableKind::findings);
  Table all(Place{}, found.rows() + kept.size(), columns.size());
  for (std::size_t row = 0; row < all.rows(); ++row)
    for (std::size_t c = 0; c < columns.size(); ++c)
      all.at(row, c) =
          row < found.rows() ? found.at(row, c) : season.cell(columns[c].field, kept[row - found.rows()]);
  return all;
}

} // namespace

void requireFindingsWritable(const SheetDocument& document, const Season& season) {
  if (const auto target = targetIn(document, season))
    requireUnprotected(*target);
}

void writeFindings(const SheetDocument& document, const Season& season, const CheckReport& report) {
  auto found = targetIn(document, season);
  const Target target = found ? std::move(*found) : newTarget(document);
  requireUnprotected(target);
  const Table table = contents(season, report);
  const sal_Int32 end = target.first + static_cast<sal_Int32>(table.rows());
  clear(target);
  if (table.rows() > 0) {
    makeReady(target, end);
    holdHeights(target, end);
    keepTexts(document, target, end);
    fill(document, target, table);
  }
  showRows(target, end);
  fitPrint(target, end);
}

std::size_t clearFindings(const SheetDocument& document, const Season& season) {
  const auto target = targetIn(document, season);
  if (!target)
    return 0;
  requireUnprotected(*target);
  clear(*target);
  return static_cast<std::size_t>(target->end - target->first);
}

std::vector<std::string> keysInRows(const Season& season, std::size_t first, std::size_t last) {
  std::vector<std::string> keys;
  const Located& where = season.where(TableKind::findings);
  if (!where.found())
    return keys;
  for (std::size_t row = where.first_row; row < where.end_row; ++row) {
    const Cell& key = season.cell(Field::finding_key, static_cast<std::uint32_t>(row));
    if (where.table->sheet_row(row) >= first && where.table->sheet_row(row) <= last && !key.empty())
      keys.push_back(to_text(key));
  }
  return keys;
}

std::optional<Place> rowOfKey(const Season& season, const std::string& key) {
  const Located& where = season.where(TableKind::findings);
  for (std::size_t row = where.first_row; where.found() && row < where.end_row; ++row)
    if (to_text(season.cell(Field::finding_key, static_cast<std::uint32_t>(row))) == key)
      return season.place(Field::finding_where, static_cast<std::uint32_t>(row));
  return std::nullopt;
}

} // namespace wetspell::addin
