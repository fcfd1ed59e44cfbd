#include "function/rows.hpp"

#include "function/refusal.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

/// The last day that can be written: a function gives the same answer every day, so nothing lies in the
/// future unless the settings say as of when.
constexpr double end_of_days = 2958465; // 9999-12-31

Table table_from(const std::string& sheet, const Argument& argument) {
  Table table({.sheet = sheet}, argument.rows, argument.columns);
  for (std::size_t row = 0; row < argument.rows; ++row) {
    for (std::size_t column = 0; column < argument.columns; ++column) {
      table.at(row, column) = argument.cells[row * argument.columns + column];
    }
  }
  return table;
}

Table visits_table(const Argument& headings, const Argument& rows) {
  Table table({.sheet = std::string(spec(TableKind::visits).sheet)}, rows.rows + 1, rows.columns);
  for (std::size_t column = 0; column < rows.columns; ++column) {
    table.at(0, column) = headings.cells[column];
  }
  for (std::size_t row = 0; row < rows.rows; ++row) {
    for (std::size_t column = 0; column < rows.columns; ++column) {
      table.at(row + 1, column) = rows.cells[row * rows.columns + column];
    }
  }
  return table;
}

/// Beside a formula a date arrives as its number. In a table of settings no other number is that large.
void dates_of_settings(Table& table) {
  if (table.rows() == 0 || to_text(table.at(0, 0)) != spec(Field::setting_label).heading) {
    return;
  }
  constexpr double first = 20000; // 1954
  constexpr double last = 80000;  // 2119
  for (std::size_t row = 1; row < table.rows(); ++row) {
    for (std::size_t column = 1; column < table.columns(); ++column) {
      Cell& cell = table.at(row, column);
      if (cell.kind == CellKind::number && cell.number >= first && cell.number < last) {
        cell.kind = CellKind::date;
      }
    }
  }
}

/// A table of settings that says nothing but the unit system.
Result<Table> unit_settings(const ParameterSpec& parameter, const Cell& word) {
  if (!choice_from(to_text(word), unit_system_words()).chosen()) {
    return refusal::not_a_word(parameter, word, "US customary, metric, a table of cells");
  }
  const auto catalogue = settings_catalogue();
  const auto setting = std::find_if(catalogue.begin(), catalogue.end(), [](const SettingSpec& one) {
    return one.setting == Setting::unit_system;
  });
  Table table({.sheet = std::string(spec(TableKind::settings).sheet)}, 2, 2);
  table.at(0, 0) = Cell::of_text(std::string(spec(Field::setting_label).heading));
  table.at(0, 1) = Cell::of_text(std::string(spec(Field::setting_value).heading));
  table.at(1, 0) = Cell::of_text(std::string(setting->label));
  table.at(1, 1) = word;
  return table;
}

} // namespace

ParameterSpec headings_parameter() {
  return {
      .name = "headings", .takes = Takes::rows, .help = "The row of cells with the headings of the visits"};
}

ParameterSpec rows_parameter() {
  return {.name = "rows", .takes = Takes::rows, .help = "The rows of visits, as wide as the headings"};
}

ParameterSpec tables_parameter() {
  return {.name = "tables",
          .takes = Takes::tables,
          .help =
              "Tables with their headings (people, pools, settings, classes), or \"metric\" for the units",
          .standard = "no tables, US customary units"};
}

Result<Season> season_of(std::span<const Argument> arguments) {
  const Argument& headings = arguments[0];
  const Argument& rows = arguments[1];
  if (headings.rows != 1) {
    return Problem{ProblemKind::bad_argument,
                   fmt::format("\"headings\" must be one row of cells, got {} rows.", headings.rows)};
  }
  if (headings.columns != rows.columns) {
    return Problem{ProblemKind::bad_argument,
                   fmt::format("\"headings\" is {} columns wide and \"rows\" {}; they must be alike.",
                               headings.columns, rows.columns)};
  }
  std::vector<Table> sheets;
  sheets.push_back(visits_table(headings, rows));
  for (const Argument& argument : arguments.subspan(2)) {
    if (argument.blank() || (argument.single() && argument.cells.front() == Cell::of_number(0))) {
      continue;
    }
    if (!argument.single()) {
      sheets.push_back(table_from(fmt::format("table {}", sheets.size()), argument));
      dates_of_settings(sheets.back());
      continue;
    }
    auto settings = unit_settings(tables_parameter(), argument.cells.front());
    if (!settings) {
      return settings.error();
    }
    sheets.push_back(std::move(settings.value()));
  }
  return read_season(std::move(sheets), end_of_days);
}

} // namespace wetspell
