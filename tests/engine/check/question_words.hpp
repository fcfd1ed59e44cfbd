// What a question to the person who was there must not say.
#pragma once

#include <array>
#include <string>
#include <string_view>

namespace wetspell::test {

/// What is wrong with a question; empty: nothing.
inline std::string wrong_in_question(std::string_view text) {
  if (text.find('?') == std::string_view::npos)
    return "it asks nothing";
  if (text.back() != '?' && text.back() != '.')
    return "it does not end";
  if (!(text.front() >= 'A' && text.front() <= 'Z'))
    return "it does not begin like a sentence";
  // Words for whoever keeps the season sheet.
  constexpr std::array keeper{" row ",      " rows ",     "column",  " cell",    "table of",
                              "start page", "the person", "replace", "Correct ", "Compare "};
  for (const std::string_view word : keeper)
    if (text.find(word) != std::string_view::npos)
      return "it speaks to whoever keeps the sheet: " + std::string(word);
  constexpr std::array orders{"Ask",  "Check", "Look", "Write",  "Choose", "Read", "Find", "Clear",
                              "Give", "Note",  "Move", "Remove", "Swap",   "Tell", "Add",  "Leave"};
  const std::string_view first = text.substr(0, text.find_first_of(" ,"));
  for (const std::string_view word : orders)
    if (first == word)
      return "it begins with an order";
  return {};
}

} // namespace wetspell::test
