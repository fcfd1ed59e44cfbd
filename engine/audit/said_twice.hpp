// Visits that stand twice in a file: on the sheet of their pool, and again on one that collects all.
#pragma once

#include "audit/audit.hpp"

namespace wetspell {

/// A sentence on the rows whose pool and day an earlier row says; empty where there are none. Where people
/// are named the rules tell each of them, so that nothing is said here. A reading a cell is no visit of its
/// own.
std::string said_twice(const Audit& audit);

} // namespace wetspell
