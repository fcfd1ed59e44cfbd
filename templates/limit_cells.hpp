// The cells of the sheet Limits inside formulas.
#pragma once

#include "season/limits.hpp"

#include <string>
#include <string_view>

namespace wetspell::workbook {

/// A formula for the limit as it stands in the workbook, in the unit that the cell `unit` names; the usual
/// value where the sheet's cell is blank. Converts with the sheet's own CONVERT, so that entry limits work
/// without the extension.
std::string limit_in_sheet(Limit limit, std::string_view unit);

} // namespace wetspell::workbook
