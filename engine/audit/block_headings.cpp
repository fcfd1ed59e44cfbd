#include "audit/block_headings.hpp"

#include "audit/heading_unit.hpp"
#include "audit/place_temperatures.hpp"
#include "quantity/read.hpp"
#include "season/locate.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace wetspell {

namespace {

std::vector<std::string> lines_of(const Grid& grid, std::size_t row, Span columns) {
  std::vector<std::string> lines;
  for (std::size_t column = columns.first; column < columns.end; ++column)
    lines.push_back(line_of(grid.at(row, column)));
  return lines;
}

/// Words over several columns reach to the right as long as nothing else stands beside them.
std::vector<std::string> spread(const std::vector<std::string>& upper,
                                const std::vector<std::string>& lower) {
  std::vector<std::string> groups = upper;
  for (std::size_t i = 1; i < groups.size(); ++i)
    if (groups[i].empty() && !lower[i].empty())
      groups[i] = groups[i - 1];
  return groups;
}

std::string joined(const std::string& group, const std::string& line) {
  if (group.empty() || group == line)
    return line;
  return line.empty() ? group : group + ": " + line;
}

/// How surely a heading names a field or an animal.
double sureness(const HeadingGuess& guess) {
  constexpr double of_animal = 0.85;
  return guess.count ? std::max(of_animal, guess.best()) : guess.best();
}

/// Two rows of headings as one, when together they say more than apart.
std::optional<std::vector<BlockHeading>> combined(HeadingScan& scan, const std::vector<std::string>& upper,
                                                  const std::vector<std::string>& lower) {
  const auto first = std::find_if(upper.begin(), upper.end(), [](const auto& text) { return !text.empty(); });
  const auto filled =
      std::count_if(upper.begin(), upper.end(), [](const auto& text) { return !text.empty(); });
  if (filled == 0 || (filled == 1 && first == upper.begin())) // a title
    return std::nullopt;
  const auto groups = spread(upper, lower);
  std::vector<BlockHeading> headings;
  bool gained = false;
  for (std::size_t i = 0; i < upper.size(); ++i) {
    BlockHeading heading{joined(groups[i], lower[i]), lower[i].empty() ? upper[i] : lower[i]};
    const double together = sureness(scan.guess(heading.text));
    const double below = lower[i].empty() ? 0 : sureness(scan.guess(lower[i]));
    gained = gained || (together >= known_heading && together > below + 0.02);
    // The words above reach no further; a place below a temperature may look like a word of its own.
    if (together < below && !place_of_temperature(groups[i], lower[i]))
      heading.text = heading.alone;
    headings.push_back(std::move(heading));
  }
  return gained ? std::optional(headings) : std::nullopt;
}

/// Whether the row below is the one that names the columns, and this one stands over groups of them: "Where |
/// | When" over "Town | Pool | Date".
bool names_more(HeadingScan& scan, const std::vector<std::string>& upper,
                const std::vector<std::string>& lower) {
  constexpr double surely_known = 0.93;
  constexpr std::size_t enough = 4;
  const auto filled = [](const std::vector<std::string>& lines) {
    return std::count_if(lines.begin(), lines.end(), [](const auto& line) { return !line.empty(); });
  };
  std::set<std::string_view> known;
  bool key = false;
  for (const std::string& line : lower)
    if (const HeadingGuess& said = scan.guess(line); said.best() >= surely_known) {
      known.insert(line);
      key = key || names_pool(said) || names_date(said);
    }
  return key && known.size() >= enough && filled(upper) < filled(lower) &&
         static_cast<std::ptrdiff_t>(known.size()) * 2 >= filled(lower);
}

/// Whether a row below the headings could divide them: words and small whole numbers, nothing under keys
/// unless they are but groups.
bool may_divide(HeadingScan& scan, const std::vector<std::string>& upper, std::size_t row, Span columns) {
  const Grid& grid = scan.grid();
  const bool grouped = names_more(scan, upper, lines_of(grid, row, columns));
  std::size_t filled = 0;
  for (std::size_t column = columns.first; column < columns.end; ++column) {
    const Cell& cell = grid.at(row, column);
    if (!holds_something(cell))
      continue;
    ++filled;
    const std::string& over = upper[column - columns.first];
    if (!grouped && !over.empty() && names_key(scan.guess(over)))
      return false;
    const bool ordinal = cell.kind() == CellKind::number && cell.number() >= 1 && cell.number() <= 4 &&
                         cell.number() == static_cast<int>(cell.number());
    if (cell.kind() != CellKind::text && !ordinal)
      return false;
  }
  return filled >= 2;
}

bool says_format(std::string_view text) {
  constexpr std::array<std::string_view, 14> hints{"code", "text",  "words", "no", "number", "whole", "y",
                                                   "yes",  "count", "yyyy",  "dd", "hh",     "id",    "date"};
  const auto words = words_of(text);
  return words.empty() || std::find(hints.begin(), hints.end(), words.front()) != hints.end();
}

/// Reads a row of units into the headings.
bool read_units(const Grid& grid, std::size_t row, Span columns, std::vector<BlockHeading>& headings) {
  std::vector<Unit> units(headings.size(), Unit::none);
  std::size_t said = 0;
  std::size_t others = 0;
  for (std::size_t i = 0; i < headings.size(); ++i) {
    const Cell& cell = grid.at(row, columns.first + i);
    if (!holds_something(cell))
      continue;
    if (cell.kind() != CellKind::text || cell.text().size() > 40)
      return false;
    std::string_view text = cell.text();
    if (text.size() > 2 && (text.front() == '(' || text.front() == '['))
      text = text.substr(1, text.size() - 2);
    units[i] = unit_meant(text);
    said += units[i] != Unit::none;
    others += units[i] == Unit::none && !says_format(cell.text());
    if (read(cell.text(), {.kind = Kind::date}).has_value())
      return false;
  }
  if (said == 0 || others > said / 2)
    return false;
  for (std::size_t i = 0; i < headings.size(); ++i)
    headings[i].unit = units[i];
  return true;
}

} // namespace

std::string line_of(const Cell& cell) {
  std::string text = to_text(cell);
  std::replace(text.begin(), text.end(), '\n', ' ');
  std::replace(text.begin(), text.end(), '\r', ' ');
  const std::size_t first = text.find_first_not_of(' ');
  return first == std::string::npos ? std::string()
                                    : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

HeadingLines headings_of(HeadingScan& scan, std::size_t row, std::size_t end, std::size_t above,
                         Span columns) {
  const Grid& grid = scan.grid();
  const auto own = lines_of(grid, row, columns);
  HeadingLines lines{row, row + 1, {}};
  for (const std::string& line : own)
    lines.headings.push_back({line, line});
  if (row > above)
    if (auto two = combined(scan, lines_of(grid, row - 1, columns), own)) {
      lines.headings = std::move(*two);
      lines.first = row - 1;
    }
  const bool units = row + 1 < end && read_units(grid, row + 1, columns, lines.headings);
  if (units) {
    ++lines.first_data;
  } else if (lines.first == row && row + 1 < end && may_divide(scan, own, row + 1, columns)) {
    if (auto two = combined(scan, own, lines_of(grid, row + 1, columns))) {
      lines.headings = std::move(*two);
      ++lines.first_data;
      if (row + 2 < end && read_units(grid, row + 2, columns, lines.headings))
        ++lines.first_data;
    }
  }
  return lines;
}

} // namespace wetspell
