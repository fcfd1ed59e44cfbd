// Finds the tables of a season among sheets, by their headings.
#pragma once

#include "season/season.hpp"

#include <memory>
#include <span>
#include <string_view>
#include <vector>

namespace wetspell {

/// Fills the season's `located` from its sheets; `units` come from the headings only (none where they say
/// nothing). Says in the season's remarks where a second table of a kind was passed over.
void locate_tables(Season& season);

/// Whether a text is nothing but blanks, no-break ones among them.
bool only_blanks(std::string_view text);

/// Whether a cell counts as typed: not empty and not blanks only.
inline bool holds_something(const Cell& cell) {
  return cell.kind() == CellKind::text ? cell.text().front() > ' ' || !only_blanks(cell.text())
                                       : !cell.empty();
}

/// Position of a field among the fields of its table.
std::size_t position(Field field);

} // namespace wetspell
