// A small workbook for one volunteer, who has neither the extension nor perhaps the same spreadsheet program:
// their name and pools in the drop-downs, the columns that they fill, plain built-in formulas only.
#pragma once

#include "gather/ask_list.hpp"
#include "season/season.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::workbook {

/// The sheet on which questions are answered, and its headings: gathering finds answers by these words.
inline constexpr std::string_view questions_sheet_name = "Questions";
struct QuestionColumns {
  std::string_view key = "Key", pool = "Pool", date = "Date", what = "What", written = "Written",
                   doubt = "Doubt", question = "Question", answer = "Answer";
};
inline constexpr QuestionColumns question_columns;

/// Pools (indices) that a handout offers: those that the person has been to this season, in the order of the
/// table of pools; all of them for somebody who has been to none.
std::vector<std::size_t> handout_pools(const Season& season, std::size_t person);

/// The handout of a person of the season as one flat OpenDocument spreadsheet (.fods); the same content gives
/// the same bytes. `questions`: what is asked of the person.
std::string handout_workbook(const Season& season, std::size_t person, std::span<const Question> questions);

} // namespace wetspell::workbook
