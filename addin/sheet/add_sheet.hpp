#pragma once
// New sheets.

#include "sheet/sheets.hpp"

#include <optional>
#include <string>

namespace wetspell::addin {

/// Adds a sheet at a position (from 0; without one at the end), with the name wanted or, where that is taken,
/// with a number behind it; gives its name. What a file of another office could not have in a sheet's name
/// becomes a hyphen. Can be undone; redone only where the document has a window.
std::string addSheet(const SheetDocument& document, std::string wanted,
                     std::optional<sal_Int16> position = std::nullopt);

} // namespace wetspell::addin
