// What people write beside cells instead of into them.
#pragma once

#include "sheet/sheets.hpp"

#include <string>
#include <vector>

namespace wetspell::addin {

/// The comments on the cells of all sheets, a sentence each; of many the first, and how many more there are.
std::vector<std::string> commentsOn(const SheetDocument& document);

} // namespace wetspell::addin
