#pragma once
// Cells of a sheet as a function sees them.

#include "base/css.hpp"
#include "function/function.hpp"

#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Sequence.hxx>

namespace wetspell::addin {

/// What a cell's formatting may say about its number.
enum class Formats {
  ignored,
  dates,            ///< a number shown as a date or time is one
  dates_and_shares, ///< and one shown in per cent is a hundred times as many per cent
};

CellSource::Block blockOf(const css::uno::Reference<css::table::XCellRange>& cells, Formats formats);
CellSource::Block blockOf(const css::uno::Sequence<css::uno::Sequence<css::uno::Any>>& rows);
Cell cellOf(const css::uno::Any& content);

} // namespace wetspell::addin
