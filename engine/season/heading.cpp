#include "season/heading.hpp"

#include "season/words.hpp"

#include <unordered_map>
#include <vector>

namespace wetspell {

namespace {

constexpr std::string_view blanks = " \t\r\n";
constexpr std::size_t longest_heading = 120; // longer texts are notes

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos)
    return {};
  return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

using HeadingMap = std::unordered_map<std::string, std::vector<HeadingMatch>, TextHash, std::equal_to<>>;

HeadingMap all_headings() {
  HeadingMap map;
  std::string buffer;
  const auto add = [&](const FieldSpec& s, std::string_view heading, bool exact) {
    auto& matches = map[std::string(plain_word(heading, buffer))];
    for (const HeadingMatch& m : matches)
      if (m.table == s.table)
        return; // the table's own headings come first
    matches.push_back({s.table, s.field, exact});
  };
  for (const FieldSpec& s : fields())
    add(s, s.heading, true);
  for (const FieldSpec& s : fields()) {
    add(s, s.name, false);
    for_each_part(s.also, [&](std::string_view other) { add(s, other, false); });
  }
  map.erase(std::string{}); // a heading of signs only says nothing
  return map;
}

std::span<const HeadingMatch> look_up(std::string_view text) {
  static const HeadingMap map = all_headings();
  static thread_local std::string buffer;
  const auto found = map.find(plain_word(text, buffer));
  if (found == map.end())
    return {};
  return found->second;
}

/// Cuts a remark in brackets off the end and gives it back; nothing when there is none.
std::string_view cut_bracket(std::string_view& text) {
  if (text.empty() || (text.back() != ')' && text.back() != ']'))
    return {};
  const std::size_t open = text.rfind(text.back() == ')' ? '(' : '[');
  if (open == std::string_view::npos)
    return {};
  const std::string_view inside = trimmed(text.substr(open + 1, text.size() - open - 2));
  text = trimmed(text.substr(0, open));
  return inside;
}

/// Whether the text ends with a unit behind `sign`; cuts both off.
Unit cut_unit_after(std::string_view& text, std::string_view sign) {
  const std::size_t at = text.rfind(sign);
  if (at == std::string_view::npos || at == 0)
    return Unit::none;
  const auto unit = unit_named(trimmed(text.substr(at + sign.size())));
  if (!unit)
    return Unit::none;
  text = trimmed(text.substr(0, at));
  return *unit;
}

} // namespace

Heading read_heading(std::string_view text) {
  Heading heading;
  if (text.size() > longest_heading)
    return heading;
  text = trimmed(text);
  for (std::string_view inside = cut_bracket(text); !inside.empty(); inside = cut_bracket(text))
    if (const auto unit = unit_named(inside); unit && heading.unit == Unit::none)
      heading.unit = *unit;
  heading.matches = look_up(text);
  // A unit without brackets: only where the words alone mean nothing.
  for (std::string_view sign : {",", " in ", "\n", " "}) {
    if (!heading.matches.empty())
      break;
    std::string_view rest = text;
    const Unit unit = cut_unit_after(rest, sign);
    if (unit == Unit::none)
      continue;
    heading.matches = look_up(rest);
    if (!heading.matches.empty() && heading.unit == Unit::none)
      heading.unit = unit;
  }
  // "Full, %" reads as "full" at once, because signs do not count; the unit is still worth knowing.
  if (heading.unit == Unit::none)
    heading.unit = cut_unit_after(text, ",");
  return heading;
}

Unit lone_unit(std::string_view text) {
  text = trimmed(text);
  if (text.size() > 2 && (text.front() == '(' || text.front() == '['))
    text = trimmed(text.substr(1, text.size() - 2));
  return text.empty() ? Unit::none : unit_named(text).value_or(Unit::none);
}

} // namespace wetspell
