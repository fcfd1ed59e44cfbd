#include "sheet/findings_sheet.hpp"

#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "sheet/read_sheets.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>

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

/// The look of the first row for all rows: a season may have more findings than the sheet had rows ready.
void spreadLook(const Target& target, sal_Int32 at, sal_Int32 end) {
  const auto style = [&](sal_Int32 row) {
    return Reference<css::beans::XPropertySet>(target.sheet->getCellByPosition(at, row), UNO_QUERY_THROW)
        ->getPropertyValue("CellStyle");
  };
  const Any look = style(target.first);
  if (look != style(end - 1))
    Reference<css::beans::XPropertySet>(column(target, at, target.first, end), UNO_QUERY_THROW)
        ->setPropertyValue("CellStyle", look);
}

void fill(const Target& target, const Table& table, double zero) {
  const auto rows = static_cast<sal_Int32>(table.rows());
  const sal_Int32 end = target.first + rows;
  for (std::size_t c = 0; c < target.columns.size(); ++c) {
    const sal_Int32 at = target.columns[c];
    if (at < 0)
      continue;
    Sequence<Sequence<Any>> data(rows);
    Sequence<Any>* lines = data.getArray();
    for (sal_Int32 r = 0; r < rows; ++r) {
      lines[r].realloc(1);
      lines[r].getArray()[0] = contentOf(table.at(static_cast<std::size_t>(r), c), zero);
    }
    Reference<css::sheet::XCellRangeData>(column(target, at, target.first, end), UNO_QUERY_THROW)
        ->setDataArray(data);
    spreadLook(target, at, end);
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

} // namespace

void requireFindingsWritable(const SheetDocument& document, const Season& season) {
  if (const auto target = targetIn(document, season))
    requireUnprotected(*target);
}

void writeFindings(const SheetDocument& document, const Season& season, const CheckReport& report) {
  auto found = targetIn(document, season);
  const Target target = found ? std::move(*found) : newTarget(document);
  requireUnprotected(target);
  clear(target);
  if (!report.findings.empty())
    fill(target, findings_table(season, report, Place{}), dayZero(document));
  showRows(target, std::max(target.end, target.first + static_cast<sal_Int32>(report.findings.size())));
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
