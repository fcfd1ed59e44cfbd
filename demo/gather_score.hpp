// How well a gathering did: what was put into the files that came back, and what of it stands in the season.
#pragma once

#include "base/result.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::demo {

struct GatherScore {
  std::size_t files = 0;
  std::size_t visits = 0; ///< put in, those that came twice counted once
  std::size_t visits_found = 0;
  std::size_t cells = 0; ///< put in with these visits
  std::size_t cells_found = 0;
  std::size_t contradictions = 0; ///< cells of which two files say different things
  std::size_t contradictions_found = 0;
  std::size_t answers = 0;
  std::size_t answers_found = 0;
  std::size_t answers_unasked = 0; ///< to questions that the rows which came back settled
  std::size_t held = 0;            ///< cells that people had typed into the season before
  std::size_t changed = 0;
  std::vector<std::string> missed; ///< in words

  /// All was found, and nothing was changed that stood there.
  [[nodiscard]] bool whole() const;
};

/// Compares what was put in (JSON of fill_handouts) with the season before and after, each a line of
/// `wetspell-office tables --own`.
Result<GatherScore> score_gathering(std::string_view put_in, std::string_view before, std::string_view after);

/// A summary for people.
std::string in_words(const GatherScore& score);

} // namespace wetspell::demo
