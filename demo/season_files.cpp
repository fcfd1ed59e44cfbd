#include "demo/season_files.hpp"

#include "exchange/csv.hpp"
#include "templates/workbook.hpp"

#include <algorithm>

namespace wetspell::demo {

namespace {

/// The fields that any row of the table fills, in the catalogue's order.
std::vector<Field> filled_fields(TableKind table, const std::vector<SheetRow>& rows) {
  std::vector<Field> filled;
  for (const FieldSpec& each : fields(table))
    if (std::any_of(rows.begin(), rows.end(), [&](const SheetRow& row) { return row.count(each.field) > 0; }))
      filled.push_back(each.field);
  return filled;
}

std::vector<std::vector<Cell>> cells_of(const std::vector<Field>& filled, const std::vector<SheetRow>& rows) {
  std::vector<std::vector<Cell>> cells;
  for (const SheetRow& row : rows) {
    std::vector<Cell>& line = cells.emplace_back();
    for (const Field field : filled) {
      const auto found = row.find(field);
      line.push_back(found == row.end() ? Cell{} : found->second);
    }
  }
  return cells;
}

/// A table from lines of cells, the first line being the headings.
std::string csv_of(const std::vector<std::vector<Cell>>& lines) {
  Table table(Place{}, lines.size(), lines.front().size());
  for (std::size_t r = 0; r < lines.size(); ++r)
    for (std::size_t c = 0; c < lines[r].size(); ++c)
      table.at(r, c) = lines[r][c];
  return csv_from_table(table);
}

std::vector<Cell> words(std::initializer_list<std::string_view> texts) {
  std::vector<Cell> cells;
  for (const std::string_view text : texts)
    cells.push_back(Cell::of_text(std::string(text)));
  return cells;
}

std::string settings_csv(const SeasonRows& season) {
  std::vector<std::vector<Cell>> lines{
      words({spec(Field::setting_label).heading, spec(Field::setting_value).heading})};
  for (const auto& [setting, value] : season.settings) {
    const auto all = settings_catalogue();
    const auto found = std::find_if(all.begin(), all.end(), [setting = setting](const SettingSpec& each) {
      return each.setting == setting;
    });
    lines.push_back({Cell::of_text(std::string(found->label)), value});
  }
  return csv_of(lines);
}

} // namespace

std::string workbook_of(const SeasonRows& season) {
  workbook::WorkbookContent content;
  content.settings = season.settings;
  content.print_filled_rows_only = true;
  for (const auto& [table, rows] : season.tables) {
    const auto filled = filled_fields(table, rows);
    content.tables.push_back({table, filled, cells_of(filled, rows)});
  }
  return workbook::season_workbook(content);
}

std::map<std::string, std::string> csv_files_of(const SeasonRows& season) {
  std::map<std::string, std::string> files{{"settings.csv", settings_csv(season)}};
  for (const auto& [table, rows] : season.tables) {
    const auto filled = filled_fields(table, rows);
    std::vector<std::vector<Cell>> lines(1);
    for (const Field field : filled)
      lines.front().push_back(Cell::of_text(std::string(spec(field).heading)));
    for (auto& line : cells_of(filled, rows))
      lines.push_back(std::move(line));
    files[std::string(spec(table).name) + ".csv"] = csv_of(lines);
  }
  return files;
}

std::string spoiled_csv(const SeasonRows& season) {
  std::vector<std::vector<Cell>> lines{
      words({"table", "row", "field", "pool", "family", "how", "before", "after"})};
  for (const Spoiled& each : season.spoiled) {
    auto line = words({spec(each.table).name, "", spec(each.field).name, each.pool, each.family, each.how,
                       each.before, each.after});
    line[1] = Cell::of_number(static_cast<double>(each.row + 1));
    lines.push_back(std::move(line));
  }
  return csv_of(lines);
}

} // namespace wetspell::demo
