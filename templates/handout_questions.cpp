// What the coordinator asks the person, with a cell for each answer.
#include "entry.hpp"
#include "handout_plan.hpp"
#include "record_sheet.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell::workbook::handout {

Sheet questions_sheet(const HandoutPlan& plan) {
  Sheet sheet;
  sheet.name = questions_sheet_name;
  sheet.tab_colour = colour::amber;
  sheet.page = PageLook::wide_table;
  sheet.columns = {{2.0, Look::page, false, true}, {2.2}, {2.5}, {3.0}, {3.4}, {8.4}, {6.6}, {5.4}};
  const bool none = plan.questions.empty();
  SheetRow title{1.3, {SheetCell{}, text_cell(Look::title, sheet.name)}, 1};
  title.cells.resize(4);
  title.cells.push_back(text_cell(
      Look::subtitle, none ? "Nothing is asked of you at the moment."
                           : "Answer in the last column: 'right as it is', or what it should be, or 'do "
                             "not remember'. Nobody has to go out again."));
  SheetRow bands{0.6, {}, 1};
  for (std::size_t column = 0; column + 1 < sheet.columns.size(); ++column)
    bands.cells.push_back(text_cell(Look::band_derived, column == 1 ? "TO READ · What is doubtful" : ""));
  bands.cells.push_back(text_cell(Look::band_typed, "YOU TYPE"));
  SheetRow heads{0.9, {}, 1};
  const QuestionColumns& c = question_columns;
  for (const std::string_view heading : {c.key, c.pool, c.date, c.what, c.written, c.doubt, c.question})
    heads.cells.push_back(text_cell(Look::head_derived, std::string(heading)));
  heads.cells.push_back(text_cell(Look::head_typed, std::string(c.answer)));
  sheet.rows = {title, bands, heads};
  for (const Question& question : plan.questions) {
    SheetRow row;
    for (const std::string& text : {question.key, question.pool, question.day, question.what,
                                    question.written.empty() ? std::string("(blank)") : question.written,
                                    question.doubt, question.asked})
      row.cells.push_back(text_cell(Look::fixed_text, text));
    SheetCell answer = text_cell(Look::typed_wrapped, {});
    answer.entry = "entry-answer";
    row.cells.push_back(std::move(answer));
    sheet.rows.push_back(std::move(row));
  }
  sheet.frozen_rows = first_row;
  sheet.repeat_from = heading_row - 1;
  sheet.repeat_to = first_row;
  sheet.print = Range{1, 0, sheet.columns.size() - 1, sheet.rows.size() - 1};
  return sheet;
}

} // namespace wetspell::workbook::handout
