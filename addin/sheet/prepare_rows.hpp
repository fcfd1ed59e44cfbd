#pragma once
// More rows below a table, with everything that its prepared rows have: formulas, drop-downs, formats.

#include "season/season.hpp"
#include "sheet/sheets.hpp"

#include <cstddef>

namespace wetspell::addin {

/// How many rows below the last filled one are free, and prepared where the table has rows with formulas.
std::size_t readyRows(const SheetDocument& document, const Season& season, TableKind kind);

/// Prepares `rows` more rows behind the last prepared or filled one. Refuses in words when the sheet is
/// protected, has no row below its headings to follow, or has too few rows left.
void prepareRows(const SheetDocument& document, const Season& season, TableKind kind, std::size_t rows);

} // namespace wetspell::addin
