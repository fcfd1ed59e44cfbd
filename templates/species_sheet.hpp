// The sheet of species, and its column of names for the drop-down of the sheet Life.
#pragma once

#include "filling.hpp"

#include <string>

namespace wetspell::workbook {

/// "$Species.$G$4:.$G$63": every animal once, in the order of the sheet, without gaps.
std::string animals_once(const Filling& filling);

} // namespace wetspell::workbook
