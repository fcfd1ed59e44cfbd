#include "summary/blocks.hpp"

#include "base/text.hpp"
#include "sheet/add_sheet.hpp"
#include "sheet/strip.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/CellDeleteMode.hpp>
#include <com/sun/star/sheet/CellInsertMode.hpp>
#include <com/sun/star/sheet/XCellRangeMovement.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <fmt/format.h>

namespace wetspell::addin {

using css::table::CellRangeAddress;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

std::string nameOfSheet(const Owned& block) {
  return fromOffice(Reference<css::container::XNamed>(block.sheet, UNO_QUERY_THROW)->getName());
}

void fitRows(const Owned& block, sal_Int32 rows) {
  const Reference<css::sheet::XCellRangeMovement> cells(block.sheet, UNO_QUERY_THROW);
  CellRangeAddress changed = block.area;
  const sal_Int32 now = block.area.EndRow - block.area.StartRow + 1;
  changed.StartRow += std::min(now, rows);
  changed.EndRow = block.area.StartRow + std::max(now, rows) - 1;
  if (rows > now) {
    cells->insertCells(changed, css::sheet::CellInsertMode_DOWN);
    // The office does not say when it cannot: then what stood below still stands there.
    if (holdsContent(block.sheet->getCellRangeByPosition(changed.StartColumn, changed.StartRow,
                                                         changed.EndColumn, changed.EndRow),
                     true))
      refuse("Merged cells below the rows of '" + nameOfSheet(block) +
             "' are in the way of more; nothing was changed. Split or move them first.");
  } else if (rows < now) {
    cells->removeRange(changed, css::sheet::CellDeleteMode_UP);
  }
}

/// Refuses in words where a sheet ends before a block that begins in this row and column.
void requireRoom(const std::string& sheet, sal_Int32 row, sal_Int32 column, std::size_t rows,
                 std::size_t columns) {
  constexpr std::size_t rowsOfSheets = lastRowOfSheets + 1, columnsOfSheets = 16384;
  if (static_cast<std::size_t>(row) + rows <= rowsOfSheets &&
      static_cast<std::size_t>(column) + columns <= columnsOfSheets)
    return;
  refuse(
      fmt::format("{} rows and {} columns from the cell {}{} of '{}' on are needed, and a sheet has {} rows "
                  "and {} columns; nothing was changed.",
                  rows, columns, column_letters(static_cast<std::size_t>(column)), row + 1, sheet,
                  rowsOfSheets, columnsOfSheets));
}

} // namespace

std::string pageBlock(const std::string& pool) {
  std::string name = "wetspell_page_of_";
  for (const char c : pool)
    if ((c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'))
      name += c;
    else
      name += fmt::format("_{:02x}", static_cast<unsigned char>(c));
  return name;
}

void fitColumns(const Owned& block, std::size_t columns) {
  const auto all = Reference<css::table::XColumnRowRange>(block.sheet, UNO_QUERY_THROW)->getColumns();
  const auto wanted = static_cast<sal_Int32>(columns);
  const sal_Int32 now = block.area.EndColumn - block.area.StartColumn + 1;
  if (wanted > now)
    all->insertByIndex(block.area.EndColumn + 1, wanted - now);
  else if (wanted < now)
    all->removeByIndex(block.area.StartColumn + wanted, now - wanted);
}

Corner takeBlock(const SheetDocument& document, const std::string& name, const std::string& sheet,
                 std::size_t columns, std::size_t rows, const std::string& before) {
  const auto block = ownedBlock(document, name);
  if (block) {
    requireRoom(nameOfSheet(*block), block->area.StartRow, block->area.StartColumn, rows, columns);
    fitColumns(*block, columns);
    Owned fitted = *block;
    fitted.area.EndColumn = fitted.area.StartColumn + static_cast<sal_Int32>(columns) - 1;
    fitRows(fitted, static_cast<sal_Int32>(rows));
  } else {
    requireRoom(sheet, 0, 0, rows, columns);
  }
  const auto next = ownedBlock(document, before);
  const auto position = next ? std::optional(next->area.Sheet) : std::nullopt;
  Corner corner = block ? Corner{block->sheet, block->area.StartColumn, block->area.StartRow}
                        : Corner{sheetNamed(document, addSheet(document, sheet, position)), 0, 0};
  own(document, name, corner.range(columns, rows));
  return corner;
}

std::string absolute(const Place& place) {
  std::string sheet;
  for (const char c : place.sheet)
    sheet += c == '\'' ? std::string("''") : std::string(1, c);
  return fmt::format("$'{}'.${}${}", sheet, column_letters(place.column), place.row);
}

std::string quoted(const std::string& text) {
  std::string all = "\"";
  for (const char c : text)
    all += c == '"' ? std::string("\"\"") : std::string(1, c);
  return all + "\"";
}

std::string linkTo(const Place& place, const std::string& shown) {
  return fmt::format("=HYPERLINK(\"#\"&CELL(\"ADDRESS\";{});{})", absolute(place), shown);
}

std::string nameOf(const Reference<css::table::XCellRange>& range) {
  rtl::OUString name;
  Reference<css::beans::XPropertySet>(range, UNO_QUERY_THROW)->getPropertyValue("AbsoluteName") >>= name;
  return fromOffice(name);
}

} // namespace wetspell::addin
