// The names that formulas use: settings, units in use, columns that other sheets look into.
#pragma once

#include "filling.hpp"
#include "model.hpp"

#include <string>
#include <vector>

namespace wetspell::workbook {

/// "people_pace": the name of a field's cells.
std::string column_name(Field field);

std::vector<Name> names(const Filling& filling);

/// A table with its headings, as the functions for rows take it: "[$People.$A$4:.$K$204]".
std::string with_headings(TableKind table, const Filling& filling);

} // namespace wetspell::workbook
