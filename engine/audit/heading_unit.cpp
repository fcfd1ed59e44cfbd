#include "audit/heading_unit.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

bool parts_words(char c) {
  return c == ' ' || c == '_' || c == '-' || c == ',' || c == '.' || c == '/' || c == '\n' || c == '\t' ||
         c == ':' || c == ';';
}

std::string_view trimmed(std::string_view text) {
  const auto outer = [](char c) { return parts_words(c); };
  while (!text.empty() && outer(text.front()))
    text.remove_prefix(1);
  while (!text.empty() && outer(text.back()) && text.back() != '.')
    text.remove_suffix(1);
  return text;
}

bool small(char c) {
  return c >= 'a' && c <= 'z';
}
bool large(char c) {
  return c >= 'A' && c <= 'Z';
}

/// Whether a word may begin at `at`: behind a sign, at a hump, at a degree sign.
bool may_begin(std::string_view text, std::size_t at) {
  const char before = text[at - 1];
  const bool digit_before = before >= '0' && before <= '9';
  return parts_words(before) || (large(text[at]) && (small(before) || digit_before)) ||
         text.substr(at).starts_with("\u00b0") || text.substr(at).starts_with("\u00ba") || text[at] == '%';
}

/// A unit as the last words.
HeadingUnit unit_behind(std::string_view text) {
  for (std::size_t at = 1; at < text.size(); ++at) {
    if (!may_begin(text, at))
      continue;
    const std::string_view word = text.substr(at);
    if (parts_words(word.front()))
      continue;
    const Unit unit = unit_meant(word);
    const std::string_view rest = trimmed(text.substr(0, at));
    if (unit != Unit::none && !rest.empty())
      return {unit, std::string(word), std::string(rest)};
  }
  return {};
}

} // namespace

Unit unit_meant(std::string_view text) {
  text = trimmed(text);
  while (!text.empty() && text.back() == '.')
    text.remove_suffix(1);
  if (text.empty())
    return Unit::none;
  if (const auto unit = unit_named(text))
    return *unit;
  const std::string_view near = unit_word_near(text);
  return near.empty() ? Unit::none : unit_named(near).value_or(Unit::none);
}

HeadingUnit unit_in_heading(std::string_view text) {
  for (std::size_t open = text.find_first_of("(["); open != std::string_view::npos;
       open = text.find_first_of("([", open + 1)) {
    const std::size_t close = text.find_first_of(")]", open);
    std::string_view inside =
        text.substr(open + 1, close == std::string_view::npos ? close : close - open - 1);
    if (const std::size_t in = inside.rfind("in "); in == 0 && inside.size() > 3)
      inside.remove_prefix(3); // "(in feet)"
    const Unit unit = unit_meant(inside);
    if (unit == Unit::none)
      continue;
    std::string rest(text.substr(0, open));
    if (close != std::string_view::npos)
      rest += text.substr(close + 1);
    return {unit, std::string(inside), std::move(rest)};
  }
  if (HeadingUnit behind = unit_behind(text); behind.unit != Unit::none)
    return behind;
  // "Temp_F_1": the figure behind the unit belongs to the words.
  const std::size_t last = text.find_last_not_of("0123456789");
  if (last != std::string_view::npos && last + 1 < text.size() && parts_words(text[last])) {
    HeadingUnit behind = unit_behind(trimmed(text.substr(0, last)));
    if (behind.unit != Unit::none) {
      behind.rest += fmt::format(" {}", text.substr(last + 1));
      return behind;
    }
  }
  return {Unit::none, {}, std::string(text)};
}

} // namespace wetspell
