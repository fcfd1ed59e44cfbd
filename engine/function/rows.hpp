// Rows of a sheet with their headings, and tables beside them, as a season: for the functions that work on
// rows.
#pragma once

#include "function/function.hpp"
#include "season/season.hpp"

namespace wetspell {

ParameterSpec headings_parameter();
ParameterSpec rows_parameter();
ParameterSpec tables_parameter();
std::vector<ErrorSpec> rows_errors();

/// The season that these arguments make: headings, rows of visits, then tables and a word for the units.
/// The table of visits is the first of the season's sheets; its row 0 holds the headings. Good until the next
/// call in the same thread.
Result<const Season*> season_of(std::span<const Argument> arguments);

} // namespace wetspell
