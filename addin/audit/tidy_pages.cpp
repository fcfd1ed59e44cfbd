#include "audit/tidy_pages.hpp"

#include "audit/audit_tables.hpp"
#include "audit/blocks.hpp"
#include "audit/links.hpp"
#include "sheet/strip.hpp"
#include "sheet/undo_step.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"

#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

enum Row : std::size_t { title_row, words_row, more_words_row, heading_row = 4, first_row };
constexpr std::size_t in_view = 2;    // columns that stay in view: pool and day, or code and name
constexpr sal_Int32 lineHeight = 520; // 1/100 mm

std::string sheetOf(TableKind kind) {
  return fmt::format("Tidy {}", spec(kind).name);
}

std::string_view use(RowState state) {
  switch (state) {
  case RowState::usable:
    return "yes";
  case RowState::after_answers:
    return "after answers";
  case RowState::unusable:
    break;
  }
  return "no";
}

Table contents(const TidySheet& tidy) {
  const std::size_t columns = tidy.table.columns();
  Table table(Place{}, heading_row + tidy.table.rows(), columns + 1);
  const auto say = [&](std::size_t row, const std::string& words) {
    // Not in the first columns, which a print repeats on every page.
    table.at(row, row == title_row ? 0 : in_view) = Cell::of_text(words);
  };
  const std::string_view sheet = spec(tidy.kind).sheet;
  say(title_row, sheetOf(tidy.kind));
  say(words_row,
      fmt::format("The rows in the columns of a season workbook: copy what you want to keep, as far as "
                  "the column before 'From', and paste it below the rows of '{}'.",
                  sheet));
  say(more_words_row,
      fmt::format(
          "Nothing is rounded or converted: a number in a unit other than the workbook's own carries its "
          "unit, one whose unit cannot be told '{}'. 'Can be used' says what the audit makes of the row.",
          unit_asked));
  for (std::size_t row = 0; row < tidy.table.rows(); ++row)
    for (std::size_t column = 0; column < columns; ++column)
      table.at(heading_row + row, column) = tidy.table.at(row, column);
  table.at(heading_row, columns) = Cell::of_text("Can be used");
  for (std::size_t row = 0; row < tidy.states.size(); ++row)
    table.at(first_row + row, columns) = Cell::of_text(std::string(use(tidy.states[row])));
  return table;
}

sal_Int32 formatOf(const SheetDocument& document, const std::string_view heading, TableKind kind) {
  for (const FieldSpec& field : fields(kind))
    if (field.heading == heading && field.type == FieldType::quantity) {
      if (field.kind == Kind::date || field.kind == Kind::time)
        return dateFormat(document, field.kind == Kind::time);
      return numberFormat(document, "General");
    }
  return textFormat(document);
}

/// Rows whose texts decide how wide and high cells are: looking takes about a millisecond each.
constexpr std::size_t looked = 300;

void layOut(const SheetDocument& document, const Corner& corner, const TidySheet& tidy, const Table& cells) {
  const std::size_t columns = cells.columns();
  const std::size_t lines = cells.rows() - first_row;
  setHeights(corner.range(1, cells.rows()), lineHeight);
  setHeights(corner.range(1, 1), 2 * lineHeight);
  dress(corner.range(1, 1), Dress::title);
  dress(corner.at(words_row, in_view).range(1, heading_row - words_row), Dress::words);
  dress(corner.at(heading_row, 0).range(columns, 1), Dress::heading);
  if (lines > 0)
    dress(corner.at(first_row, 0).range(columns, lines), Dress::text);
  for (std::size_t column = 0; column < columns; ++column) {
    const UndoPart part(document);
    std::size_t longest = cells.at(heading_row, column).text().size();
    for (std::size_t row = first_row; row < std::min(cells.rows(), first_row + looked); ++row)
      longest = std::max(longest, to_text(cells.at(row, column)).size());
    constexpr sal_Int32 least = 1900, most = 7000;
    setWidth(corner.at(0, column), widthFor(longest, least, most));
    if (lines == 0)
      continue;
    const auto below = corner.at(first_row, column).range(1, lines);
    const bool links = column == columns - 2; // they are formulas
    if (!links)
      setFormat(below, formatOf(document, cells.at(heading_row, column).text(), tidy.kind));
    align(below, Side::left);
  }
  // The office may have to take another, wider font: a heading that is cut off could be another one's.
  wrap(corner.at(heading_row, 0).range(columns, 1));
  findHeights(corner.at(heading_row, 0).range(1, 1));
  if (lines == 0)
    return;
  const std::size_t near = std::min(lines, looked);
  wrap(corner.at(first_row, columns - 3).range(1, near)); // notes; further down they are on one line
  findHeights(corner.at(first_row, 0).range(1, near));
}

void write(const SheetDocument& document, const TidySheet& tidy) {
  const Table cells = contents(tidy);
  const std::size_t columns = cells.columns();
  const Corner corner = takeBlock(document, tidyBlock(tidy.kind), sheetOf(tidy.kind), columns, cells.rows());
  layOut(document, corner, tidy, cells);
  putCells(document, corner, cells);
  std::vector<Link> links;
  for (const Place& from : tidy.from)
    links.push_back({to_text(from), from});
  putLinks(document, corner.at(first_row, columns - 2), links);
  const auto area = addressOf(corner.range(columns, cells.rows()));
  const Reference<css::sheet::XPrintAreas> print(corner.sheet, UNO_QUERY_THROW);
  print->setPrintAreas({&area, 1});
  css::table::CellRangeAddress titles = addressOf(corner.at(heading_row, 0).range(in_view, 1));
  print->setTitleRows(titles);
  print->setPrintTitleRows(true);
  print->setTitleColumns(titles);
  print->setPrintTitleColumns(true);
  setPage(document, corner.sheet, PageKind::columns_over_pages);
  keepInView(document, corner.at(first_row, in_view));
}

} // namespace

void writeTidyPages(const SheetDocument& document, const Audit& audit) {
  const auto sheets = tidy_tables(audit, TidyColumns::all_typed);
  for (const TidySheet& sheet : sheets) {
    const UndoPart part(document);
    write(document, sheet);
  }
  for (const TableKind kind : tidyKinds) {
    const bool written =
        std::any_of(sheets.begin(), sheets.end(), [&](const TidySheet& sheet) { return sheet.kind == kind; });
    if (written || !ownedBlock(document, tidyBlock(kind)))
      continue;
    const UndoPart part(document);
    Table none(Place{}, 2, 1);
    none.at(0, 0) = Cell::of_text(sheetOf(kind));
    none.at(1, 0) = Cell::of_text("The last audit found no rows of this kind.");
    putCells(document, takeBlock(document, tidyBlock(kind), sheetOf(kind), 1, none.rows()), none);
  }
}

} // namespace wetspell::addin
