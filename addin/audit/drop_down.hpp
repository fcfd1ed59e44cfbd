#pragma once
// Cells that offer a list of words.

#include "base/css.hpp"

#include <com/sun/star/table/XCellRange.hpp>

#include <string>

namespace wetspell::addin {

/// Gives the cells a drop-down of the words that stand in `words`, and a hint beside the cell. Another word
/// asks before it is taken.
void offer(const css::uno::Reference<css::table::XCellRange>& cells,
           const css::uno::Reference<css::table::XCellRange>& words, const std::string& title,
           const std::string& hint);

} // namespace wetspell::addin
