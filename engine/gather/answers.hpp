// Answers that came back, put to those that the season holds already.
#pragma once

#include "check/check.hpp"
#include "gather/came_in.hpp"

namespace wetspell {

/// The season's answers with those of the files. A word of the list of answers becomes the answer; other
/// words are noted with the file they came from, behind what was noted before. Nothing is taken away.
std::vector<GivenAnswer> with_answers(std::vector<GivenAnswer> held, const std::vector<CameFile>& came);

/// How many findings of the report have an answer or a note now that `held` did not give them.
std::size_t newly_answered(const CheckReport& report, const std::vector<GivenAnswer>& held);

} // namespace wetspell
