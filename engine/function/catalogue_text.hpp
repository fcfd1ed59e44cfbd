// The reference of the cell functions as a page: docs/reference/functions.md.
#pragma once

#include <string>

namespace wetspell {

/// Markdown, ending in a line break.
std::string functions_markdown();

} // namespace wetspell
