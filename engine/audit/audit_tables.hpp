// The audit as tables, for sheets and CSV files.
#pragma once

#include "audit/audit.hpp"

#include <span>
#include <string>
#include <vector>

namespace wetspell {

/// The first screen in sentences: how many rows are usable, after answers, not at all; the commonest reasons.
std::vector<std::string> verdict_lines(const Audit& audit);

/// The audit of one file: the sentences of the first screen, a line each in the first column; then what was
/// found and what was left unread, with the source cell of each, under headings of their own.
Table audit_table(const Audit& audit, Place origin);

/// What each heading was taken for. A person corrects Field and Unit; read_given_map() reads it again.
Table headings_table(std::span<const Audit> audits, Place origin);

/// A tidy table with the source cell of each row in its last column, "From".
struct TidySheet {
  TableKind kind{};
  Table table; ///< with its heading row
};
/// The rows in our own layout, ready to be put below those of a workbook with these settings: numbers in
/// another unit carry it with them. Nothing is rounded or converted.
std::vector<TidySheet> tidy_tables(const Audit& audit, const Settings& settings);

} // namespace wetspell
