#pragma once
// Rows below those that a table of the season has, as a person would type them there.

#include "gather/plan.hpp"
#include "sheet/sheets.hpp"

namespace wetspell::addin {

/// Refuses in words when rows could not be put there: its sheet is protected.
void requireRoomFor(const SheetDocument& document, const Season& season, TableKind table);

/// Puts the rows below the last that holds something; more rows are made ready where there are too few. A
/// table without columns for the source gets them at its right.
void putRows(const SheetDocument& document, TableKind table, const std::vector<AddedRow>& rows);

} // namespace wetspell::addin
