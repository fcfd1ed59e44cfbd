#include "fuzz/fuzz.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <vector>

namespace wetspell::fuzz {

namespace {

std::optional<double> number_in(std::string_view text) {
  double value = 0;
  const auto [end, wrong] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || wrong != std::errc() || end != text.data() + text.size())
    return std::nullopt;
  return value;
}

Cell cell_of(std::string_view text) {
  if (text.starts_with('#'))
    return Cell::of_error(std::string(text));
  if (text.starts_with('@'))
    if (const auto serial = number_in(text.substr(1)))
      return Cell::of_date(*serial);
  if (const auto number = number_in(text))
    return Cell::of_number(*number);
  return Cell::of_text(std::string(text));
}

std::vector<std::string_view> parts_of(std::string_view text, char between) {
  std::vector<std::string_view> parts;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find(between, from), text.size());
    parts.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return parts;
}

} // namespace

Table sheet_of(std::string_view bytes) {
  constexpr std::size_t most_columns = 64;
  const auto lines = parts_of(bytes, '\n');
  std::size_t columns = 0;
  for (const std::string_view line : lines)
    columns = std::max(columns, static_cast<std::size_t>(std::count(line.begin(), line.end(), '\t')) + 1);
  columns = std::min(columns, most_columns);
  Table sheet(Place{"Sheet", 1, 0}, lines.size(), columns);
  for (std::size_t row = 0; row < lines.size(); ++row) {
    const auto cells = parts_of(lines[row], '\t');
    for (std::size_t column = 0; column < std::min(columns, cells.size()); ++column)
      sheet.at(row, column) = cell_of(cells[column]);
  }
  return sheet;
}

} // namespace wetspell::fuzz
