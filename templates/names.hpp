// The names that formulas use: settings, units in use, columns that other sheets look into.
#pragma once

#include "filling.hpp"
#include "model.hpp"

#include <string>
#include <vector>

namespace wetspell::workbook {

/// "people_pace": the name of a field's cells.
std::string column_name(Field field);

/// "offered_pools_pool": what a drop-down offers, a field's cells down to the last one that is filled.
std::string offered_name(Field field);

std::vector<Name> names(const Filling& filling);

/// "table_people": the name of a table with its headings, as the functions for rows take it.
std::string table_name(TableKind table);

/// "rows_in_use_pools": the cell that holds how far down the pools or people go.
std::string rows_in_use_name(TableKind table);
/// Its formula: rows from below the headings to the last one with a code or name, at least 1.
std::string rows_in_use(TableKind table, const Filling& filling);

} // namespace wetspell::workbook
