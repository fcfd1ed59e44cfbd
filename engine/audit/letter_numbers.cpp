#include "audit/letter_numbers.hpp"

namespace wetspell {

namespace {

constexpr std::size_t least_letters = 2;
constexpr std::size_t most_letters = 3; // there are three readings

bool letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}
bool capital(char c) {
  return c >= 'A' && c <= 'Z';
}

/// The letter at a place of a text as its number from 0; nothing inside a word or beyond c.
std::optional<std::size_t> number_at(const std::string& text, std::size_t at) {
  const char first = capital(text[at]) ? 'A' : 'a';
  if (text[at] < first || text[at] >= first + static_cast<char>(most_letters))
    return std::nullopt;
  const bool hump = at > 0 && capital(text[at]) && !capital(text[at - 1]); // "TempA"
  if ((at > 0 && letter(text[at - 1]) && !hump) || (at + 1 < text.size() && letter(text[at + 1])))
    return std::nullopt;
  return static_cast<std::size_t>(text[at] - first);
}

} // namespace

std::optional<std::string> numbered_by_letter(const std::vector<BlockHeading>& headings, std::size_t at) {
  const std::string& text = headings[at].text;
  for (std::size_t place = 0; place < text.size(); ++place) {
    const auto number = number_at(text, place);
    if (!number || *number > at)
      continue;
    std::string with = text;
    std::size_t run = 0;
    for (; run < most_letters && at - *number + run < headings.size(); ++run) {
      with[place] = static_cast<char>((capital(text[place]) ? 'A' : 'a') + static_cast<char>(run));
      if (headings[at - *number + run].text != with)
        break;
    }
    if (run < least_letters || run <= *number)
      continue;
    with[place] = static_cast<char>('1' + static_cast<char>(*number));
    if (place > 0 && place + 1 < with.size() && with[place - 1] == '(' && with[place + 1] == ')')
      with[place - 1] = with[place + 1] = ' '; // words in brackets would count as a remark
    return with;
  }
  return std::nullopt;
}

} // namespace wetspell
