#include "audit/day_table.hpp"

#include "audit/dates.hpp"
#include "audit/map_headings.hpp"
#include "audit/name_of_reading.hpp"
#include "season/locate.hpp"

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

constexpr std::size_t rows_looked_at = 60;
constexpr std::size_t longest_day = 40; // bytes of a heading that is a day

bool digit(char c) {
  return c >= '0' && c <= '9';
}

bool holds_figure(std::string_view text) {
  return std::any_of(text.begin(), text.end(), digit);
}

/// Quick: most texts are no days.
bool may_be_day(std::string_view text) {
  return text.size() <= longest_day && holds_figure(text);
}

/// "12.5": a number, though it could be the 12th of May.
bool decimal(std::string_view text) {
  return !text.empty() && digit(text.back()) && std::count(text.begin(), text.end(), '.') == 1 &&
         std::all_of(text.begin(), text.end(), [](char c) { return digit(c) || c == '.'; });
}

/// A day as the heading of a column; its year, or which is the month, may be open.
bool names_day(const Cell& cell) {
  switch (cell.kind()) {
  case CellKind::date:
    return cell.number() >= 1; // less is a time of day
  case CellKind::number:
    return counts_days(cell.number());
  case CellKind::text:
    return may_be_day(cell.text()) && !decimal(cell.text()) &&
           (date_from(cell, {}).readable || could_be_date(cell));
  case CellKind::empty:
  case CellKind::error:
    break;
  }
  return false;
}

/// A day and nothing else, where readings are expected.
bool surely_day(const Cell& cell) {
  return cell.kind() == CellKind::date || (cell.kind() == CellKind::number && counts_days(cell.number())) ||
         (cell.kind() == CellKind::text && may_be_day(cell.text()) && date_from(cell, {}).readable);
}

bool names_something(const Cell& cell) {
  constexpr double most = 1e6; // pools may be numbered
  if (cell.kind() == CellKind::number)
    return cell.number() >= 0 && cell.number() < most && cell.number() == std::floor(cell.number());
  return cell.kind() == CellKind::text && holds_something(cell) && !surely_day(cell);
}

/// "B07", "NW": short, letters with a figure, or a few capitals. A number alone may count anything.
bool is_code(std::string_view text) {
  constexpr std::size_t longest_code = 10, longest_letters = 4;
  const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
  const auto letter = [&](char c) { return capital(c) || (c >= 'a' && c <= 'z'); };
  if (text.size() > longest_code || text.find(' ') != std::string_view::npos)
    return false;
  return holds_figure(text)
             ? std::any_of(text.begin(), text.end(), letter)
             : text.size() <= longest_letters && std::all_of(text.begin(), text.end(), capital);
}

class Looking {
public:
  Looking(HeadingScan& scan, const Grid& grid, std::span<const std::string> about)
      : scan_(scan), grid_(grid), about_(about), last_(std::min(grid.rows(), rows_looked_at)) {}

  std::optional<DayTable> found() {
    if (!find_days() || !find_names() || !readings_below())
      return std::nullopt;
    weigh_names();
    return table_.sure < sure_enough ? std::nullopt : std::optional(table_);
  }

private:
  bool find_days() {
    std::size_t others = 0; // sums, notes behind the days
    for (std::size_t column = 0; column < grid_.columns(); ++column) {
      const Cell& cell = grid_.at(0, column);
      if (names_day(cell))
        table_.days.push_back(column);
      else if (!table_.days.empty())
        others += holds_something(cell);
    }
    return table_.days.size() >= 2 && table_.days.front() > 0 && others <= table_.days.size();
  }

  [[nodiscard]] std::size_t names_in(std::size_t column) const {
    std::size_t names = 0;
    for (std::size_t row = 1; row < last_; ++row)
      names += names_something(grid_.at(row, column));
    return names;
  }

  /// The column that is headed by a word for pools, or else the first that names something.
  bool find_names() {
    std::optional<std::size_t> found;
    bool headed = false;
    for (std::size_t column = 0; column < table_.days.front() && !headed; ++column) {
      if (names_in(column) == 0)
        continue;
      headed = says_pool(text_in(grid_.at(0, column)));
      if (headed || !found)
        found = column;
    }
    table_.names = found.value_or(0);
    return found.has_value();
  }

