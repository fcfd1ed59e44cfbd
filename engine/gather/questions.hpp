// The sheet of questions that went out with a handout, with the answers typed into it.
#pragma once

#include "gather/came_in.hpp"

namespace wetspell {

/// Takes the tables of questions out of the sheets: those with the headings "Key" and "Answer", wherever they
/// stand and whatever the sheet is called. Gives what was answered.
std::vector<CameAnswer> take_answers(std::vector<Table>& sheets);

} // namespace wetspell
