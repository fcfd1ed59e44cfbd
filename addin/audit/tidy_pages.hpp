#pragma once
// The sheets 'Tidy ...': the rows that were read, in the columns of a season workbook, each leading to its
// source.

#include "audit/audit.hpp"
#include "sheet/sheets.hpp"

namespace wetspell::addin {

/// A sheet for every kind of record that there are rows of. A sheet of an earlier audit whose kind has no
/// rows any more says so.
void writeTidyPages(const SheetDocument& document, const Audit& audit);

} // namespace wetspell::addin
