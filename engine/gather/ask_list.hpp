// What to ask whom: the open findings of a season, person by person, in words that can be pasted into a mail.
#pragma once

#include "check/check.hpp"

#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace wetspell {

/// One doubt as a question to the person who was there.
struct Question {
  std::string key; ///< of the finding: the answer to it is given under this mark
  Level level = Level::ask;
  Place place;
  std::string pool; ///< code; empty for what is not about one pool
  std::string day;  ///< "2026-04-18"; as typed where it cannot be read
  std::string what; ///< heading of the cell: "Depth"
  std::string written;
  std::string doubt;
  std::string asked;
};

/// All questions to one person.
struct AskList {
  Ref person; ///< not known: whom to ask does not stand in the rows, or no table of people knows the code
  std::string code; ///< as the table of people has it; as typed in the row when it is not known there
  std::string name;
  std::vector<Question> questions; ///< in the order of the findings
};

/// Open findings that are to be fixed or asked about; what is only worth knowing is no question. People in
/// the order of their table, then codes that it does not know, last what has no person.
std::vector<AskList> ask_lists(const Season& season, const CheckReport& report);

/// What is asked of the person with this index; nothing when there is no list of theirs.
std::span<const Question> questions_to(std::span<const AskList> lists, std::size_t person);

/// One short text, ready to paste into a mail: pool, date, what was written, what is doubtful, the
/// question.
std::string ask_text(const Season& season, const AskList& list);

} // namespace wetspell
