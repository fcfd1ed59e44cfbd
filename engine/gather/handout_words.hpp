// What a handout bears beside rows and answers: gathering passes it over, and it is nobody's loss.
#pragma once

#include <string_view>

namespace wetspell::handout_words {

inline constexpr std::string_view read_first = "Read first"; ///< the sheet with the page to read
inline constexpr std::string_view you = "You";               ///< the sheet with the person's name and pace
inline constexpr std::string_view feedback = "Feedback";     ///< heading of the formulas beside the rows

} // namespace wetspell::handout_words
