#include "gather/ask_table.hpp"

#include <array>

namespace wetspell {

namespace {

constexpr std::array<std::string_view, ask_columns> headings{
    "Person", "Name", "Pool", "Date", "What", "Written", "Doubt", "Question", "Text to paste into a mail"};

} // namespace

Table ask_table(const Season& season, const std::vector<AskList>& lists, Place origin) {
  std::size_t questions = 0;
  for (const AskList& list : lists)
    questions += list.questions.size();
  Table table(std::move(origin), questions + 1, ask_columns);
  const auto put = [&](std::size_t row, std::size_t column, std::string_view text) {
    table.at(row, column) = Cell::of_text(text); // no words: a blank cell
  };
  for (std::size_t column = 0; column < ask_columns; ++column)
    put(0, column, headings[column]);
  std::size_t row = 1;
  for (const AskList& list : lists) {
    put(row, AskColumn::letter, ask_text(season, list));
    for (const Question& question : list.questions) {
      put(row, AskColumn::person, list.code.empty() ? "nobody is named" : list.code);
      put(row, AskColumn::name, list.name);
      put(row, AskColumn::pool, question.pool);
      put(row, AskColumn::day, question.day);
      put(row, AskColumn::what, question.what);
      put(row, AskColumn::written, question.written.empty() ? "(blank)" : question.written);
      put(row, AskColumn::doubt, question.doubt);
      put(row, AskColumn::question, question.asked);
      ++row;
    }
  }
  return table;
}

} // namespace wetspell
