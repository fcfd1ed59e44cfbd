// The person with their pace, and the pools they go to.
#include "formula.hpp"
#include "handout_plan.hpp"
#include "layout.hpp"
#include "record_sheet.hpp"

#include "quantity/unit.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace wetspell::workbook::handout {
namespace {

constexpr std::array person_columns{Field::person_code,   Field::person_name,  Field::person_counts,
                                    Field::person_course, Field::person_run_1, Field::person_run_2,
                                    Field::person_run_3,  Field::person_run_4, Field::person_pace};
constexpr std::size_t counts_column = 2, course_column = 3, run_column = 4, last_run_column = 7,
                      pace_column = 8;

/// What helps to find a pool and to know whether one may go there. Owners are nobody's business but the
/// coordinator's.
constexpr std::array pool_columns{Field::pool_code,     Field::pool_name,      Field::pool_locality,
                                  Field::pool_latitude, Field::pool_longitude, Field::pool_permission,
                                  Field::pool_notes};
constexpr std::size_t notes_across = 3;

/// One number in the workbook's unit where the cell holds one, so that a formula can take it; else as typed.
Cell plain_number(const Quantity& quantity, Unit unit, const Cell& typed) {
  if (!quantity.has_value())
    return typed;
  const double value =
      unit == Unit::none || unit == quantity.unit ? quantity.written : in_unit(quantity, unit);
  constexpr double places = 1e4; // of a tape that was read in another unit, no more digits than it has
  return std::isfinite(value) ? Cell::of_number(std::round(value * places) / places) : typed;
}

Cell person_value(const HandoutPlan& plan, Field field) {
  const Season& season = plan.season;
  const Person& who = plan.who();
  Cell typed = season.where(TableKind::people).found() ? season.cell(field, who.row) : Cell{};
  switch (field) {
  case Field::person_code:
    return Cell::of_text(who.code);
  case Field::person_course:
    return plain_number(who.course, season.settings.length, typed);
  case Field::person_run_1:
    return plain_number(who.run_1, Unit::none, typed);
  case Field::person_run_2:
    return plain_number(who.run_2, Unit::none, typed);
  case Field::person_run_3:
    return plain_number(who.run_3, Unit::none, typed);
  case Field::person_run_4:
    return plain_number(who.run_4, Unit::none, typed);
  default:
    return typed;
  }
}

/// The course times the runs over all counts, for two steps.
std::string pace_formula() {
  const std::string runs = here(run_column, last_run_column, first_row);
  const std::string course = here(course_column, first_row);
  return fmt::format(
      "IF(ISNUMBER({1});IF(COUNT({0})>0;{1}*COUNT({0})/SUM({0})*IF({2}={3};2;1);\"\");\"\")", runs, course,
      here(counts_column, first_row),
      text_literal(counting_way_words().words[static_cast<std::size_t>(CountingWay::steps)].label));
}

void add_person(Sheet& sheet, const HandoutPlan& plan) {
  SheetRow bands{0.6, {}, 1}, heads{1.3, {}, 1}, row{0.8, {}, 1};
  for (const Field field : person_columns) {
    const FieldSpec& what = spec(field);
    bands.cells.push_back(band_cell(what));
    heads.cells.push_back(text_cell(heading_look(part(what)), heading(what, plan.season.settings)));
    SheetCell cell;
    cell.look = cell_look(what);
    if (field == Field::person_pace)
      cell = formula_cell(Look::derived_fine, pace_formula());
    else
      put(cell, person_value(plan, field), cell.look);
    row.cells.push_back(std::move(cell));
  }
  sheet.rows.push_back(std::move(bands));
  sheet.rows.push_back(std::move(heads));
  sheet.rows.push_back(std::move(row));
}

void add_pools(Sheet& sheet, const HandoutPlan& plan) {
  const Season& season = plan.season;
  SheetRow bands{0.6, {}, 1}, heads{0.9, {}, 1};
  for (std::size_t column = 0; column < sheet.columns.size(); ++column)
    bands.cells.push_back(
        text_cell(Look::band_derived, column == 0 ? "TO READ · The pools in your list" : ""));
  for (const Field field : pool_columns)
    heads.cells.push_back(text_cell(Look::head_derived, std::string(spec(field).heading)));
  heads.cells.back().across = notes_across;
  sheet.rows.push_back(std::move(bands));
  sheet.rows.push_back(std::move(heads));
  for (const std::size_t pool : plan.pools) {
    SheetRow row;
    for (const Field field : pool_columns) {
      SheetCell cell;
      cell.look = Look::fixed_text;
      if (field == Field::pool_code)
        put(cell, Cell::of_text(season.pools[pool].code), cell.look);
      else if (season.where(TableKind::pools).found())
        put(cell, season.cell(field, season.pools[pool].row), cell.look);
      row.cells.push_back(std::move(cell));
    }
    row.cells.back().across = notes_across;
    sheet.rows.push_back(std::move(row));
  }
}

} // namespace

std::string pace_cell() {
  return fmt::format("[{}]", fixed_cell(you_name, pace_column, first_row));
}
std::string counts_cell() {
  return fmt::format("[{}]", fixed_cell(you_name, counts_column, first_row));
}

Sheet you_sheet(const HandoutPlan& plan) {
  Sheet sheet;
  sheet.name = you_name;
  sheet.tab_colour = colour::water;
  sheet.page = PageLook::wide_table;
  sheet.columns = {{2.4}, {5.0}, {4.2}, {2.6}, {2.6}, {2.6}, {2.4}, {2.4}, {3.6}};
  SheetRow title{1.3, {text_cell(Look::title, sheet.name), SheetCell{}}, 1};
  title.cells.push_back(text_cell(Look::subtitle, "Set right what is not. One pace is two steps; walk the "
                                                  "taped course as you walk at a pool."));
  sheet.rows.push_back(std::move(title));
  add_person(sheet, plan);
  sheet.rows.push_back(SheetRow{0.6, {}, 1});
  SheetRow named{1.0, {text_cell(Look::section, "Your pools")}, 1};
  sheet.rows.push_back(std::move(named));
  add_pools(sheet, plan);
  sheet.print = Range{0, 0, sheet.columns.size() - 1, sheet.rows.size() - 1};
  return sheet;
}

} // namespace wetspell::workbook::handout
