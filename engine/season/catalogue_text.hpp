// The catalogues of fields, words, settings and limits as reference pages.
#pragma once

#include <string>

namespace wetspell {

/// docs/reference/fields.md: every table with its fields, the lists of words, the settings and the usual
/// animals. Markdown, ending in a line break.
std::string fields_markdown();

/// docs/reference/limits.md: every limit with its value and source.
std::string limits_markdown();

} // namespace wetspell
