#pragma once
// A cell with a formula, and the way from the references in it to the cells they mean.

#include "base/css.hpp"
#include "function/function.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XCellRange.hpp>

namespace wetspell::addin {

/// The formula of a single cell, if it holds one, and where its references lead: on its own sheet, and with
/// the document on the others. Of a range: its size alone.
Argument formulaArgument(const css::uno::Reference<css::beans::XPropertySet>& document,
                         const css::uno::Reference<css::table::XCellRange>& cells);

} // namespace wetspell::addin
