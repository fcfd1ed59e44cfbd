#include "audit/beginnings.hpp"

#include "audit/day_table.hpp"
#include "audit/map_headings.hpp"
#include "season/locate.hpp"

#include <algorithm>
#include <optional>

namespace wetspell {

namespace {

constexpr std::size_t most_tables = 500; // below one another; what follows is part of the last one

std::size_t filled_cells(const Grid& grid, std::size_t row, std::size_t enough) {
  std::size_t filled = 0;
  for (std::size_t column = 0; column < grid.columns() && filled < enough; ++column)
    filled += holds_something(grid.at(row, column));
  return filled;
}

/// The lines of words alone that stand above a row, and the sheet's name.
std::vector<std::string> said_above(const Grid& grid, std::size_t row) {
  std::vector<std::string> said{grid.table().sheet()};
  for (std::size_t above = row; above > 0 && row - above < titles_above; --above) {
    if (filled_cells(grid, above - 1, 2) > 1)
      break;
    for (std::size_t column = 0; column < grid.columns(); ++column)
      if (const std::string_view text = text_in(grid.at(above - 1, column)); !text.empty())
        said.emplace_back(text);
  }
  return said;
}

/// Whether such a table stands in the rows from `row` up to `end`.
bool days_stand(HeadingScan& scan, std::size_t row, std::size_t end, bool across) {
  const Grid& grid = scan.grid();
  const auto runs = filled_columns(grid, row, end);
  if (runs.empty())
    return false;
  const Grid part = grid.part({row, end}, {runs.front().first, runs.back().end});
  return day_table(scan, across ? part : part.turned_over(), said_above(grid, row)).has_value();
}

/// Days along one side and pools along the other. The rows down to the first gap are enough, unless a gap
/// stands between all of them.
std::optional<Begins> days_begin(HeadingScan& scan, std::size_t row) {
  constexpr std::size_t looked_at = 400;
  const Grid& grid = scan.grid();
  const bool across = days_may_lie_across(grid, row);
  if (!across && !days_may_lie_below(grid, row))
    return std::nullopt;
  const std::size_t last = std::min(grid.rows(), row + looked_at);
  std::size_t gap = std::min(last, row + 2);
  while (gap < last && filled_cells(grid, gap, 2) > 1)
    ++gap;
  if (!days_stand(scan, row, gap, across) && (gap == last || !days_stand(scan, row, last, across)))
    return std::nullopt;
  return across ? Begins::days_across : Begins::days_down;
}

/// A line of nothing but pools by their label, each over a table of its own: "Pool: B07 | | Pool: B08".
bool names_pools_alone(const Grid& grid, std::size_t row) {
  for (std::size_t column = 0; column < grid.columns(); ++column)
    if (const Cell& cell = grid.at(row, column); holds_something(cell)) {
      const std::string_view text = text_in(cell);
      if (text.find(':') == std::string_view::npos || pool_named_in(text).empty())
        return false;
    }
  return true;
}

bool same_cells(const Grid& grid, std::size_t row, std::size_t other) {
  for (std::size_t column = 0; column < grid.columns(); ++column)
    if (grid.at(row, column) != grid.at(other, column))
      return false;
  return true;
}

} // namespace

std::vector<Beginning> beginnings(HeadingScan& scan) {
  const Grid& grid = scan.grid();
  std::vector<Beginning> found;
  bool gap = true; // nothing, or a line of words alone, stands right above
  for (std::size_t row = 0; row < grid.rows(); ++row) {
    if (row >= searched_closely && found.empty())
      break;
    if (filled_cells(grid, row, 2) < 2 || names_pools_alone(grid, row)) {
      gap = true;
      continue;
    }
    if ((found.empty() || gap) && found.size() < most_tables) {
      if (const auto days = days_begin(scan, row))
        found.push_back({row, *days});
      else if (scan.names_columns(row))
        found.push_back({row, Begins::headings});
      if (found.size() > 1 && found.back().row == row && same_cells(grid, row, found[found.size() - 2].row))
        found.pop_back();
    }
    gap = false;
  }
  return found;
}

std::vector<Span> filled_columns(const Grid& grid, std::size_t row, std::size_t end) {
  const std::size_t last = std::min(end, row + searched_closely);
  std::vector<Span> runs;
  for (std::size_t column = 0; column < grid.columns(); ++column) {
    std::size_t at = row;
    while (at < last && !holds_something(grid.at(at, column)))
      ++at;
    if (at == last)
      continue;
    if (runs.empty() || runs.back().end != column)
      runs.push_back({column, column});
    runs.back().end = column + 1;
  }
  return runs;
}

} // namespace wetspell
