// Days that are named outside the columns: in titles, in lines between the rows.
#include "audit/dates.hpp"
#include "audit/heading_scan.hpp"
#include "audit/map_headings.hpp"

namespace wetspell {

namespace {

constexpr std::size_t longest = 60; // bytes of a line that names a day

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ')
    text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ')
    text.remove_suffix(1);
  return text;
}

} // namespace

std::string date_named_in(std::string_view text) {
  const std::size_t colon = text.find(':');
  if (text.size() > longest || colon == std::string_view::npos ||
      !names_date(guess_heading(text.substr(0, colon))))
    return {};
  std::string day(trimmed(text.substr(colon + 1)));
  const Cell cell = Cell::of_text(day);
  return date_from(cell, {}).readable || could_be_date(cell) ? day : std::string();
}

std::string date_of_line(std::string_view text) {
  const bool alone = text.size() <= longest && date_from(Cell::of_text(std::string(text)), {}).readable;
  return alone ? std::string(trimmed(text)) : date_named_in(text);
}

} // namespace wetspell
