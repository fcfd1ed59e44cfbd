#pragma once
// A workbook's sheets as tables of cells, the one form that the engine takes.

#include "base/css.hpp"
#include "table/table.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <cstddef>
#include <vector>

namespace wetspell::addin {

/// A full sheet of visits, with room for columns of people's own. A lone cell far out would make a table of
/// thousands of millions of cells.
inline constexpr std::size_t mostCells = std::size_t{1048576} * 96;

/// Every sheet's used part, hidden and filtered rows too, but for the sheets of a summary. Dates are told
/// from numbers by the cells' formats and counted from 1899-12-30 whatever the document's own day zero is.
/// Refuses in words when a sheet's used part has more cells than `most`.
std::vector<Table> tablesOf(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document,
                            std::size_t most = mostCells);

/// Days from 1899-12-30 to the document's day zero.
double dayZero(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

} // namespace wetspell::addin
