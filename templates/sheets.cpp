// The sheets that hold one table each.
#include "sheets.hpp"

#include "formula.hpp"
#include "layout.hpp"
#include "names.hpp"
#include "record_sheet.hpp"
#include "row_formulas.hpp"

#include "check/rule.hpp"
#include "table/table.hpp"

#include <fmt/format.h>

#include <utility>

namespace wetspell::workbook {
namespace {

std::string no_formula(Field, std::size_t) {
  return {};
}

/// The cells of a column below the headings, as look rules name them.
LookRules rules_for(const Sheet& sheet, std::size_t column, std::size_t last_column, TableKind table,
                    const Filling& filling) {
  const std::size_t first = layout(table).heading_row + 2; // as Calc counts
  const std::size_t end = first + filling.ready(table) - 1;
  LookRules rules;
  rules.first = fmt::format("{}.{}{}", sheet.name, column_letters(column), first);
  rules.range = fmt::format("{}:{}.{}{}", rules.first, sheet.name, column_letters(last_column), end);
  return rules;
}

/// "[.$A5]": a cell of the first row below the headings, its column held fast.
std::string column_held(Field field) {
  return fmt::format("[.${}{}]", column_letters(column_of(field)), layout(spec(field).table).heading_row + 2);
}

void add_filter(Sheet& sheet, TableKind table, const Filling& filling) {
  const TableLayout& where = layout(table);
  sheet.filter =
      Range{0, where.heading_row, sheet.columns.size() - 1, where.heading_row + filling.ready(table)};
}

/// How far down the rows go, in the title's row behind the last column: out of the way of sorting and
/// printing.
void add_rows_in_use(Sheet& sheet, TableKind table, const Filling& filling) {
  sheet.columns.push_back({4.0});
  auto& title = sheet.rows.front().cells;
  title.resize(beside(table) + 1);
  title.back() = formula_cell(Look::rows_in_use, rows_in_use(table, filling));
}

} // namespace

Sheet pools_sheet(const Filling& filling) {
  Sheet sheet =
      record_sheet(TableKind::pools,
                   "One row a pool. The code is what the other sheets call it by. What it looked like at "
                   "its fullest lets the check see what cannot be.",
                   filling, no_formula);
  add_filter(sheet, TableKind::pools, filling);
  add_rows_in_use(sheet, TableKind::pools, filling);
  return sheet;
}

Sheet people_sheet(const Filling& filling) {
  Sheet sheet = record_sheet(TableKind::people,
                             "To measure by paces, walk a taped course once or more and write how many you "
                             "counted; one pace is two steps.",
                             filling, person_formula);
  add_filter(sheet, TableKind::people, filling);
  add_rows_in_use(sheet, TableKind::people, filling);
  return sheet;
}

Sheet visits_sheet(const Filling& filling) {
  Sheet sheet =
      record_sheet(TableKind::visits,
                   "One row a visit. Type what you read, in any unit you write behind the number. Blank "
                   "means: not read; it "
                   "is never taken for zero.",
                   filling, visit_formula);
  const TableLayout& where = layout(TableKind::visits);
  const auto& marked = mark_column;
  sheet.columns.insert(sheet.columns.begin() + marked, SheetColumn{2.5});
  sheet.rows[where.heading_row - 1].cells.insert(sheet.rows[where.heading_row - 1].cells.begin() + marked,
                                                 text_cell(band_look(Part::look_again), "LOOK AGAIN"));
  sheet.rows[where.heading_row].cells.insert(sheet.rows[where.heading_row].cells.begin() + marked,
                                             text_cell(heading_look(Part::look_again), "This row is"));
  for (std::size_t row = where.heading_row + 1; row < sheet.rows.size(); ++row)
    sheet.rows[row].cells.insert(sheet.rows[row].cells.begin() + marked,
                                 formula_cell(Look::check_flag, visit_mark(row)));
  sheet.print->last_column =
      column_of(Field::visit_doubts);         // nobody asks on paper which file a row came from
  sheet.print->first_row = sheet.repeat_from; // columns run over several pages, a title over the first alone
  add_filter(sheet, TableKind::visits, filling);

  const std::string mark = fmt::format("[.${}{}]", column_letters(mark_column), where.heading_row + 2);
  LookRules marks = rules_for(sheet, mark_column, mark_column, TableKind::visits, filling);
  marks.rules = {{fmt::format("{}=\"look again\"", mark), Look::doubtful}};
  LookRules doubts = rules_for(sheet, column_of(Field::visit_doubts), column_of(Field::visit_doubts),
                               TableKind::visits, filling);
  doubts.rules = {{fmt::format("LEN({})>0", column_held(Field::visit_doubts)), Look::doubtful_words}};
  sheet.look_rules = {std::move(marks), std::move(doubts)};
  return sheet;
}

Sheet life_sheet(const Filling& filling) {
  Sheet sheet =
      record_sheet(TableKind::life,
                   "One row for each animal, form and visit. 0 means: looked for and not seen. A second "
                   "person counts without looking at the first count.",
                   filling, no_formula);
  sheet.print->last_column = column_of(Field::life_notes);
  add_filter(sheet, TableKind::life, filling);
  return sheet;
}

Sheet findings_sheet(const Filling& filling) {
  Sheet sheet = record_sheet(
      TableKind::findings,
      "Written by the check (menu Wetspell). 'fix' cannot be right, 'ask' is doubtful, 'note' is "
      "worth knowing. Your answer and note stay yours.",
      filling, no_formula);
  add_filter(sheet, TableKind::findings, filling);
  const std::string level = column_held(Field::finding_level), answer = column_held(Field::finding_answer);
  LookRules levels = rules_for(sheet, column_of(Field::finding_level), column_of(Field::finding_level),
                               TableKind::findings, filling);
  sheet.print->last_column = column_of(Field::finding_note); // the marks behind it are for Wetspell
  levels.rules = {{fmt::format("AND({}<>\"\";{}<>\"\")", level, answer), Look::answered},
                  {fmt::format("{}={}", level, text_literal(name(Level::fix))), Look::level_fix},
                  {fmt::format("{}={}", level, text_literal(name(Level::ask))), Look::level_ask},
                  {fmt::format("{}={}", level, text_literal(name(Level::note))), Look::level_note}};
  sheet.look_rules = {std::move(levels)};
  return sheet;
}

Sheet limits_sheet(const Filling& filling) {
  return record_sheet(
      TableKind::limits,
      "From where on a reading is doubtful or cannot be. Change a value and every rule follows; leave "
      "it blank for the usual value.",
      filling, no_formula);
}

Sheet classes_sheet(const Filling& filling) {
  // All tables start in the same rows, with an empty column between them.
  Sheet sheet =
      record_sheet(TableKind::depth_classes,
                   "On a limit, a depth belongs to the shallower class and a fullness to the fuller "
                   "one (common practice, no source); a wet spell to the shorter one (judgement).",
                   filling, no_formula);
  for (const TableKind table : {TableKind::fill_classes, TableKind::spell_classes}) {
    const Sheet other = record_sheet(table, {}, filling, no_formula);
    sheet.columns.push_back({1.0});
    sheet.columns.insert(sheet.columns.end(), other.columns.begin(), other.columns.end());
    for (std::size_t row = layout(table).heading_row - 1; row < sheet.rows.size(); ++row) {
      auto& cells = sheet.rows[row].cells;
      cells.emplace_back();
      const auto& others = other.rows[row].cells;
      cells.insert(cells.end(), others.begin(), others.end());
    }
  }
  add_room(sheet, 7.0);
  return sheet;
}

} // namespace wetspell::workbook
