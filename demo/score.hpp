// How well a check did: which spoiled cells it found, which it missed, and what it raised without cause.
#pragma once

#include "base/result.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::demo {

struct Score {
  std::size_t spoiled = 0;
  std::size_t found =
      0; ///< spoiled cells with a finding on them, or one of the mistake's family in their row
  std::size_t echoes =
      0; ///< findings other findings at a pool with a spoiled cell, which mostly follow from the mistake
  std::size_t false_alarms = 0;    ///< findings to fix or to ask that no spoiled cell explains
  std::size_t notes = 0;           ///< findings that are only worth knowing, and no spoiled cell explains
  std::vector<std::string> missed; ///< in words
  std::vector<std::string> raised_without_cause; ///< in words
};

/// Compares the list of spoiled cells (CSV, as the generator writes it) with the findings (JSON of `wetspell
/// check`).
Result<Score> score(std::string_view spoiled_csv, std::string_view findings_json);

/// A summary for people.
std::string in_words(const Score& score);

} // namespace wetspell::demo
