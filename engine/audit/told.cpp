#include "audit/told.hpp"

#include "audit/mapper.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

/// Where columns of the grid stand, as the sheet names them: "B:E, G"; rows where it is turned.
std::string spots(const Grid& grid, const std::vector<std::size_t>& columns) {
  const auto spot = [&](std::size_t column) {
    const Place place = grid.place(0, column);
    return grid.turned() ? std::to_string(place.row) : column_letters(place.column);
  };
  std::string words;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    std::size_t last = i;
    while (last + 1 < columns.size() && columns[last + 1] == columns[last] + 1)
      ++last;
    words += fmt::format("{}{}{}", words.empty() ? "" : ", ", spot(columns[i]),
                         last > i ? ":" + spot(columns[last]) : "");
    i = last;
  }
  return words;
}

/// The days that head columns.
AuditedColumn days_told(const Mapped& mapped) {
  const Place place = mapped.block.grid.place(0, 0);
  Mapping days;
  days.column = mapped.block.days->days.front();
  days.field = date_field(*mapped.map.kind);
  days.confidence = 1;
  days.reason = "each stands at the side of its readings";
  return {mapped.block.grid.turned() ? column_letters(place.column) : std::to_string(place.row), days};
}

/// What became of each column; the columns of days, which are taken for one reading, are told as one. The
/// words that name the readings of rows are told like headings.
std::vector<AuditedColumn> columns_told(const Mapped& mapped) {
  const Grid& grid = mapped.block.grid;
  std::vector<AuditedColumn> told;
  for (const Mapping& mapping : mapped.map.columns) {
    std::vector<std::size_t> columns{mapping.column};
    if (const auto& days = mapped.block.days) {
      if (mapping.column == days->days.front()) {
        columns = days->days;
        if (mapped.map.kind)
          told.push_back(days_told(mapped));
      } else if (std::find(days->days.begin(), days->days.end(), mapping.column) != days->days.end()) {
        continue;
      }
    }
    told.push_back({spots(grid, columns), mapping});
  }
  for (const Mapping& word : mapped.map.words)
    told.push_back({spots(grid, {word.column}), word});
  return told;
}

/// What is supposed of a table's units, in a sentence without the sheet.
std::string supposed_in(const BlockMap& map) {
  std::vector<std::string> units;
  bool metric = false;
  for (const Mapping& mapping : map.columns)
    if (mapping.unit_supposed) {
      units.push_back(fmt::format("\"{}\" ({}{})", mapping.heading, units.empty() ? "read as " : "",
                                  symbol(mapping.unit)));
      metric = system_of(mapping.unit) == UnitSystem::metric;
    }
  if (units.empty())
    return {};
  std::string all = units.front();
  for (std::size_t i = 1; i < units.size(); ++i)
    all += (i + 1 < units.size() ? ", " : " and ") + units[i];
  return fmt::format(
      "no unit is written for {}; the table's other units are {}. Where it was another, correct Unit "
      "under Headings.",
      all, metric ? "metric" : "US customary");
}

/// Whether a date's cell says the time of day as well; midnight is what programs put where there is none.
bool says_time(const Cell& cell) {
  if (cell.kind() == CellKind::date)
    return cell.number() >= 1 && cell.number() != std::floor(cell.number());
  if (cell.kind() != CellKind::text)
    return false;
  const std::string_view text = cell.text();
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos || colon == 0)
    return false;
  const std::size_t before = text.find_last_not_of("0123456789", colon - 1);
  return text.find_first_of("123456789", before == std::string_view::npos ? 0 : before) !=
         std::string_view::npos;
}

std::size_t times_beside_dates(const Mapped& mapped) {
  const bool dated = mapped.map.kind == TableKind::visits || mapped.map.kind == TableKind::life;
  const Mapping* date = dated ? mapped.map.of(date_field(*mapped.map.kind)) : nullptr;
  std::size_t times = 0;
  if (date != nullptr && !mapped.block.days)
    for (std::size_t row = mapped.block.first_data; row < mapped.block.end_data; ++row)
      times += says_time(mapped.block.grid.at(row, date->column)) && mapped.block.is_record(row);
  return times;
}

} // namespace

std::string times_left_alone(const AuditedTable& table) {
  return fmt::format(
      "A time of day stands beside {} on '{}'. It is left alone: write it under Start where it says "
      "when the visit began.",
      table.times == 1 ? "1 date" : fmt::format("{} dates", table.times), table.sheet);
}

AuditedTable told(const Mapped& mapped) {
  const Block& block = mapped.block;
  const bool turned = block.grid.turned();
  AuditedTable table;
  table.sheet = block.grid.table().sheet();
  table.kind = mapped.map.kind;
  table.layout = mapped.map.layout;
  table.reason = mapped.map.reason;
  table.date_reason = mapped.date_reason;
  std::size_t last = block.first_data;
  for (std::size_t row = block.end_data; row > block.first_data; --row)
    if (block.is_record(row - 1)) {
      last = row;
      break;
    }
  table.first_row = block.grid.place(0, 0).row;
  table.last_row = turned ? block.grid.place(0, block.grid.columns() - 1).row
                          : block.grid.place(std::max<std::size_t>(last, 1) - 1, 0).row;
  table.records = block.records();
  table.columns = columns_told(mapped);
  table.times = times_beside_dates(mapped);
  for (const PassedRow& passed : block.passed) {
    const Place place = block.grid.place(passed.row, 0);
    table.passed.push_back({turned ? place.column + 1 : place.row, passed.use, passed.text});
  }
  return table;
}

std::vector<std::string> supposed_units(const std::vector<Mapped>& tables) {
  std::vector<std::pair<std::string, std::vector<std::string>>> said; // what, and on which sheets
  for (const Mapped& table : tables) {
    std::string what = supposed_in(table.map);
    if (what.empty())
      continue;
    auto same = std::find_if(said.begin(), said.end(), [&](const auto& each) { return each.first == what; });
    if (same == said.end())
      same = said.emplace(said.end(), std::move(what), std::vector<std::string>());
    if (const std::string& sheet = table.block.grid.table().sheet();
        same->second.empty() || same->second.back() != sheet)
      same->second.push_back(sheet);
  }
  std::vector<std::string> sentences;
  sentences.reserve(said.size());
  for (const auto& [what, sheets] : said)
    sentences.push_back(fmt::format("{}{}: {}", sheets.front(),
                                    sheets.size() > 1 ? fmt::format(" and {} more", sheets.size() - 1) : "",
                                    what));
  return sentences;
}

} // namespace wetspell
