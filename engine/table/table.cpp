#include "table/table.hpp"

#include <algorithm>
#include <cctype>

namespace wetspell {

std::string column_letters(std::size_t column) {
  std::string letters;
  for (std::size_t rest = column + 1; rest > 0; rest = (rest - 1) / 26)
    letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
  return letters;
}

std::string to_text(const Place& place) {
  const bool plain = std::all_of(place.sheet.begin(), place.sheet.end(),
                                 [](unsigned char c) { return std::isalnum(c) || c == '_' || c >= 0x80; });
  std::string text;
  if (plain) {
    text = place.sheet;
  } else {
    text = "'";
    for (char c : place.sheet)
      text += c == '\'' ? std::string("''") : std::string(1, c);
    text += "'";
  }
  return text + "." + column_letters(place.column) + std::to_string(place.row);
}

Table::Table(Place origin, std::size_t rows, std::size_t columns)
    : origin_(std::move(origin)), rows_(rows), columns_(columns), cells_(rows * columns) {}

Place Table::place(std::size_t row, std::size_t column) const {
  return {origin_.sheet, sheet_row(row), sheet_column(column)};
}

} // namespace wetspell
