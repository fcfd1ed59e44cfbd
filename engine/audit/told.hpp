// What became of a source table, once it is found and mapped.
#pragma once

#include "audit/audit.hpp"

namespace wetspell {

/// Without the counts of its tidy rows.
AuditedTable told(const Mapped& mapped);

} // namespace wetspell
