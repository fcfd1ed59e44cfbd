// Pools that are named outside the columns: in titles, in lines between the rows.
#include "audit/map_headings.hpp"
#include "audit/vocabulary.hpp"

namespace wetspell {

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
  // Without a colon only a code: one word with a figure in it.
  const std::string_view rest = trimmed(text.substr(word_end));
  const bool one_word = !rest.empty() && rest.find(' ') == std::string_view::npos;
  return one_word && rest.find_first_of("0123456789") != std::string_view::npos ? std::string(rest)
                                                                                : std::string();
}

} // namespace wetspell
