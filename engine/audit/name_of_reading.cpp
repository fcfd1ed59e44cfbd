#include "audit/name_of_reading.hpp"

#include "audit/dates.hpp"
#include "audit/heading_scan.hpp"
#include "audit/heading_unit.hpp"
#include "audit/map_headings.hpp"
#include "audit/vocabulary.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

// Common practice, no source: what stands in titles beside the name of what was read.
constexpr std::array<std::string_view, 80> says_nothing{
    "survey",    "surveys",  "visit",    "visits",   "reading", "readings", "measurement", "measurements",
    "data",      "record",   "records",  "log",      "results", "table",    "sheet",       "list",
    "summary",   "date",     "dates",    "day",      "days",    "week",     "weeks",       "weekly",
    "month",     "months",   "monthly",  "year",     "years",   "season",   "seasons",     "spring",
    "summer",    "fall",     "autumn",   "winter",   "early",   "late",     "all",         "each",
    "every",     "per",      "by",       "of",       "the",     "at",       "for",         "from",
    "to",        "during",   "pools",    "ponds",    "sites",   "stations", "basins",      "monitoring",
    "january",   "february", "march",    "april",    "may",     "june",     "july",        "august",
    "september", "october",  "november", "december", "jan",     "feb",      "mar",         "apr",
    "jun",       "jul",      "aug",      "sep",      "sept",    "oct",      "nov",         "dec"};

bool letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

/// The letters of a word, small, without the signs around them; empty for figures and signs alone.
std::string bare(std::string_view word) {
  while (!word.empty() && !letter(word.front()))
    word.remove_prefix(1);
  while (!word.empty() && !letter(word.back()))
    word.remove_suffix(1);
  std::string small(word);
  std::transform(small.begin(), small.end(), small.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return small;
}

/// Without years and what else says nothing; words in brackets stay with their brackets.
std::string cleaned(std::string_view text) {
  std::string kept;
  while (!text.empty()) {
    const std::size_t end = text.find_first_of(" _\t\n\r");
    const std::string_view word = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    const std::string small = bare(word);
    const bool figures = word.find_first_of("0123456789") != std::string_view::npos;
    const bool sign = small.empty() && word.find_first_of("([%\"'") == std::string_view::npos;
    if ((sign && (!figures || year_in(word))) ||
        std::find(says_nothing.begin(), says_nothing.end(), small) != says_nothing.end())
      continue;
    kept += kept.empty() ? "" : " ";
    kept += word;
  }
  return kept;
}

/// "Split Rock": words with capitals.
bool is_place(std::string_view piece) {
  while (!piece.empty()) {
    const std::size_t end = piece.find(' ');
    const std::string_view word = piece.substr(0, end);
    piece.remove_prefix(end == std::string_view::npos ? piece.size() : end + 1);
    if (!word.empty() && !(word.front() >= 'A' && word.front() <= 'Z'))
      return false;
  }
  return true;
}

/// Whether words say themselves that water, or a pool, was measured.
bool speaks_of_water(std::string_view text) {
  const auto words = words_of(text);
  return std::any_of(words.begin(), words.end(), [](const std::string& word) {
    const auto meaning = heading_word(word);
    return meaning == Word::water || meaning == Word::pool;
  });
}

/// A reading that can fill a whole table: a quantity, a choice, a class, a count of one animal.
bool names_reading(const HeadingGuess& guess) {
  if (guess.count)
    return true;
  const auto field = reading_meant(guess);
  if (!field)
    return false;
  const FieldSpec& meant = spec(*field);
  return meant.type == FieldType::choice || meant.type == FieldType::depth_class ||
         meant.type == FieldType::fill_class ||
         (meant.type == FieldType::quantity && meant.kind != Kind::date && meant.kind != Kind::time);
}

} // namespace

std::vector<std::string> pieces_of(std::string_view text) {
  std::vector<std::string> pieces;
  std::string piece;
  int brackets = 0;
  const auto close = [&] {
    if (std::string words = cleaned(piece); !words.empty())
      pieces.push_back(std::move(words));
    piece.clear();
  };
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    brackets += c == '(' || c == '[';
    brackets -= brackets > 0 && (c == ')' || c == ']');
    const bool dash = c == '-' && i > 0 && text[i - 1] == ' ' && i + 1 < text.size() && text[i + 1] == ' ';
    const bool long_dash = text.substr(i).starts_with("\u2013") || text.substr(i).starts_with("\u2014");
    if (brackets == 0 &&
        (dash || long_dash || std::string_view(":;,|/\\\n").find(c) != std::string_view::npos)) {
      close();
      i += long_dash ? 2 : 0;
    } else {
      piece += c;
    }
  }
  close();
  return pieces;
}

std::optional<std::string> name_of_reading(std::string_view text) {
  constexpr std::size_t longest_title = 200;
  if (text.size() > longest_title)
    return std::nullopt;
  if (std::string whole = cleaned(text); names_reading(guess_heading(whole)))
    return whole;
  std::string named;
  std::string unit;
  bool place_before = false; // may be what was measured there: "Soil: depth"
  for (const std::string& piece : pieces_of(text)) {
    const HeadingGuess guess = guess_heading(piece);
    if (names_reading(guess)) {
      if (!named.empty())
        return std::nullopt;
      named = piece;
    } else if (unit_meant(piece) != Unit::none) {
      unit = fmt::format(" ({})", piece);
    } else if (!names_pool(guess) && !names_date(guess) && !mentions_pool(piece)) {
      if (!is_place(piece))
        return std::nullopt;
      place_before = place_before || named.empty();
    }
  }
  if (named.empty() || (place_before && !speaks_of_water(named)))
    return std::nullopt;
  return named + unit;
}

bool mentions_pool(std::string_view text) {
  const auto words = words_of(text);
  return std::any_of(words.begin(), words.end(), [](const std::string& word) {
    const bool plural = word.size() > 3 && word.back() == 's';
    return heading_word(word) == Word::pool ||
           (plural && heading_word(std::string_view(word).substr(0, word.size() - 1)) == Word::pool);
  });
}

std::optional<Field> reading_meant(const HeadingGuess& guess) {
  for (const WordMatch& match : guess.matches)
    if (match.table == TableKind::visits && match.score >= sure_enough &&
        spec(match.field).role == Role::typed && !spec(match.field).required)
      return match.field;
  return std::nullopt;
}

} // namespace wetspell
