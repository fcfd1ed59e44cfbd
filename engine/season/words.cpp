#include "season/words.hpp"

#include <array>

namespace wetspell {

namespace {

bool blank(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool letter_or_digit(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
         static_cast<unsigned char>(c) >= 0x80;
}

/// Bytes of a typographic blank or dash at the start of the text; 0 for anything else.
std::size_t unicode_filler(std::string_view text) {
  if (text.starts_with("\u00a0") || text.starts_with("\u00ad")) // no-break space, soft hyphen
    return 2;
  constexpr std::array<std::string_view, 7> fillers{"\u2010", "\u2011", "\u2013", "\u2014",
                                                    "\u2009", "\u202f", "\u2019"};
  for (std::string_view filler : fillers)
    if (text.starts_with(filler))
      return filler.size();
  return 0;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && blank(text.front()))
    text.remove_prefix(1);
  while (!text.empty() && blank(text.back()))
    text.remove_suffix(1);
  return text;
}

// In the form of plain_word.
constexpr std::array<std::string_view, 22> not_known_words{
    "notknown",      "unknown",  "cannottell",  "canttell",     "cannotsay",
    "cantsay",       "notsure",  "unsure",      "na",           "nk",
    "notrecorded",   "nodata",   "notseen",     "unclear",      "dontknow",
    "notapplicable", "notnoted", "notassessed", "undetermined", "notmeasured",
    "notchecked",    "notjudged"};

} // namespace

std::string_view plain_word(std::string_view text, std::string& buffer) {
  buffer.clear();
  for (std::size_t i = 0; i < text.size();) {
    const char c = text[i];
    if (static_cast<unsigned char>(c) >= 0x80) {
      if (const std::size_t skip = unicode_filler(text.substr(i))) {
        i += skip;
        continue;
      }
    }
    if (letter_or_digit(c))
      buffer += lower(c);
    ++i;
  }
  return buffer;
}

std::string_view plain_code(std::string_view text, std::string& buffer) {
  buffer.clear();
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool no_break = text.substr(i).starts_with("\u00a0");
    if (no_break)
      ++i; // its second byte
    if (!no_break && !blank(text[i]))
      buffer += lower(text[i]);
    else if (!buffer.empty() && buffer.back() != ' ')
      buffer += ' ';
  }
  if (!buffer.empty() && buffer.back() == ' ')
    buffer.pop_back();
  return buffer;
}

bool says_not_known(std::string_view text) {
  std::string buffer;
  const std::string_view word = plain_word(text, buffer);
  if (word.empty()) {
    // Only signs were typed: question marks and dashes are how people say that they do not know.
    const std::string_view signs = trimmed(text);
    return !signs.empty() &&
           (signs.find_first_not_of('?') == std::string_view::npos ||
            signs.find_first_not_of('-') == std::string_view::npos || signs == "\u2013" || signs == "\u2014");
  }
  for (std::string_view known : not_known_words)
    if (word == known)
      return true;
  return false;
}

ChoiceIndex::ChoiceIndex(const ChoiceList& list) {
  std::int16_t index = 0;
  for (const ChoiceWord& word : list.words) {
    add(word.label, index);
    for_each_part(word.also, [&](std::string_view other) { add(other, index); });
    ++index;
  }
}

void ChoiceIndex::add(std::string_view word, std::int16_t index) {
  words_.emplace(plain_word(word, buffer_), index);
}

Choice ChoiceIndex::find(std::string_view text) {
  const std::string_view word = plain_word(text, buffer_);
  if (!word.empty()) {
    const auto found = words_.find(word);
    if (found != words_.end())
      return {static_cast<std::int16_t>(found->second)};
  } else if (trimmed(text).empty()) {
    return {Choice::blank};
  }
  return {says_not_known(text) ? Choice::not_known : Choice::unreadable};
}

} // namespace wetspell
