// A gathering as it is told afterwards, and its list of files as a table.
#pragma once

#include "gather/plan.hpp"

#include <string>
#include <vector>

namespace wetspell {

struct Gathering {
  std::string folder;
  GatherPlan plan;
  std::vector<std::string> remarks; ///< about the folder
  std::size_t answered = 0;         ///< findings to which an answer came
  bool changed = false;             ///< whether anything in the workbook was
};

inline constexpr std::array<std::string_view, 7> gathered_headings{
    "File", "Rows in it", "In the season from it", "There already", "To choose", "Answers", "Remarks"};

/// A line a file, with the headings in the first row. Lines of `before` about files that are not among these
/// stay above them.
Table gathered_table(const Table& before, const Gathering& gathering);

} // namespace wetspell
