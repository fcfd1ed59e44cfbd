#include "function/rows.hpp"

#include "function/refusal.hpp"
#include "season/visit_rows.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

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
      if (cell.kind() == CellKind::number && cell.number() >= first && cell.number() < last) {
        cell = Cell::of_date(cell.number());
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

/// The sheets of a season: visits with or without the rows, then the tables.
Result<std::vector<Table>> sheets_of(std::span<const Argument> arguments, const Argument& rows) {
  std::vector<Table> sheets;
  sheets.push_back(visits_table(arguments[0], rows));
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
  return sheets;
}

/// Headings and tables of the last call, read. A sheet asks for one row after another, each time with the
/// same tables, and reading those takes many times as long as reading the row. They are the same when every
/// cell is: nothing else decides, so that nothing old can be answered from, whichever document or range the
/// cells are of.
class LastTables {
public:
  Result<const Season*> season_with(std::span<const Argument> arguments) {
    const Argument& rows = arguments[1];
    if (!are(arguments)) {
      read_without_rows(arguments);
    }
    if (const Season* season = rows_ ? rows_->with(rows.cells) : nullptr) {
      return season;
    }
    auto sheets = sheets_of(arguments, rows);
    if (!sheets) {
      return sheets.error();
    }
    auto whole = read_season(std::move(sheets).value(), end_of_days);
    if (!whole) {
      return whole.error();
    }
    whole_ = std::move(whole).value();
    return &*whole_;
  }

private:
  [[nodiscard]] bool are(std::span<const Argument> arguments) const {
    const auto same = [](const Argument& one, const Argument& other) {
      return one.rows == other.rows && one.columns == other.columns && one.cells == other.cells;
    };
    return rows_ && same(headings_, arguments[0]) && std::ranges::equal(tables_, arguments.subspan(2), same);
  }

  /// Leaves nothing when that alone makes no season.
  void read_without_rows(std::span<const Argument> arguments) {
    rows_.reset();
    Argument no_rows = arguments[1];
    no_rows.rows = 0;
    no_rows.cells.clear();
    auto sheets = sheets_of(arguments, no_rows);
    if (!sheets) {
      return;
    }
    if (auto season = read_season(std::move(sheets).value(), end_of_days)) {
      headings_ = arguments[0];
      tables_.assign(arguments.begin() + 2, arguments.end());
      rows_.emplace(std::move(season).value());
    }
  }

  Argument headings_;
  std::vector<Argument> tables_;
  std::optional<VisitRows> rows_;
  std::optional<Season> whole_;
};

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

std::vector<ErrorSpec> rows_errors() {
  return {{ProblemKind::bad_argument,
           "headings and rows differ in width, there is more than one row of headings, a further table shows "
           "an error, or a word is not a unit system"},
          {ProblemKind::not_enough, "the headings are not those of a table of visits"}};
}

Result<const Season*> season_of(std::span<const Argument> arguments) {
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
  static thread_local LastTables last;
  return last.season_with(arguments);
}

} // namespace wetspell
