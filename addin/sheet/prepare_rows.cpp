#include "sheet/prepare_rows.hpp"

#include "season/locate.hpp"
#include "sheet/strip.hpp"

#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <vector>

namespace wetspell::addin {

namespace {

using css::table::CellRangeAddress;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

constexpr sal_Int16 everyContent = css::sheet::CellFlags::VALUE | css::sheet::CellFlags::DATETIME |
                                   css::sheet::CellFlags::STRING | css::sheet::CellFlags::FORMULA;

/// Whether a column (inside the sheet's table) holds a field of another table of the same sheet.
bool isOfAnotherTable(const Season& season, const Located& mine, std::int32_t column) {
  return std::any_of(season.located.begin(), season.located.end(), [&](const Located& other) {
    return &other != &mine && other.table == mine.table &&
           std::find(other.columns.begin(), other.columns.end(), column) != other.columns.end();
  });
}

/// From the first to the last column: those of the fields, and beside them those with a heading of the
/// person's own, or of the workbook's.
void widen(Strip& strip, const Season& season, const Located& where) {
  const Table& table = *where.table;
  std::int32_t left = -1, right = -1;
  for (const std::int32_t column : where.columns)
    if (column >= 0) {
      left = left < 0 ? column : std::min(left, column);
      right = std::max(right, column);
    }
  const auto belongs = [&](std::int32_t column) {
    return column >= 0 && column < static_cast<std::int32_t>(table.columns()) &&
           holds_something(table.at(where.heading_row, static_cast<std::size_t>(column))) &&
           !isOfAnotherTable(season, where, column);
  };
  while (belongs(left - 1))
    --left;
  while (belongs(right + 1))
    ++right;
  strip.left = static_cast<sal_Int32>(table.sheet_column(static_cast<std::size_t>(left)));
  strip.right = static_cast<sal_Int32>(table.sheet_column(static_cast<std::size_t>(right)));
}

/// The last of the rows with formulas that follow each other from the first one on without a gap, or one
/// above the first row.
sal_Int32 lastWithFormulas(const Strip& strip) {
  const Reference<css::sheet::XCellRangesQuery> below(strip.rows(strip.first, lastRowOfSheets),
                                                      UNO_QUERY_THROW);
  const auto found = below->queryContentCells(css::sheet::CellFlags::FORMULA)->getRangeAddresses();
  std::vector<CellRangeAddress> parts(found.begin(), found.end());
  std::sort(parts.begin(), parts.end(),
            [](const auto& one, const auto& other) { return one.StartRow < other.StartRow; });
  sal_Int32 last = strip.first - 1;
  for (const CellRangeAddress& part : parts)
    if (part.StartRow <= last + 1)
      last = std::max(last, part.EndRow);
  return last;
}

} // namespace

std::size_t readyRows(const SheetDocument& document, const Season& season, TableKind kind) {
  const Located& where = season.where(kind);
  Strip strip;
  strip.sheet = sheetNamed(document, where.table->sheet());
  widen(strip, season, where);
  strip.first = static_cast<sal_Int32>(where.table->sheet_row(where.first_row)) - 1;
  const sal_Int32 next = static_cast<sal_Int32>(where.table->sheet_row(where.end_row)) - 1;
  const sal_Int32 prepared = lastWithFormulas(strip);
  if (prepared >= strip.first)
    return static_cast<std::size_t>(std::max<sal_Int32>(0, prepared - next + 1));
  const Reference<css::sheet::XCellRangesQuery> below(strip.rows(next, lastRowOfSheets), UNO_QUERY_THROW);
  sal_Int32 end = lastRowOfSheets + 1;
  for (const CellRangeAddress& part : below->queryContentCells(everyContent)->getRangeAddresses())
    end = std::min(end, part.StartRow);
  return static_cast<std::size_t>(end - next);
}

void prepareRows(const SheetDocument& document, const Season& season, TableKind kind, std::size_t rows) {
  const Located& where = season.where(kind);
  const std::string& name = where.table->sheet();
  Strip strip;
  strip.sheet = sheetNamed(document, name);
  if (Reference<css::util::XProtectable>(strip.sheet, UNO_QUERY_THROW)->isProtected())
    refuse("The sheet '" + name + "' is protected; nothing was changed. Take its protection off first.");
  if (rows == 0 || rows > static_cast<std::size_t>(lastRowOfSheets))
    refuse("The number of rows to make ready lies between 1 and 1048575.");
  widen(strip, season, where);
  strip.first = static_cast<sal_Int32>(where.table->sheet_row(where.first_row)) - 1;
  // Rows that were pasted below the prepared ones have no formulas that could be followed.
  strip.model = lastWithFormulas(strip);
  strip.last = std::max(strip.model, static_cast<sal_Int32>(where.table->sheet_row(where.end_row)) - 2);
  if (strip.model < strip.first)
    strip.model = strip.last;
  if (strip.last < strip.first)
    refuse("There is no row below the headings of '" + name + "' whose formulas could be followed.");
  grow(strip, static_cast<sal_Int32>(rows));
}

} // namespace wetspell::addin
