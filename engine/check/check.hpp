// The check: every rule over every row, all outcomes counted, each doubt with its place and its answer.
#pragma once

#include "base/result.hpp"
#include "check/rule.hpp"

#include <array>
#include <functional>
#include <span>
#include <string>
#include <vector>

namespace wetspell {

/// A proposed change of one cell.
struct Change {
  Place place;
  Cell content;
};

/// One doubt with everything a person needs to work through it.
struct Finding {
  const RuleSpec* rule = nullptr;
  TableKind table = TableKind::visits;
  Field field{};
  std::uint32_t record = 0; ///< index of the record in its vector of Season
  Place place;              ///< the cell to look at
  std::string value;        ///< what stands there, as typed
  std::string message;
  std::string advice;          ///< to the coordinator
  std::string question;        ///< where the rule's own would say too little; empty: it does not
  std::vector<Change> changes; ///< the proposed replacement, cell by cell; empty: none
  std::string key;    ///< same rule, record and values behind it: same key; anything else: another one
  std::string answer; ///< given in an earlier run to the same values; empty: none
  std::string note;   ///< the person's note to the answer
  bool settled =
      false; ///< answered `right as it is`: "corrected" with the same values behind it is not yet so

  [[nodiscard]] bool open() const { return !settled; }
  /// The question to whoever was there.
  [[nodiscard]] std::string_view asked() const { return question.empty() ? rule->question : question; }
};

struct Tally {
  std::size_t holds = 0, fails = 0, undecided = 0, could_not_run = 0;
  [[nodiscard]] std::size_t total() const { return holds + fails + undecided + could_not_run; }
};

struct CheckReport {
  std::size_t rows_checked = 0;  ///< rows of pools, people, visits and life counts that hold something
  std::vector<Finding> findings; ///< by table, row, level
  std::vector<Tally> tallies;    ///< in the order of rules()
  std::size_t open_fix = 0, open_ask = 0, open_note = 0, answered = 0;
  bool cancelled = false; ///< stopped by the person; findings so far are kept
};

/// An answer given to a finding of an earlier run.
struct GivenAnswer {
  std::string key;
  std::string answer;
  std::string note;
};

struct CheckOptions {
  std::span<const GivenAnswer> answers;
  /// Called now and then with the share done (0 to 1); returning false cancels.
  std::function<bool(double)> progress;
};

CheckReport check(const Season& season, const CheckOptions& options = {});

/// The doubts about one visit in words, one sentence after another, from rules that look at a reading or a
/// visit alone; empty when there are none.
std::string doubts_in_words(const SeasonView& view, std::uint32_t visit);

} // namespace wetspell
