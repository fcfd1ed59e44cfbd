#pragma once
// A workbook's sheets as tables of cells, the one form that the engine takes.

#include "base/css.hpp"
#include "table/table.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <vector>

namespace wetspell::addin {

/// Every sheet's used part, hidden and filtered rows too, but for the sheets of a summary. Dates are told
/// from numbers by the cells' formats and counted from 1899-12-30 whatever the document's own day zero is.
std::vector<Table> tablesOf(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

/// Days from 1899-12-30 to the document's day zero.
double dayZero(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

} // namespace wetspell::addin
