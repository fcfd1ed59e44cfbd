#include "audit/row_uses.hpp"

#include "season/locate.hpp"

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

constexpr std::array<std::string_view, 19> sum_words{
    "sum", "sums", "total", "totals",  "subtotal", "subtotals", "mean",  "means", "average", "averages",
    "avg", "min",  "max",   "minimum", "maximum",  "median",    "stdev", "sd",    "count"};

bool says_sum(std::string_view text) {
  constexpr std::string_view beginnings = "sStTgGmMaAcCnN";
  if (text.empty() || beginnings.find(text.front()) == std::string_view::npos)
    return false;
  const auto words = words_of(text);
  const auto sums = [](const std::string& word) {
    return std::find(sum_words.begin(), sum_words.end(), word) != sum_words.end();
  };
  // "n visits", but not the pool "N Meadow"; "Grand total", but not the pool "Grand Meadow".
  return !words.empty() && words.size() <= 5 &&
         (sums(words.front()) || words == std::vector<std::string>{"n", "visits"} ||
          (words.size() > 1 && words.front() == "grand" && sums(words[1])));
}

} // namespace

KeyColumns key_columns(const std::vector<BlockHeading>& headings, HeadingScan& scan) {
  KeyColumns keys{headings.size(), headings.size()};
  for (std::size_t column = headings.size(); column-- > 0;) {
    if (names_pool(scan.guess(headings[column].alone)))
      keys.pool = column;
    if (names_date(scan.guess(headings[column].alone)))
      keys.date = column;
  }
  return keys;
}

bool RowUses::repeats_headings(std::size_t row) const {
  std::size_t same = 0;
  std::size_t filled = 0;
  for (std::size_t column = 0; column < headings_.size(); ++column) {
    const Cell& cell = grid_.at(row, column);
    filled += !cell.empty();
    same += (cell.kind() == CellKind::text && cell.text() == headings_[column].alone) ||
            (cell.kind() == CellKind::date && to_text(cell) == headings_[column].alone);
  }
  return same >= 2 && same * 2 >= filled;
}

bool RowUses::sums(std::size_t row) const {
  const bool dated = keys_.date < grid_.columns();
  if (dated && holds_something(grid_.at(row, keys_.date)) && !says_sum(text_in(grid_.at(row, keys_.date))))
    return false;
  std::size_t filled = 0;
  for (std::size_t column = 0; column < grid_.columns() && filled < 3; ++column) {
    const Cell& cell = grid_.at(row, column);
    filled += !cell.empty();
    if (cell.kind() == CellKind::text && says_sum(cell.text()))
      return dated || filled == 1;
  }
  return false;
}

bool RowUses::lone_text(std::size_t row, std::size_t column) const {
  const Cell& cell = grid_.at(row, column);
  if (cell.kind() != CellKind::text || grid_.columns() < 3)
    return false;
  // A code alone is a record that somebody began.
  return column != keys_.pool || cell.text().find_first_of(": ") != std::string::npos;
}

/// "Date:" and what it is in the next cell.
bool RowUses::label(std::size_t row, std::size_t column) const {
  return column + 1 < grid_.columns() && text_in(grid_.at(row, column)).ends_with(':') &&
         holds_something(grid_.at(row, column + 1)) && grid_.columns() >= 3;
}

std::optional<RowUse> RowUses::use(std::size_t row) const {
  std::size_t filled = 0;
  std::size_t first = grid_.columns();
  std::size_t last = 0;
  for (std::size_t column = 0; column < grid_.columns(); ++column)
    if (holds_something(grid_.at(row, column))) {
      ++filled;
      first = std::min(first, column);
      last = column;
    }
  if (filled == 0)
    return RowUse::blank;
  if ((filled == 1 && lone_text(row, last)) || (filled == 2 && label(row, first)))
    return RowUse::section;
  if (repeats_headings(row))
    return RowUse::heading;
  if (sums(row))
    return RowUse::sums;
  return std::nullopt;
}

std::string RowUses::words(std::size_t row) const {
  for (std::size_t column = 0; column < grid_.columns(); ++column)
    if (holds_something(grid_.at(row, column))) {
      std::string words = to_text(grid_.at(row, column));
      return label(row, column) ? words + " " + to_text(grid_.at(row, column + 1)) : words;
    }
  return {};
}

} // namespace wetspell
