// What became of a source table, once it is found and mapped.
#pragma once

#include "audit/audit.hpp"

namespace wetspell {

/// Without the counts of its tidy rows.
AuditedTable told(const Mapped& mapped);

/// Sentences on the units that nobody wrote and the table's other units suggest: one for all sheets alike.
std::vector<std::string> supposed_units(const std::vector<Mapped>& tables);

} // namespace wetspell
