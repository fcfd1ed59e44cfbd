// What the tables of a fresh workbook hold before anybody has typed: classes, limits, a first list of
// animals.
#pragma once

#include "workbook.hpp"

#include <vector>

namespace wetspell::workbook {

std::vector<FilledTable> starting_rows();

} // namespace wetspell::workbook
