#pragma once
// The sheet 'Pools this season': a line a pool, with every figure about single pools.

#include "estimate/summary.hpp"
#include "sheet/sheets.hpp"

namespace wetspell::addin {

/// Writes the lines in place of the old ones. Pools keep the rows in which they stand, so that what people
/// wrote beside them stays theirs; new pools follow below; the line of a pool that is no longer one goes,
/// unless somebody wrote something beside it.
void writePools(const SheetDocument& document, const SeasonHistory& history, const SeasonSummary& summary);

/// The pool (index into Season::pools) of a row (from 1) of that sheet.
std::optional<std::uint32_t> poolOfLine(const SheetDocument& document, const Season& season,
                                        const std::string& sheet, std::size_t row);

} // namespace wetspell::addin
