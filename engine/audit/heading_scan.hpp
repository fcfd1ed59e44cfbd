// Which rows of a grid look like headings.
#pragma once

#include "audit/find_tables.hpp"

#include <unordered_map>

namespace wetspell {

/// Remembers what texts say as headings: sheets repeat their words.
class HeadingScan {
public:
  explicit HeadingScan(const Grid& grid) : grid_(grid) {}

  /// Whether the row names columns: mostly words, known ones among them, a key or several others.
  [[nodiscard]] bool names_columns(std::size_t row);
  /// What a text says as a heading.
  const HeadingGuess& guess(std::string_view text);
  [[nodiscard]] const Grid& grid() const { return grid_; }

private:
  Grid grid_;
  std::unordered_map<std::string, HeadingGuess> known_;
};

/// Whether the heading names what rows are known by: a pool, a day, a person, an animal, a kind of reading.
bool names_key(const HeadingGuess& guess);
/// Whether the heading most likely names a day.
bool names_date(const HeadingGuess& guess);
/// Whether the heading most likely names a pool.
bool names_pool(const HeadingGuess& guess);

/// Empty for a cell that holds no text.
std::string_view text_in(const Cell& cell);

} // namespace wetspell
