// What the start page says about the extension and the season, in formulas that need no extension.
#pragma once

#include <cstddef>
#include <string>

namespace wetspell::workbook {

inline constexpr std::size_t extension_row = 2; ///< of the start page, from 0

/// "The programme · season 2026", or what the workbook is for.
std::string whose_season();
/// Whether the extension is there and new enough for this workbook, in words. Volatile, because a result that
/// was saved on another computer would otherwise be shown as it was.
std::string extension_state();
/// Whether a cell with extension_state() says that all is well: for the look of the cell.
std::string is_good_news(const std::string& cell);
/// How many findings are open and how many visits have doubts.
std::string season_state();
/// How deep to wade at the most, from the sheet Limits.
std::string wading_caution();
/// "This workbook was made for Wetspell 1.0.0."
std::string made_for();
/// The extension's version, or "none".
std::string version_here();

} // namespace wetspell::workbook
