// Sheets for tests, written as text: one row a line, cells parted by "|".
#pragma once

#include "season/season.hpp"

#include <charconv>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::testing {

/// Plain numbers become number cells, "'" in front keeps a text, everything else is text; outer blanks are
/// cut.
inline Cell cell_from(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  if (first == std::string_view::npos)
    return {};
  text = text.substr(first, text.find_last_not_of(' ') - first + 1);
  if (text.front() == '\'')
    return Cell::of_text(std::string(text.substr(1)));
  double number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error == std::errc{} && end == text.data() + text.size())
    return Cell::of_number(number);
  return Cell::of_text(std::string(text));
}

inline std::vector<std::string_view> parts(std::string_view text, char at) {
  std::vector<std::string_view> found;
  for (std::size_t next = 0; next != std::string_view::npos;) {
    next = text.find(at);
    found.push_back(text.substr(0, next));
    text.remove_prefix(next == std::string_view::npos ? text.size() : next + 1);
  }
  return found;
}

/// A sheet whose first cell stands at A1. A leading line break is passed over.
inline Table sheet(std::string name, std::string_view text) {
  if (text.starts_with('\n'))
    text.remove_prefix(1);
  const auto lines = parts(text, '\n');
  std::size_t columns = 0;
  for (std::string_view line : lines)
    columns = std::max(columns, parts(line, '|').size());
  Table table({std::move(name), 1, 0}, lines.size(), columns);
  for (std::size_t row = 0; row < lines.size(); ++row) {
    const auto cells = parts(lines[row], '|');
    for (std::size_t column = 0; column < cells.size(); ++column)
      table.at(row, column) = cell_from(cells[column]);
  }
  return table;
}

template <class... Sheets> Result<Season> season_of(Sheets... sheets) {
  std::vector<Table> all;
  (all.push_back(std::move(sheets)), ...);
  return read_season(std::move(all), 46280); // 2026-09-15
}

inline constexpr const char* two_pools = R"(
Pool code | Pool name
B07 | Split Rock
B08 | Long Hollow)";

inline constexpr const char* two_people = R"(
Person code | Name | Counts in | Taped course | Run 1 | Run 2
RW | R. Wren | paces | 100 | 20 | 20
TH | T. Heron | steps | 30 m | 40 | 40)";

} // namespace wetspell::testing
