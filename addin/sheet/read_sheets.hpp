#pragma once
// A workbook's sheets as tables of cells, the one form that the engine takes.

#include "base/css.hpp"
#include "sheet/owned.hpp"
#include "table/table.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <cstddef>
#include <vector>

namespace wetspell::addin {

enum class Sheets {
  of_people, ///< all but those that Wetspell wrote
  all
};

/// Every sheet's used part, hidden and filtered rows too. Dates are told from numbers by the cells' formats
/// and counted from 1899-12-30 whatever the document's own day zero is. Refuses in words a sheet with more
/// cells than can be read (most_cells).
std::vector<Table> tablesOf(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document,
                            Sheets which = Sheets::of_people);

/// The cells of one block, in their places.
Table tableIn(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document, const Owned& block);

/// Days from 1899-12-30 to the document's day zero.
double dayZero(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

} // namespace wetspell::addin
