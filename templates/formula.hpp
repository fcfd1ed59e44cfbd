// Formulas as files keep them: references, names and calls of the cell functions.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>

namespace wetspell::workbook {

/// "[.F6]": the cell of the same sheet, rows and columns counted from 0.
std::string here(std::size_t column, std::size_t row);
/// "[.F6:.H6]"
std::string here(std::size_t first_column, std::size_t last_column, std::size_t row);
/// A sheet's name inside a reference, in quotes where it needs them: "'Read first'".
std::string sheet_in_reference(std::string_view sheet);
/// "$Visits.$A$6:.$A$505": what a name stands for, and what fixed ranges are made of.
std::string fixed_cell(std::string_view sheet, std::size_t column, std::size_t row);
std::string fixed_range(std::string_view sheet, std::size_t first_column, std::size_t first_row,
                        std::size_t last_column, std::size_t last_row);
/// A text inside a formula, quotes doubled.
std::string text_literal(std::string_view text);

/// "ORG.WETSPELL.POOL.DEPTHCLASS([.N6];unit_depth)": a cell function by its display name. The catalogue
/// knows the name that files keep; an unknown name or a wrong number of arguments is a mistake of this
/// program.
std::string call(std::string_view function, std::initializer_list<std::string> arguments);

} // namespace wetspell::workbook
