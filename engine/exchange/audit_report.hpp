// An audit for people (text), for tables (CSV) and for programs (JSON).
#pragma once

#include "audit/audit_tables.hpp"

#include <span>
#include <string>

namespace wetspell {

std::string audit_text(const Audit& audit);
/// One line for each thing that was found: findings, cells left unread, rows passed over.
std::string audit_csv(std::span<const Audit> audits);
/// One object a table: {"file", "sheet", "table": {"first_row", "last_row"}, "headings": [{"column",
/// "heading", "field", "unit", "confidence", "reason"}], "rows": {"usable", "after_answers", "unusable"},
/// "findings":
/// [{"rule", "level", "sheet", "row", "column", "field", "value", "message", "advice", "replacement"}],
/// "unread": [{"row", "column", "text", "reason"}]} and further keys that say more; the object alone where
/// all files together have one table, a list of them otherwise. A file without tables gives one object
/// without rows.
std::string audit_json(std::span<const Audit> audits);

} // namespace wetspell
