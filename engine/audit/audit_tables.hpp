// The audit as tables, for sheets and CSV files.
#pragma once

#include "audit/audit.hpp"

#include <span>
#include <string>
#include <vector>

namespace wetspell {

/// The first screen in sentences: how many rows are usable, after answers, not at all; the commonest reasons.
std::vector<std::string> verdict_lines(const Audit& audit);

/// What each heading was taken for. A person corrects Field and Unit; read_given_map() reads it again.
Table headings_table(std::span<const Audit> audits, Place origin);

/// A tidy table with the source cell of each row in its last column, "From".
struct TidySheet {
  TableKind kind{};
  Table table;                  ///< with its heading row
  std::vector<Place> from;      ///< one a row below the headings
  std::vector<RowState> states; ///< one a row below the headings
};
/// Which columns: those that the source has, or all that are typed, as they stand side by side in a workbook.
enum class TidyColumns { found, all_typed };
/// The rows in our own layout, ready to be put below those of a workbook with the file's settings: numbers in
/// another unit carry it with them. Nothing is rounded or converted.
std::vector<TidySheet> tidy_tables(const Audit& audit, TidyColumns which = TidyColumns::found);

} // namespace wetspell
