#include "gather/questions.hpp"

#include "season/locate.hpp"
#include "season/words.hpp"

#include <algorithm>

namespace wetspell {

namespace {

constexpr std::size_t rows_searched = 200;

struct Columns {
  std::size_t row, key, answer;
};

std::optional<std::size_t> column_headed(const Table& sheet, std::size_t row, std::string_view heading) {
  std::string buffer;
  for (std::size_t column = 0; column < sheet.columns(); ++column)
    if (const Cell& cell = sheet.at(row, column);
        cell.kind() == CellKind::text && plain_word(cell.text(), buffer) == heading)
      return column;
  return std::nullopt;
}

/// A findings sheet has a key and an answer too, and is none: there the key is called "Mark".
std::optional<Columns> questions_in(const Table& sheet) {
  for (std::size_t row = 0; row < std::min(sheet.rows(), rows_searched); ++row) {
    const auto key = column_headed(sheet, row, "key");
    const auto answer = column_headed(sheet, row, "answer");
    if (key && answer)
      return Columns{row, *key, *answer};
  }
  return std::nullopt;
}

} // namespace

std::vector<CameAnswer> take_answers(std::vector<Table>& sheets) {
  std::vector<CameAnswer> answers;
  std::erase_if(sheets, [&](const Table& sheet) {
    const auto at = questions_in(sheet);
    if (!at)
      return false;
    for (std::size_t row = at->row + 1; row < sheet.rows(); ++row) {
      const Cell& key = sheet.at(row, at->key);
      const Cell& answer = sheet.at(row, at->answer);
      if (holds_something(key) && holds_something(answer))
        answers.push_back({to_text(key), to_text(answer)});
    }
    return true;
  });
  return answers;
}

} // namespace wetspell
