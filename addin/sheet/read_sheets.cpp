#include "sheet/read_sheets.hpp"

#include "base/text.hpp"
#include "sheet/as_shown.hpp"
#include "sheet/cells.hpp"
#include "sheet/sheets.hpp"
#include "table/day.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <com/sun/star/util/Date.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <chrono>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

// The office hands out a block as one object a cell: a long sheet is read in parts to keep that small.
constexpr sal_Int32 rowsAtOnce = 4096;

Cell cellOf(const Any& content) {
  double number = 0;
  rtl::OUString text;
  if (content >>= number)
    return Cell::of_number(number);
  if (content >>= text)
    return Cell::of_text(fromOffice(text));
  return Cell::of_error("error"); // the office gives nothing at all for a cell in error
}

/// Cells with a date or time format hold dates, the others plain numbers.
void markDates(Table& table, const Reference<css::table::XCellRange>& range, double zero) {
  const Reference<css::sheet::XCellRangesQuery> query(range, UNO_QUERY_THROW);
  const auto ranges = query->queryContentCells(css::sheet::CellFlags::DATETIME);
  for (const css::table::CellRangeAddress& part : ranges->getRangeAddresses())
    for (sal_Int32 row = part.StartRow; row <= part.EndRow; ++row)
      for (sal_Int32 column = part.StartColumn; column <= part.EndColumn; ++column) {
        Cell& cell = table.at(static_cast<std::size_t>(row), static_cast<std::size_t>(column));
        if (cell.kind() == CellKind::number)
          cell = Cell::of_date(cell.number() >= 1 ? cell.number() + zero : cell.number());
      }
}

/// The used area reaches as far as formats do; where that is too far, as far as anything stands in a cell.
css::table::CellRangeAddress usedPart(const Reference<css::sheet::XSpreadsheet>& sheet,
                                      const std::string& name) {
  const auto cells = [](const css::table::CellRangeAddress& end) {
    return (static_cast<std::size_t>(end.EndRow) + 1) * (static_cast<std::size_t>(end.EndColumn) + 1);
  };
  const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursor();
  Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
  auto end = Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
  if (cells(end) <= most_cells)
    return end;
  end.EndRow = end.EndColumn = 0;
  for (const auto& part : Reference<css::sheet::XCellRangesQuery>(sheet, UNO_QUERY_THROW)
                              ->queryContentCells(static_cast<sal_Int16>(allContents))
                              ->getRangeAddresses()) {
    end.EndRow = std::max(end.EndRow, part.EndRow);
    end.EndColumn = std::max(end.EndColumn, part.EndColumn);
  }
  if (cells(end) > most_cells)
    refuse(fmt::format(
        "The sheet '{}' is in use down to its cell {}{}: {} cells, and {} is the most that can be read. "
        "Delete what stands far out by mistake, or copy the rows to a sheet of their own.",
        name, column_letters(static_cast<std::size_t>(end.EndColumn)), end.EndRow + 1, cells(end),
        most_cells));
  return end;
}

/// The office hands over nothing at all for a cell in error; the words of it stand in the cell.
void nameErrors(Table& table, const Reference<css::table::XCellRange>& range) {
  const Reference<css::sheet::XCellRangesQuery> query(range, UNO_QUERY_THROW);
  const auto found = query->queryFormulaCells(css::sheet::FormulaResult::ERROR);
  for (const css::table::CellRangeAddress& part : found->getRangeAddresses())
    for (sal_Int32 row = part.StartRow; row <= part.EndRow; ++row)
      for (sal_Int32 column = part.StartColumn; column <= part.EndColumn; ++column) {
        Cell& cell = table.at(static_cast<std::size_t>(row), static_cast<std::size_t>(column));
        const Reference<css::text::XTextRange> shown(range->getCellByPosition(column, row), UNO_QUERY_THROW);
        if (cell.kind() == CellKind::error)
          cell = Cell::of_error(fromOffice(shown->getString()));
      }
}

Table tableOf(const Reference<css::sheet::XSpreadsheet>& sheet, const std::string& name, double zero,
              const Reference<css::util::XNumberFormats>& formats) {
  const css::table::CellRangeAddress end = usedPart(sheet, name);
  Table table(Place{name, 1, 0}, static_cast<std::size_t>(end.EndRow) + 1,
              static_cast<std::size_t>(end.EndColumn) + 1);
  for (sal_Int32 first = 0; first <= end.EndRow; first += rowsAtOnce) {
    const sal_Int32 last = std::min(end.EndRow, first + rowsAtOnce - 1);
    const Reference<css::sheet::XCellRangeData> data(
        sheet->getCellRangeByPosition(0, first, end.EndColumn, last), UNO_QUERY_THROW);
    const Sequence<Sequence<Any>> block = data->getDataArray();
    for (sal_Int32 row = 0; row < block.getLength(); ++row)
      for (sal_Int32 column = 0; column < block[row].getLength(); ++column)
        table.at(static_cast<std::size_t>(first) + static_cast<std::size_t>(row),
                 static_cast<std::size_t>(column)) = cellOf(block[row][column]);
  }
  const auto all = sheet->getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow);
  nameErrors(table, all);
  markDates(table, all, zero);
  takeAsShown(table, all, formats);
  return table;
}

} // namespace

double dayZero(const Reference<css::sheet::XSpreadsheetDocument>& document) {
  using namespace std::chrono;
  css::util::Date zero;
  Reference<css::beans::XPropertySet>(document, UNO_QUERY_THROW)->getPropertyValue("NullDate") >>= zero;
  const sys_days day{year{zero.Year} / month{zero.Month} / std::chrono::day{zero.Day}};
  return serial_of(day);
}

Table tableIn(const Reference<css::sheet::XSpreadsheetDocument>& document, const Owned& block) {
  const auto formats =
      Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats();
  const Reference<css::container::XNamed> named(block.sheet, UNO_QUERY_THROW);
  const Table all = tableOf(block.sheet, fromOffice(named->getName()), dayZero(document), formats);
  const css::table::CellRangeAddress& area = block.area;
  const auto rows = static_cast<std::size_t>(area.EndRow - area.StartRow) + 1;
  const auto columns = static_cast<std::size_t>(area.EndColumn - area.StartColumn) + 1;
  const auto row = static_cast<std::size_t>(area.StartRow),
             column = static_cast<std::size_t>(area.StartColumn);
  Table cells(Place{all.sheet(), row + 1, column}, rows, columns);
  for (std::size_t r = 0; r < rows && row + r < all.rows(); ++r)
    for (std::size_t c = 0; c < columns && column + c < all.columns(); ++c)
      cells.at(r, c) = all.at(row + r, column + c);
  return cells;
}

std::vector<Table> tablesOf(const Reference<css::sheet::XSpreadsheetDocument>& document, Sheets which) {
  const Reference<css::container::XIndexAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
  const double zero = dayZero(document);
  const auto formats =
      Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats();
  const std::set<sal_Int16> own = which == Sheets::all ? std::set<sal_Int16>() : ownedSheets(document);
  std::vector<Table> tables;
  for (sal_Int32 i = 0; i < sheets->getCount(); ++i) {
    if (own.count(static_cast<sal_Int16>(i)) > 0)
      continue;
    const Reference<css::sheet::XSpreadsheet> sheet(sheets->getByIndex(i), UNO_QUERY_THROW);
    const Reference<css::container::XNamed> named(sheet, UNO_QUERY_THROW);
    tables.push_back(tableOf(sheet, fromOffice(named->getName()), zero, formats));
  }
  return tables;
}

} // namespace wetspell::addin
