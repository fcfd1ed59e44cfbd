// The two sheets of a handout that are typed into: visits and counts of life.
#include "entry.hpp"
#include "formula.hpp"
#include "handout_plan.hpp"
#include "layout.hpp"
#include "quantity/unit.hpp"
#include "record_sheet.hpp"
#include "table/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell::workbook::handout {
namespace {

constexpr double row_height = 0.9;      // for two lines of feedback, and for a pencil
constexpr double feedback_width = 10.5; // cm

/// Narrower than in the season workbook, so that a row goes on two pages of paper at a size to write on.
double width(Field field) {
  switch (field) {
  case Field::visit_temperature_1:
  case Field::visit_temperature_2:
  case Field::visit_temperature_3:
    return 2.3;
  case Field::visit_inlet:
  case Field::visit_outlet:
    return 2.3;
  case Field::visit_joined:
    return 3.2;
  case Field::visit_notes:
    return 4.8;
  default:
    return layout(field).width;
  }
}

/// On paper the second page of a visit begins here.
constexpr Field second_page = Field::visit_fill;

bool is_person(Field field) {
  return field == Field::visit_person || field == Field::life_person;
}

/// Codes keep their zeros, whatever a program makes of what is chosen from a list. The person's own cell
/// holds a formula, which a cell for texts would show.
Look look_of(Field field) {
  const FieldType type = spec(field).type;
  const bool code = type == FieldType::pool_ref || (type == FieldType::person_ref && !is_person(field));
  return code ? Look::typed_code : cell_look(spec(field));
}

/// The person's code stands there as soon as something is typed: a row with nothing else in it is no visit,
/// and of one without a pool it must be known whom to ask.
SheetCell person_cell(const HandoutPlan& plan, TableKind table, std::size_t row) {
  return formula_cell(
      Look::typed_text,
      fmt::format("IF(COUNTA({})=0;\"\";{})", typed_in_row(plan, table, row), text_literal(plan.who().code)));
}

struct Texts {
  TableKind table;
  std::string_view explanation;
  std::string (*feedback)(const HandoutPlan&, std::size_t row);
};

Sheet table_sheet(const HandoutPlan& plan, const Texts& texts) {
  const TableLayout& where = layout(texts.table);
  Sheet sheet;
  sheet.name = spec(texts.table).sheet;
  sheet.tab_colour = where.tab_colour;
  sheet.page = where.page;
  sheet.columns.push_back({feedback_width});
  SheetRow bands{0.6, {text_cell(Look::band_check, "LOOK AGAIN")}, 1};
  SheetRow heads{1.5, {text_cell(Look::head_check, std::string(handout_words::feedback))}, 1};
  for (const Field field : plan.columns(texts.table)) {
    sheet.columns.push_back({width(field), Look::page, field == second_page});
    bands.cells.push_back(band_cell(spec(field)));
    heads.cells.push_back(text_cell(Look::head_typed, heading(spec(field), plan.season.settings)));
  }
  SheetRow title{1.3, {text_cell(Look::title, sheet.name)}, 1};
  title.cells.resize(4);
  title.cells.back() = text_cell(Look::subtitle, std::string(texts.explanation));
  sheet.rows = {title, bands, heads};
  for (std::size_t row = first_row; row < first_row + ready_rows; ++row) {
    SheetRow line{row_height, {formula_cell(Look::check_text, texts.feedback(plan, row))}, 1};
    for (const Field field : plan.columns(texts.table)) {
      SheetCell cell;
      if (is_person(field))
        cell = person_cell(plan, texts.table, row);
      cell.look = look_of(field);
      cell.entry = entry_name(field);
      line.cells.push_back(std::move(cell));
    }
    sheet.rows.push_back(std::move(line));
  }
  const std::size_t last = sheet.columns.size() - 1;
  sheet.frozen_columns = 3; // feedback, pool, date
  sheet.frozen_rows = first_row;
  sheet.repeat_from = heading_row - 1;
  sheet.repeat_to = first_row;
  sheet.print = Range{1, heading_row - 1, last, first_row + ready_rows - 1}; // on paper no feedback
  const std::string first = fmt::format("{}.A{}", sheet.name, first_row + 1);
  LookRules rules{fmt::format("{}:{}.A{}", first, sheet.name, first_row + ready_rows), first, {}};
  // Not SEARCH: there the sign stands for any other wherever signs may, as in every .xlsx.
  rules.rules = {{fmt::format("ISNUMBER(FIND(\"?\";[.$A{}]))", first_row + 1), Look::doubtful_words}};
  sheet.look_rules = {std::move(rules)};
  return sheet;
}

} // namespace

Sheet visits_sheet(const HandoutPlan& plan) {
  Sheet sheet = table_sheet(plan, {TableKind::visits,
                                   "One row a visit. A blank means: not read; it is never taken for zero. "
                                   "Another unit can be written behind the number.",
                                   visit_feedback});
  sheet.page = PageLook::two_across;
  sheet.repeat_first = 1;
  sheet.repeat_columns = 3;
  return sheet;
}

Sheet life_sheet(const HandoutPlan& plan) {
  return table_sheet(plan, {TableKind::life,
                            "One row for each animal, form and visit. 0 means: looked for and not seen. A "
                            "second person counts without looking at the first count.",
                            life_feedback});
}

std::vector<EntryCheck> entries(const HandoutPlan& plan) {
  const Season& season = plan.season;
  EntrySources from;
  from.limit = [&](Limit limit, Kind kind) {
    return number(from_si(season.limits[limit], season.settings.unit_of(kind)));
  };
  from.offered = [&](Field declared) { return offered(plan, declared); };
  from.not_offered = [](const FieldSpec& field, Field) {
    return fmt::format("\"{}\" takes a word from the list. Choose one, or keep what you typed: then the "
                       "coordinator will ask.",
                       field.heading);
  };
  from.season_year = season.settings.season_year ? std::to_string(*season.settings.season_year) : "\"\"";
  from.compare_year = fmt::format("on the sheet {}", words_name);
  std::vector<EntryCheck> all;
  for (const TableKind table : {TableKind::visits, TableKind::life})
    for (const Field field : plan.columns(table))
      all.push_back(
          entry_check(spec(field), spec(table).sheet, plan.column(field).value_or(0), first_row, from));
  EntryCheck answer;
  answer.name = "entry-answer";
  answer.base = fixed_cell(questions_sheet_name, 7, first_row);
  answer.condition = "of:cell-content-is-in-list(\"right as it is\";\"do not remember\")";
  answer.list = true;
  answer.title = question_columns.answer;
  answer.help = "'right as it is', or what it should be, or 'do not remember'. Nobody has to go out again.";
  all.push_back(std::move(answer));
  return all;
}

} // namespace wetspell::workbook::handout
