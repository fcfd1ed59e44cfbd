#include "exchange/tables_json.hpp"

#include "measure/refuse.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace wetspell {

namespace {

using json = nlohmann::json;

json json_from(const Cell& cell) {
  switch (cell.kind()) {
  case CellKind::empty:
    break;
  case CellKind::number:
    return cell.number();
  case CellKind::text:
    return cell.text();
  case CellKind::date:
    return {{"date", cell.number()}};
  case CellKind::error:
    return {{"error", cell.text()}};
  }
  return nullptr;
}

/// Throws json::exception on what is no cell.
Cell cell_from(const json& value) {
  if (value.is_null())
    return {};
  if (value.is_number())
    return Cell::of_number(value.get<double>());
  if (value.is_string())
    return Cell::of_text(value.get<std::string>());
  if (value.contains("date"))
    return Cell::of_date(value.at("date").get<double>());
  return Cell::of_error(value.at("error").get<std::string>());
}

Table table_from(const json& value) {
  const json& cells = value.at("cells");
  std::size_t columns = 0;
  for (const json& row : cells)
    columns = std::max(columns, row.size());
  Table table(Place{value.at("sheet").get<std::string>(), value.at("row").get<std::size_t>(),
                    value.at("column").get<std::size_t>()},
              cells.size(), columns);
  for (std::size_t r = 0; r < cells.size(); ++r)
    for (std::size_t c = 0; c < cells[r].size(); ++c)
      table.at(r, c) = cell_from(cells[r][c]);
  return table;
}

} // namespace

std::string json_from_tables(std::span<const Table> tables) {
  json all = json::array();
  for (const Table& table : tables) {
    json cells = json::array();
    for (std::size_t r = 0; r < table.rows(); ++r) {
      std::size_t used = table.columns();
      while (used > 0 && table.at(r, used - 1).empty())
        --used;
      json row = json::array();
      for (std::size_t c = 0; c < used; ++c)
        row.push_back(json_from(table.at(r, c)));
      cells.push_back(std::move(row));
    }
    all.push_back({{"sheet", table.sheet()},
                   {"row", table.sheet_row(0)},
                   {"column", table.sheet_column(0)},
                   {"cells", std::move(cells)}});
  }
  return all.dump(-1, ' ', false, json::error_handler_t::replace);
}

Result<std::vector<Table>> tables_from(const json& all) {
  try {
    std::vector<Table> tables;
    for (const json& each : all)
      tables.push_back(table_from(each));
    return tables;
  } catch (const json::exception& error) {
    return bad_argument(std::string("The tables cannot be read: ") + error.what());
  }
}

Result<std::vector<Table>> tables_from_json(std::string_view text) {
  try {
    return tables_from(json::parse(text));
  } catch (const json::exception& error) { // the library answers wrong JSON and wrong shapes with one
    return bad_argument(std::string("The tables cannot be read: ") + error.what());
  }
}

} // namespace wetspell
