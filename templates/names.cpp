#include "names.hpp"

#include "entry.hpp"
#include "formula.hpp"
#include "layout.hpp"
#include "species_sheet.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell::workbook {
namespace {

constexpr std::array<std::pair<Setting, std::string_view>, 4> units_in_use{{
    {Setting::temperature_unit, "unit_temperature"},
    {Setting::depth_unit, "unit_depth"},
    {Setting::length_unit, "unit_length"},
    {Setting::area_unit, "unit_area"},
}};

constexpr std::array looked_into{Field::person_code, Field::person_pace, Field::person_counts,
                                 Field::depth_class_label};

constexpr std::array offered{Field::pool_code, Field::person_code, Field::species_name,
                             Field::depth_class_label, Field::fill_class_label};

/// Columns that the start page counts. Rows that are added below the ready ones are counted too.
constexpr std::array counted{Field::visit_pool, Field::visit_doubts, Field::finding_level,
                             Field::finding_answer};
constexpr std::size_t last_counted_row = 99999; // from 0

constexpr std::array given_to_functions{
    TableKind::settings,      TableKind::pools,        TableKind::people,
    TableKind::depth_classes, TableKind::fill_classes, TableKind::limits,
};

/// Of the settings no more than what is typed: beside it stands today's date, which the office takes for new
/// whenever any cell changes, and with it would be every row that is given the settings.
///
/// Of pools and people down to the last row in use, wherever that is: every visit's row is given them, and
/// blank rows cost as much to hand over as filled ones. INDEX and not OFFSET, which would be taken for new
/// too.
Name with_headings(TableKind table, const Filling& filling) {
  const TableLayout& where = layout(table);
  const auto all = fields(table);
  const std::size_t first = column_of(all.front().field);
  const std::size_t last = column_of(table == TableKind::settings ? Field::setting_value : all.back().field);
  const std::string_view sheet = spec(table).sheet;
  if (table != TableKind::pools && table != TableKind::people)
    return {table_name(table), fixed_range(sheet, first, where.heading_row, last, filling.last_row(table))};
  const std::string corner = fixed_cell(sheet, first, where.heading_row);
  return {table_name(table), corner,
          fmt::format("[{}]:INDEX([{}];{})", corner,
                      fixed_range(sheet, last, where.heading_row + 1, last, filling.last_row(table)),
                      rows_in_use_name(table))};
}

/// The cells that a drop-down takes its words from. An animal has a row for every form, and is offered once:
/// the sheet of species has a column for that.
std::string offered_cells(Field field, const Filling& filling) {
  return field == Field::species_name ? animals_once(filling) : filling.range(field);
}

Name offered_words(Field field, const Filling& filling) {
  const std::string cells = offered_cells(field, filling);
  const std::string first = cells.substr(0, cells.find(':'));
  const std::size_t above = layout(spec(field).table).heading_row + 1;
  // Down to the last filled cell, blanks between others included; one cell when all are blank.
  return {offered_name(field), first,
          fmt::format("OFFSET([{0}];0;0;MAX(1;SUMPRODUCT(MAX(([{1}]<>\"\")*(ROW([{1}])-{2}))));1)", first,
                      cells, above)};
}

} // namespace

std::string offered_name(Field field) {
  return "offered_" + column_name(field);
}

std::string column_name(Field field) {
  return fmt::format("{}_{}", spec(spec(field).table).name, spec(field).name);
}

std::vector<Name> names(const Filling& filling) {
  std::vector<Name> all;
  for (const SettingSpec& setting : settings_catalogue())
    all.push_back({setting_name(setting.setting), setting_cell(setting.setting)});
  for (const auto& [setting, name] : units_in_use)
    all.push_back({std::string(name),
                   fixed_cell(spec(TableKind::settings).sheet, in_use_column, setting_row(setting))});
  all.push_back({"version_here",
                 fixed_cell(spec(TableKind::settings).sheet, caution_column, setting_row(Setting::today))});
  for (const TableKind table : given_to_functions)
    all.push_back(with_headings(table, filling));
  for (const TableKind table : {TableKind::pools, TableKind::people})
    all.push_back({rows_in_use_name(table), fixed_cell(spec(table).sheet, beside(table), 0)});
  for (const Field field : looked_into)
    all.push_back({column_name(field), filling.range(field)});
  for (const Field field : offered)
    all.push_back(offered_words(field, filling));
  for (const Field field : counted) {
    const TableKind table = spec(field).table;
    const std::size_t column = column_of(field);
    all.push_back({column_name(field), fixed_range(spec(table).sheet, column, layout(table).heading_row + 1,
                                                   column, last_counted_row)});
  }
  return all;
}

std::string rows_in_use_name(TableKind table) {
  return fmt::format("rows_in_use_{}", spec(table).name);
}

std::string rows_in_use(TableKind table, const Filling& filling) {
  const std::size_t above = layout(table).heading_row + 1;
  const std::size_t first = column_of(fields(table).front().field);
  // Code and name: a row with neither can be meant by nobody. Cells in error are not blank, and do not
  // spread.
  const std::string cells = fixed_range(spec(table).sheet, first, above, first + 1, filling.last_row(table));
  return fmt::format("MAX(1;SUMPRODUCT(MAX((1-ISBLANK([{0}]))*(ROW([{0}])-{1}))))", cells, above);
}

std::string table_name(TableKind table) {
  return fmt::format("table_{}", spec(table).name);
}

} // namespace wetspell::workbook
