// What became of a source table, once it is found and mapped.
#pragma once

#include "audit/audit.hpp"

namespace wetspell {

/// Without the counts of its tidy rows.
AuditedTable told(const Mapped& mapped);

/// A sentence on the times of day beside its dates, of which it has some.
std::string times_left_alone(const AuditedTable& table);

/// Sentences on the units that nobody wrote and the table's other units suggest: one for all sheets alike.
std::vector<std::string> supposed_units(const std::vector<Mapped>& tables);

} // namespace wetspell
