// Finds the tables of a season among sheets, by their headings.
#pragma once

#include "season/season.hpp"

#include <memory>
#include <span>
#include <vector>

namespace wetspell {

/// Fills the season's `located` from its sheets; `units` come from the headings only (none where they say
/// nothing). Says in the season's remarks where a second table of a kind was passed over.
void locate_tables(Season& season);

/// Whether a cell counts as typed: not empty and not blanks only.
bool holds_something(const Cell& cell);

/// Position of a field among the fields of its table.
std::size_t position(Field field);

} // namespace wetspell
