#pragma once
// The blocks of cells in which a summary stands, and what people wrote beside them.

#include "sheet/cells.hpp"
#include "sheet/owned.hpp"

#include <string>

namespace wetspell::addin {

// Names of the blocks; in files for ever.
inline constexpr const char* poolsBlock = "wetspell_pools_this_season";
inline constexpr const char* programmeBlock = "wetspell_programme_this_season";
inline constexpr const char* numbersBlock = "wetspell_numbers_behind_charts";
/// "wetspell_page_of_B07"; what a name may not hold stands there as its hexadecimal code.
std::string pageBlock(const std::string& pool);

/// The block, ready to be written over: `columns` by `rows` cells. A workbook without it gets a sheet for it.
/// Where it was of another size, cells beside and below are moved, so that what people wrote there stays
/// theirs. `before`: the block before whose sheet a new sheet is to stand; empty: at the end.
Corner takeBlock(const SheetDocument& document, const std::string& name, const std::string& sheet,
                 std::size_t columns, std::size_t rows, const std::string& before = {});

/// The same for columns alone: `columns` columns from the block's first on.
void fitColumns(const Owned& block, std::size_t columns);

/// "='Visits'.B7" as a formula names one cell, whatever happens to its sheet: $'Visits'.$B$7.
std::string absolute(const Place& place);
/// A formula that shows `shown` (a number, or text in double quotes) and leads to the place.
std::string linkTo(const Place& place, const std::string& shown);
/// Text in double quotes.
std::string quoted(const std::string& text);

/// "$'Pools this season'.$A$1:$D$9": a range as charts name it.
std::string nameOf(const css::uno::Reference<css::table::XCellRange>& range);

} // namespace wetspell::addin
