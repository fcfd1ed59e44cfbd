#pragma once
// Sheets that Wetspell writes and nobody types a season into. Each of their blocks bears a name of the
// workbook that begins with "wetspell_": such a name goes with the cells when the sheet is renamed or moved,
// and stays in files.

#include "sheet/sheets.hpp"

#include <com/sun/star/table/CellRangeAddress.hpp>

#include <optional>
#include <set>
#include <string>

namespace wetspell::addin {

/// A block of cells that Wetspell owns.
struct Owned {
  css::uno::Reference<css::sheet::XSpreadsheet> sheet;
  css::table::CellRangeAddress area;
};

/// The block with this name; nothing when there is none, or its cells were deleted.
std::optional<Owned> ownedBlock(const SheetDocument& document, const std::string& name);

/// Gives the cells the name, in place of those that had it.
void own(const SheetDocument& document, const std::string& name,
         const css::uno::Reference<css::table::XCellRange>& cells);

/// Positions of the sheets with a block that Wetspell owns.
std::set<sal_Int16> ownedSheets(const SheetDocument& document);

/// Refuses in words when the block's sheet is protected.
void requireUnprotected(const Owned& block);

} // namespace wetspell::addin
