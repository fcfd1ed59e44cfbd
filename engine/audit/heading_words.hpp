// What the words of a heading say: abbreviated, misspelt, run together, with a unit somewhere.
#pragma once

#include "season/field.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// What a column may hold besides a field: a piece of a date, or a piece of a row that is one reading.
enum class Part : std::uint8_t { none, year, month, day, parameter, value, unit_name };

/// A field that the words may mean, and how surely the words alone say so (0 to 1).
struct WordMatch {
  TableKind table{};
  Field field{};
  double score = 0;
  std::string_view how; ///< "our own heading", "its words", "its words, one of them misspelt"
};

/// A count of one kind of animal in a column of its own: "Wood frog egg masses".
struct CountColumn {
  std::string species; ///< as the table of species calls it
  std::string seen_as; ///< the word for the form
};

struct HeadingGuess {
  std::vector<WordMatch> matches; ///< best first; at most one a field
  Part part = Part::none;
  std::optional<CountColumn> count;
  Unit unit = Unit::none; ///< what the heading says; none: nothing
  std::string unit_text;  ///< the words read as the unit
  [[nodiscard]] double best() const { return matches.empty() ? 0 : matches.front().score; }
};

/// From this score on the words alone name a field.
inline constexpr double known_heading = 0.6;

HeadingGuess guess_heading(std::string_view text);

/// Whether the heading says something that this project knows. Short, for looking at many cells.
bool says_something(const HeadingGuess& guess);

/// The words of a text in small letters: parted at blanks, signs, case ("PoolID") and digits ("T1").
std::vector<std::string> words_of(std::string_view text);

} // namespace wetspell
