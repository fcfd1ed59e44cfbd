#pragma once
// The findings sheet: the only place in which a check writes.

#include "check/check.hpp"
#include "season/season.hpp"
#include "sheet/sheets.hpp"

#include <string>
#include <vector>

namespace wetspell::addin {

/// Refuses in words when findings could not be written.
void requireFindingsWritable(const SheetDocument& document, const Season& season);

/// Puts the report's findings below the headings of the findings table, in place of the old ones. A document
/// without such a table gets a sheet for it at its end. Only the columns of the findings table are written.
/// Refuses in words when the sheet is protected.
void writeFindings(const SheetDocument& document, const Season& season, const CheckReport& report);

/// Takes all findings and the answers to them away. Gives the number of rows that were there.
std::size_t clearFindings(const SheetDocument& document, const Season& season);

/// The marks (keys) of the findings in the given rows of the findings sheet (from 1, as Calc numbers them).
std::vector<std::string> keysInRows(const Season& season, std::size_t first, std::size_t last);

/// The row of the finding with this key in the findings sheet, if it stands there.
std::optional<Place> rowOfKey(const Season& season, const std::string& key);

} // namespace wetspell::addin
