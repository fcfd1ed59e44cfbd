#include "sheet/prepare_rows.hpp"

#include "season/locate.hpp"
#include "sheet/strip.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <optional>
#include <vector>

namespace wetspell::addin {

namespace {

using css::table::CellRangeAddress;
using css::uno::Any;
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

/// What people see of a row before they type into it.
struct RowLook {
  std::vector<Any> styles;
  std::vector<css::sheet::ValidationType> entries;

  bool operator==(const RowLook&) const = default;
};

RowLook lookOf(const Strip& strip, sal_Int32 row) {
  RowLook look;
  for (sal_Int32 column = strip.left; column <= strip.right; ++column) {
    const Reference<css::beans::XPropertySet> cell(strip.sheet->getCellByPosition(column, row),
                                                   UNO_QUERY_THROW);
    look.styles.push_back(cell->getPropertyValue("CellStyle"));
    const Reference<css::beans::XPropertySet> entry(cell->getPropertyValue("Validation"), UNO_QUERY_THROW);
    entry->getPropertyValue("Type") >>= look.entries.emplace_back();
  }
  return look;
}

/// The last of the rows that look as the first one does; nothing where all do, down to the end of the sheet.
std::optional<sal_Int32> lastThatLooksSo(const Strip& strip) {
  const RowLook first = lookOf(strip, strip.first);
  sal_Int32 so = strip.first, otherwise = lastRowOfSheets;
  if (lookOf(strip, otherwise) == first)
    return std::nullopt;
  while (otherwise - so > 1) {
    const sal_Int32 middle = so + (otherwise - so) / 2;
    (lookOf(strip, middle) == first ? so : otherwise) = middle;
  }
  return so;
}

/// Rows that were prepared, from the strip's first one on.
struct Prepared {
  sal_Int32 last = lastRowOfSheets;
  bool formulas = false; ///< told by them, and not by the look of the rows
};

/// Nothing where no row differs from those that nobody prepared.
std::optional<Prepared> preparedIn(const Strip& strip) {
  if (const sal_Int32 last = lastWithFormulas(strip); last >= strip.first)
    return Prepared{last, true};
  if (const auto last = lastThatLooksSo(strip))
    return Prepared{*last, false};
  return std::nullopt;
}

/// One behind the prepared rows from `next` on in which nothing stands.
sal_Int32 endOfReady(const Strip& strip, const Prepared& prepared, sal_Int32 next) {
  sal_Int32 end = prepared.last + 1;
  if (prepared.formulas || end <= next)
    return std::max(end, next);
  const Reference<css::sheet::XCellRangesQuery> below(strip.rows(next, prepared.last), UNO_QUERY_THROW);
  for (const CellRangeAddress& part : below->queryContentCells(everyContent)->getRangeAddresses())
    end = std::min(end, part.StartRow);
  return end;
}

Strip stripOf(const SheetDocument& document, const Season& season, const Located& where) {
  Strip strip;
  strip.sheet = sheetNamed(document, where.table->sheet());
  widen(strip, season, where);
  strip.first = static_cast<sal_Int32>(where.table->sheet_row(where.first_row)) - 1;
  return strip;
}

} // namespace

std::size_t readyRows(const SheetDocument& document, const Season& season, TableKind kind) {
  const Located& where = season.where(kind);
  const Strip strip = stripOf(document, season, where);
  const sal_Int32 next = static_cast<sal_Int32>(where.table->sheet_row(where.end_row)) - 1;
  return static_cast<std::size_t>(endOfReady(strip, preparedIn(strip).value_or(Prepared{}), next) - next);
}

void prepareRows(const SheetDocument& document, const Season& season, TableKind kind, std::size_t rows) {
  const Located& where = season.where(kind);
  const std::string& name = where.table->sheet();
  if (Reference<css::util::XProtectable>(sheetNamed(document, name), UNO_QUERY_THROW)->isProtected())
    refuse("The sheet '" + name + "' is protected; nothing was changed. Take its protection off first.");
  if (rows == 0 || rows > static_cast<std::size_t>(lastRowOfSheets))
    refuse("The number of rows to make ready lies between 1 and 1048575.");
  Strip strip = stripOf(document, season, where);
  const sal_Int32 filled = static_cast<sal_Int32>(where.table->sheet_row(where.end_row)) - 2;
  const auto prepared = preparedIn(strip);
  if (filled < strip.first && !prepared)
    refuse("There is no row below the headings of '" + name + "' whose formulas could be followed.");
  // Rows that were pasted below the prepared ones have nothing that could be followed.
  strip.model = prepared ? prepared->last : filled;
  strip.last = prepared ? endOfReady(strip, *prepared, filled + 1) - 1 : filled;
  grow(strip, static_cast<sal_Int32>(rows));
}

} // namespace wetspell::addin
