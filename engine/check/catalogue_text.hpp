// The catalogue of rules as a page for people: docs/reference/rules.md is written from it.
#pragma once

#include <string>

namespace wetspell {

/// Markdown: what the three levels mean, then family by family every rule with what it expects, what it looks
/// at, what to do, which columns it needs and where it comes from. Ends in a line break.
std::string rules_markdown();

} // namespace wetspell
