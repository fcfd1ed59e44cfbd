#include "gather/put_rows.hpp"

#include "season/locate.hpp"
#include "sheet/cells.hpp"
#include "sheet/prepare_rows.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/strip.hpp"
#include "sheet/undo_step.hpp"
#include "table/day.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <array>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

Season seasonNow(const SheetDocument& document) {
  auto season = read_season(tablesOf(document), serial_of_today());
  if (!season)
    refuse(season.error().text);
  return std::move(season).value();
}

std::array<Field, 2> sourcesOf(TableKind table) {
  if (table == TableKind::life)
    return {Field::life_source_file, Field::life_source_row};
  return {Field::visit_source_file, Field::visit_source_row};
}

/// Headings for the source in the first columns at the right in which nothing stands.
bool addSources(const SheetDocument& document, const Season& season, TableKind kind) {
  const auto sources = sourcesOf(kind);
  if (season.has(sources[0]) && season.has(sources[1]))
    return false;
  const Located& where = season.where(kind);
  Place heading{where.table->sheet(), where.table->sheet_row(where.heading_row),
                where.table->sheet_column(where.table->columns())};
  for (const Field field : sources) {
    if (season.has(field))
      continue;
    write(document, heading, Cell::of_text(std::string(spec(field).heading)));
    ++heading.column;
  }
  return true;
}

/// Days and times look like such, also where nobody prepared the cells.
void showDates(const SheetDocument& document, const Reference<css::table::XCellRange>& cells, Kind kind) {
  const Reference<css::beans::XPropertySet> properties(cells, UNO_QUERY_THROW);
  sal_Int32 key = 0;
  sal_Int16 type = 0;
  if (properties->getPropertyValue("NumberFormat") >>= key)
    Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)
        ->getNumberFormats()
        ->getByKey(key)
        ->getPropertyValue("Type") >>= type;
  if ((type & css::util::NumberFormat::DATETIME) == 0)
    properties->setPropertyValue("NumberFormat", Any(dateFormat(document, kind == Kind::time)));
}

/// The columns of fields, from the left.
std::vector<std::pair<sal_Int32, Field>> columnsOf(const Season& season, TableKind kind) {
  const Located& where = season.where(kind);
  std::vector<std::pair<sal_Int32, Field>> columns;
  for (const FieldSpec& field : fields(kind)) {
    const bool source = field.field == sourcesOf(kind)[0] || field.field == sourcesOf(kind)[1];
    if (const std::int32_t at = where.columns[position(field.field)];
        at >= 0 && (field.role == Role::typed || source))
      columns.emplace_back(static_cast<sal_Int32>(where.table->sheet_column(static_cast<std::size_t>(at))),
                           field.field);
  }
  std::sort(columns.begin(), columns.end());
  return columns;
}

} // namespace

void requireRoomFor(const SheetDocument& document, const Season& season, TableKind kind) {
  const std::string& name = season.where(kind).table->sheet();
  if (Reference<css::util::XProtectable>(sheetNamed(document, name), UNO_QUERY_THROW)->isProtected())
    refuse("The sheet '" + name + "' is protected; nothing was written. Take its protection off first.");
}

void putRows(const SheetDocument& document, TableKind kind, const std::vector<AddedRow>& rows) {
  if (rows.empty())
    return;
  Season season = seasonNow(document);
  {
    const UndoPart part(document);
    if (addSources(document, season, kind))
      season = seasonNow(document);
    if (const std::size_t ready = readyRows(document, season, kind); ready < rows.size())
      prepareRows(document, season, kind, rows.size() - ready);
  }
  const Located& where = season.where(kind);
  const auto columns = columnsOf(season, kind);
  Corner corner{sheetNamed(document, where.table->sheet()), 0,
                static_cast<sal_Int32>(where.table->sheet_row(where.end_row)) - 1};
  const UndoPart part(document);
  for (std::size_t begin = 0, end = 0; begin < columns.size(); begin = end) {
    end = begin + 1;
    while (end < columns.size() && columns[end].first == columns[end - 1].first + 1)
      ++end;
    Table cells(Place{}, rows.size(), end - begin);
    for (std::size_t row = 0; row < rows.size(); ++row)
      for (std::size_t c = begin; c < end; ++c)
        cells.at(row, c - begin) = rows[row].cells[position(columns[c].second)];
    corner.column = columns[begin].first;
    putCells(document, corner, cells);
  }
  for (const auto& [column, field] : columns)
    if (const FieldSpec& what = spec(field);
        what.type == FieldType::quantity && (what.kind == Kind::date || what.kind == Kind::time))
      showDates(document, Corner{corner.sheet, column, corner.row}.range(1, rows.size()), what.kind);
}

} // namespace wetspell::addin
