#include "sheet/read_sheets.hpp"

#include "base/text.hpp"
#include "quantity/print.hpp"
#include "sheet/owned.hpp"
#include "sheet/sheets.hpp"
#include "table/day.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/util/Date.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

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
        if (cell.kind == CellKind::number)
          cell = Cell::of_date(cell.number >= 1 ? cell.number + zero : cell.number);
      }
}

/// Whoever types 75% gets a cell that holds 0.75 and looks as typed: the engine is given what was typed.
void markPercents(Table& table, const Reference<css::table::XCellRange>& range,
                  const Reference<css::util::XNumberFormats>& formats) {
  const Reference<css::sheet::XUniqueCellFormatRangesSupplier> supplier(range, UNO_QUERY_THROW);
  const Reference<css::container::XIndexAccess> groups = supplier->getUniqueCellFormatRanges();
  for (sal_Int32 i = 0; i < groups->getCount(); ++i) {
    const Reference<css::sheet::XSheetCellRanges> group(groups->getByIndex(i), UNO_QUERY_THROW);
    sal_Int32 key = 0;
    sal_Int16 type = 0;
    Reference<css::beans::XPropertySet>(group, UNO_QUERY_THROW)->getPropertyValue("NumberFormat") >>= key;
    formats->getByKey(key)->getPropertyValue("Type") >>= type;
    if ((type & css::util::NumberFormat::PERCENT) == 0)
      continue;
    for (const css::table::CellRangeAddress& part : group->getRangeAddresses())
      for (sal_Int32 row = part.StartRow; row <= part.EndRow; ++row)
        for (sal_Int32 column = part.StartColumn; column <= part.EndColumn; ++column) {
          Cell& cell = table.at(static_cast<std::size_t>(row), static_cast<std::size_t>(column));
          if (cell.kind == CellKind::number)
            cell = Cell::of_text(plain(cell.number * 100) + "%");
        }
  }
}

Table tableOf(const Reference<css::sheet::XSpreadsheet>& sheet, const std::string& name, double zero,
              const Reference<css::util::XNumberFormats>& formats, std::size_t most) {
  const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursor();
  const Reference<css::sheet::XUsedAreaCursor> used(cursor, UNO_QUERY_THROW);
  used->gotoEndOfUsedArea(false);
  const auto end = Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
  const auto rows = static_cast<std::size_t>(end.EndRow) + 1,
             columns = static_cast<std::size_t>(end.EndColumn) + 1;
  if (rows * columns > most)
    refuse("The sheet '" + name + "' is in use down to its cell " + column_letters(columns - 1) +
           std::to_string(rows) +
           ", which are too many cells to read. Delete what stands far out by mistake.");
  Table table(Place{name, 1, 0}, rows, columns);
  for (sal_Int32 first = 0; first <= end.EndRow; first += rowsAtOnce) {
    const sal_Int32 last = std::min(end.EndRow, first + rowsAtOnce - 1);
    const Reference<css::sheet::XCellRangeData> data(
        sheet->getCellRangeByPosition(0, first, end.EndColumn, last), UNO_QUERY_THROW);
    const Sequence<Sequence<Any>> block = data->getDataArray();
    for (sal_Int32 row = 0; row < block.getLength(); ++row)
      for (sal_Int32 column = 0; column < block[row].getLength(); ++column)
        table.at(static_cast<std::size_t>(first + row), static_cast<std::size_t>(column)) =
            cellOf(block[row][column]);
  }
  const auto all = sheet->getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow);
  markDates(table, all, zero);
  markPercents(table, all, formats);
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

std::vector<Table> tablesOf(const Reference<css::sheet::XSpreadsheetDocument>& document, std::size_t most) {
  const Reference<css::container::XIndexAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
  const double zero = dayZero(document);
  const auto formats =
      Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats();
  const std::set<sal_Int16> own = ownedSheets(document);
  std::vector<Table> tables;
  for (sal_Int32 i = 0; i < sheets->getCount(); ++i) {
    if (own.count(static_cast<sal_Int16>(i)) > 0)
      continue;
    const Reference<css::sheet::XSpreadsheet> sheet(sheets->getByIndex(i), UNO_QUERY_THROW);
    const Reference<css::container::XNamed> named(sheet, UNO_QUERY_THROW);
    tables.push_back(tableOf(sheet, fromOffice(named->getName()), zero, formats, most));
  }
  return tables;
}

} // namespace wetspell::addin
