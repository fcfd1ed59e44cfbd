// Entry checks: the drop-down, the limits and the help of every cell that people type into.
#pragma once

#include "filling.hpp"
#include "model.hpp"
#include "season/field.hpp"
#include "season/settings.hpp"

#include <string>
#include <vector>

namespace wetspell::workbook {

/// The name of a field's entry check, the same in every workbook.
std::string entry_name(Field field);
std::string entry_name(Setting setting);

/// One check a field, in the order of the catalogue. What is typed with a unit or in words ("2' 3\"", "dry")
/// is always let through: reading it is the engine's work. Limits warn and leave the last word to the person;
/// only what cannot be at all, such as minus three animals, is refused.
std::vector<EntryCheck> entry_checks(const Filling& filling);

/// The row of a setting on the start page, from 0, and the name that stands for its cell in formulas.
std::size_t setting_row(Setting setting);
std::string setting_name(Setting setting);
/// "$Start.$C$16"
std::string setting_cell(Setting setting);

} // namespace wetspell::workbook
