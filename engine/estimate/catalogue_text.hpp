// The catalogue of figures as a page for people: docs/reference/figures.md is written from it.
#pragma once

#include <string>

namespace wetspell {

/// Markdown: one table, figure by figure with what it says and where it comes from. Ends in a line break.
std::string figures_markdown();

} // namespace wetspell
