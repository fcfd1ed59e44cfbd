// What the workbook works out beside each row, by the cell functions.
#pragma once

#include "season/field.hpp"

#include <string>

namespace wetspell::workbook {

std::string person_formula(Field field, std::size_t row);
std::string visit_formula(Field field, std::size_t row);
/// The mark at the left of a visit: "ok", "look again", or nothing for an empty row.
std::string visit_mark(std::size_t row);

} // namespace wetspell::workbook
