#include "gather/choose.hpp"

#include "quantity/read.hpp"

#include <algorithm>
#include <charconv>

namespace wetspell {

namespace {

constexpr std::array all_states{LineState::open, LineState::again, LineState::kept, LineState::taken,
                                LineState::no_longer};
constexpr std::array<std::string_view, 4> kinds{"text", "number", "date", "error"};

std::string_view kind_of(const Cell& cell) {
  switch (cell.kind()) {
  case CellKind::number:
    return kinds[1];
  case CellKind::date:
    return kinds[2];
  case CellKind::error:
    return kinds[3];
  case CellKind::text:
  case CellKind::empty:
    break;
  }
  return kinds[0];
}

/// The cell whose to_text() is the text.
Cell cell_of(const std::string& text, std::string_view kind) {
  double number = 0;
  if (kind == kinds[1] && std::from_chars(text.data(), text.data() + text.size(), number).ec == std::errc())
    return Cell::of_number(number);
  if (kind == kinds[2])
    for (const Kind each : {Kind::date, Kind::time})
      if (const Quantity q = read(text, {.kind = each}); q.has_value())
        return Cell::of_date(q.si);
  return kind == kinds[3] ? Cell::of_error(text) : Cell::of_text(text);
}

} // namespace

std::string_view words(LineState state) {
  switch (state) {
  case LineState::open:
    break;
  case LineState::again:
    return "the season has changed: choose again";
  case LineState::kept:
    return "kept";
  case LineState::taken:
    return "taken";
  case LineState::no_longer:
    return "no longer apart";
  }
  return "to choose";
}

Table choose_table(std::span<const ChooseLine> lines) {
  Table table(Place{}, lines.size() + 1, choose_headings.size());
  for (std::size_t column = 0; column < choose_headings.size(); ++column)
    table.at(0, column) = Cell::of_text(std::string(choose_headings[column]));
  for (std::size_t row = 1; row <= lines.size(); ++row) {
    const ChooseLine& line = lines[row - 1];
    std::size_t column = 0;
    for (const std::string& text :
         {line.visit, line.column, line.season, to_text(line.came), line.file, line.where, line.choice,
          std::string(words(line.state)), line.mark, std::string(kind_of(line.came))})
      table.at(row, column++) = Cell::of_text(text);
  }
  return table;
}

std::vector<ChooseLine> choose_lines(const Table& table) {
  std::vector<ChooseLine> lines;
  if (table.columns() < choose_headings.size())
    return lines;
  for (std::size_t row = 1; row < table.rows(); ++row) {
    const auto text = [&](std::size_t column) { return to_text(table.at(row, column)); };
    if (text(8).empty())
      continue;
    const auto* state =
        std::find_if(all_states.begin(), all_states.end(), [&](LineState s) { return words(s) == text(7); });
    lines.push_back({text(0), text(1), text(2), cell_of(text(3), text(9)), text(4), text(5), text(6),
                     state == all_states.end() ? LineState::open : *state, text(8)});
  }
  return lines;
}

} // namespace wetspell
