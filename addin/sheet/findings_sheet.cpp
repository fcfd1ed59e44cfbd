#include "sheet/findings_sheet.hpp"

#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/strip.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
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

Any contentOf(const Cell& cell, double zero) {
  switch (cell.kind) {
  case CellKind::empty:
    return {};
  case CellKind::number:
    return Any(cell.number);
  case CellKind::date:
    return Any(cell.number - zero);
  case CellKind::text:
  case CellKind::error:
    return Any(toOffice(cell.text));
  }
  return {};
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

/// One block for columns that stand side by side, as they do unless the person moved them.
void fill(const Target& target, const Table& table, double zero) {
  const auto rows = static_cast<sal_Int32>(table.rows());
  for (std::size_t begin = 0, end = 0; begin < target.columns.size(); begin = end) {
    end = begin + 1;
    const sal_Int32 at = target.columns[begin];
    if (at < 0)
      continue;
    while (end < target.columns.size() &&
           target.columns[end] == at + static_cast<sal_Int32>(end) - static_cast<sal_Int32>(begin))
      ++end;
    Sequence<Sequence<Any>> data(rows);
    Sequence<Any>* lines = data.getArray();
    for (sal_Int32 r = 0; r < rows; ++r) {
      lines[r].realloc(static_cast<sal_Int32>(end - begin));
      Any* cells = lines[r].getArray();
      for (std::size_t c = begin; c < end; ++c)
        cells[c - begin] = contentOf(table.at(static_cast<std::size_t>(r), c), zero);
    }
    const Reference<css::sheet::XCellRangeData> block(
        target.sheet->getCellRangeByPosition(at, target.first, at + static_cast<sal_Int32>(end - begin) - 1,
                                             target.first + rows - 1),
        UNO_QUERY_THROW);
    block->setDataArray(data);
  }
}

/// Findings hidden by a filter over the old ones would be overlooked.
void showRows(const Target& target, sal_Int32 end) {
  const Reference<css::table::XColumnRowRange> range(
      target.sheet->getCellRangeByPosition(0, target.first, 0, std::max(end, target.first + 1) - 1),
      UNO_QUERY_THROW);
  const Reference<css::beans::XPropertySet> rows(range->getRows(), UNO_QUERY_THROW);
  rows->setPropertyValue("IsVisible", Any(true));
  rows->setPropertyValue("OptimalHeight", Any(true));
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
    fill(target, table, dayZero(document));
  }
  showRows(target, std::max(target.end, end));
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
