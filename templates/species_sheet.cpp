#include "species_sheet.hpp"

#include "formula.hpp"
#include "layout.hpp"
#include "record_sheet.hpp"
#include "sheets.hpp"

#include "table/table.hpp"

#include <fmt/format.h>

#include <utility>

namespace wetspell::workbook {
namespace {

// Behind the catalogue's columns: where a name stands first, and the names without their repetitions.
std::size_t first_at_column() {
  return column_of(Field::species_most) + 1;
}
std::size_t once_column() {
  return first_at_column() + 1;
}

/// "[.A$4:.A$63]": a column that stays in place when the formula is copied down.
std::string rows_of(std::size_t column, std::size_t first, std::size_t last) {
  return fmt::format("[.{0}${1}:.{0}${2}]", column_letters(column), first + 1, last + 1);
}

} // namespace

std::string animals_once(const Filling& filling) {
  const TableLayout& where = layout(TableKind::species);
  return fixed_range(spec(TableKind::species).sheet, once_column(), where.heading_row + 1, once_column(),
                     where.heading_row + filling.ready(TableKind::species));
}

Sheet species_sheet(const Filling& filling) {
  Sheet sheet =
      record_sheet(TableKind::species,
                   "A first list for woodland pools in the northeast of North America, from memory and "
                   "without a source: make it your own.",
                   filling, [](Field, std::size_t) { return std::string(); });
  const TableLayout& where = layout(TableKind::species);
  const std::size_t first = where.heading_row + 1,
                    last = where.heading_row + filling.ready(TableKind::species);
  const std::size_t names = column_of(Field::species_name);
  sheet.columns.push_back({2.0});
  sheet.columns.push_back({5.4});
  const Look band = band_look(Part::worked_out), head = heading_look(Part::worked_out);
  auto& bands = sheet.rows[where.heading_row - 1].cells;
  bands.push_back(text_cell(band, fmt::format("{} · Offered on the sheet {}", part_words(Part::worked_out),
                                              spec(TableKind::life).sheet)));
  bands.push_back(text_cell(band, {}));
  auto& heads = sheet.rows[where.heading_row].cells;
  heads.push_back(text_cell(head, "First at"));
  heads.push_back(text_cell(head, "Each animal once"));
  for (std::size_t row = first; row <= last; ++row) {
    const std::string place = fmt::format("(ROW()-{})", first);
    sheet.rows[row].cells.push_back(
        formula_cell(Look::derived_whole,
                     fmt::format("IF({0}=\"\";\"\";IF(COUNTIF([.{1}${2}:.{1}{3}];{0})=1;{4};\"\"))",
                                 here(names, row), column_letters(names), first + 1, row + 1, place)));
    const std::string firsts = rows_of(first_at_column(), first, last);
    sheet.rows[row].cells.push_back(
        formula_cell(Look::derived_text, fmt::format("IF({0}>COUNT({1});\"\";INDEX({2};SMALL({1};{0})))",
                                                     place, firsts, rows_of(names, first, last))));
  }
  add_room(sheet, 3.0);
  return sheet;
}

} // namespace wetspell::workbook
