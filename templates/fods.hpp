// Writes a workbook as one flat OpenDocument file (OpenDocument 1.3, OASIS), the same bytes every time.
#pragma once

#include "model.hpp"

#include <string>

namespace wetspell::workbook {

std::string to_fods(const Workbook& workbook);

} // namespace wetspell::workbook