  /// The headings again, on the next page of a print.
  [[nodiscard]] bool repeats(std::size_t row) const {
    return grid_.at(row, table_.names) == grid_.at(0, table_.names) &&
           grid_.at(row, table_.days.front()) == grid_.at(0, table_.days.front());
  }

  /// What stands where names and days meet is no day itself.
  [[nodiscard]] bool readings_below() const {
    std::size_t filled = 0;
    std::size_t days = 0;
    std::size_t rows = 0;
    for (std::size_t row = 1; row < last_; ++row) {
      if (repeats(row))
        continue;
      rows += names_something(grid_.at(row, table_.names));
      for (const std::size_t column : table_.days) {
        const Cell& cell = grid_.at(row, column);
        filled += holds_something(cell);
        days += surely_day(cell);
      }
    }
    return filled > 0 && days * 5 <= filled && rows + table_.days.size() >= 4;
  }

  [[nodiscard]] bool says_pool(std::string_view text) const {
    const auto pieces = pieces_of(text);
    return std::any_of(pieces.begin(), pieces.end(),
                       [&](const std::string& piece) { return names_pool(scan_.guess(piece)); });
  }

  void weigh_names() {
    const std::string_view corner = text_in(grid_.at(0, table_.names));
    std::size_t names = 0, codes = 0, pools = 0, headings = 0;
    for (std::size_t row = 1; row < last_; ++row) {
      if (!names_something(grid_.at(row, table_.names)) || repeats(row))
        continue;
      const std::string name = to_text(grid_.at(row, table_.names));
      const HeadingGuess& guess = scan_.guess(name);
      if (names_pool(guess) && !holds_figure(name)) // a heading of pools, not one of them
        return;
      ++names;
      if (mentions_pool(name))
        ++pools;
      else if (says_something(guess))
        ++headings;
      else
        codes += is_code(name);
    }
    const bool dates = names_date(scan_.guess(corner));
    // Readings of one pool, a column a visit; "Date" stands in its corner too.
    if ((headings * 2 >= names && headings > pools + codes) || (dates && headings > 0 && !grid_.turned()))
      return;
    const auto take = [&](double sure, std::string_view why) {
      table_.sure = sure;
      table_.why = why;
    };
    if (says_pool(corner))
      return take(0.95, "by its words");
    const bool reading = name_of_reading(corner).has_value();
    if (holds_something(grid_.at(0, table_.names)) && !reading && !dates)
      return; // a word for something else
    const auto any = [&](auto says) { return std::any_of(about_.begin(), about_.end(), says); };
    if (any([](const std::string& text) { return !pool_named_in(text).empty(); }))
      return; // all of it is about one pool
    if (pools * 2 >= names)
      take(0.9, "most of them call themselves pools");
    else if (any(mentions_pool))
      take(0.8, "the title speaks of pools, and readings of several days stand beside these names");
    else if (codes * 2 >= names)
      take(0.7, "codes, with readings of several days beside them");
    else if (reading)
      take(0.65, "names, with readings of several days beside them");
  }

  HeadingScan& scan_;
  const Grid& grid_;
  std::span<const std::string> about_;
  std::size_t last_;
  DayTable table_;
};

} // namespace

bool days_may_lie_across(const Grid& grid, std::size_t row) {
  std::size_t days = 0;
  for (std::size_t column = 1; column < grid.columns() && days < 2; ++column)
    days += names_day(grid.at(row, column));
  return days >= 2;
}

bool days_may_lie_below(const Grid& grid, std::size_t row) {
  std::size_t column = 0;
  while (column < grid.columns() && !(row + 1 < grid.rows() && holds_something(grid.at(row + 1, column))))
    ++column;
  if (column == grid.columns() || names_day(grid.at(row, column)))
    return false;
  const std::size_t last = std::min(grid.rows(), row + 4);
  std::size_t days = 0;
  for (std::size_t below = row + 1; below < last; ++below)
    days += names_day(grid.at(below, column));
  return days >= 2;
}

std::optional<DayTable> day_table(HeadingScan& scan, const Grid& grid, std::span<const std::string> about) {
  return Looking(scan, grid, about).found();
}

} // namespace wetspell
