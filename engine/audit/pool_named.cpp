// Pools that are named outside the columns: in titles, in lines between the rows.
#include "audit/map_headings.hpp"
#include "audit/vocabulary.hpp"

#include <algorithm>

namespace wetspell {

namespace {

bool letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

/// "Pools 2019 - Ashby" are those of a year.
bool may_be_year(std::string_view code) {
  return code.size() == 4 && (code.starts_with("19") || code.starts_with("20"));
}

/// Words behind a comma, a dash or in brackets: "- Larch Hole", ", season 2020". Not more pools ("- 14").
bool are_more_words(std::string_view behind) {
  for (const std::string_view mark : {", ", " - ", " \u2013 ", " \u2014 ", " ("})
    if (behind.starts_with(mark) && behind.size() > mark.size() && letter(behind[mark.size()])) {
      const auto words = words_of(behind);
      return std::none_of(words.begin(), words.end(), [](const std::string& word) {
        return heading_word(word) == Word::pool || word == "and" || word == "to";
      });
    }
  return false;
}

/// "Otter Pool", "Twin Pond (E)": a few words with capitals, the last of which is one for pools.
bool is_name_of_pool(std::string_view text) {
  constexpr std::size_t longest = 40; // bytes
  const std::string_view name = text.substr(0, text.find(" ("));
  if (text.size() > longest || (name.size() != text.size() && !text.ends_with(')')))
    return false;
  std::size_t words = 0;
  bool pool = false;
  for (std::string_view rest = name; !rest.empty();) {
    const std::string_view word = rest.substr(0, rest.find(' '));
    rest.remove_prefix(std::min(rest.size(), word.size() + 1));
    if (word.empty())
      continue;
    if (!(word.front() >= 'A' && word.front() <= 'Z'))
      return false;
    const auto plain = words_of(word);
    pool = plain.size() == 1 && heading_word(plain.front()) == Word::pool;
    ++words;
  }
  return pool && words >= 2 && words <= 4;
}

} // namespace

std::string pool_of_line(std::string_view text) {
  std::string named = pool_named_in(text);
  if (named.empty() && is_name_of_pool(text))
    named = std::string(text);
  return named;
}

std::string pool_named_in(std::string_view text) {
  constexpr std::size_t longest = 60;
  const std::size_t word_end = text.find_first_of(" :");
  if (text.size() > longest || word_end == std::string_view::npos)
    return {};
  const auto first = words_of(text.substr(0, word_end));
  if (first.size() != 1 || heading_word(first.front()) != Word::pool)
    return {};
  const auto trimmed = [](std::string_view part) {
    while (!part.empty() && (part.front() == ' ' || part.front() == ':'))
      part.remove_prefix(1);
    while (!part.empty() && part.back() == ' ')
      part.remove_suffix(1);
    return part;
  };
  if (const std::size_t colon = text.find(':'); colon != std::string_view::npos)
    return std::string(trimmed(text.substr(colon)));
  // Without a colon only a code: one word with a figure in it, with nothing behind it but words that are
  // parted from it.
  const std::string_view rest = trimmed(text.substr(word_end));
  const std::string_view code = rest.substr(0, rest.find_first_of(" ,"));
  const std::string_view behind = rest.substr(code.size());
  if (code.find_first_of("0123456789") == std::string_view::npos)
    return {};
  return behind.empty() || (!may_be_year(code) && are_more_words(behind)) ? std::string(code) : std::string();
}

} // namespace wetspell
