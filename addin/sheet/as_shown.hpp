#pragma once
// Numbers whose cells show more than the number: the engine is given what people see there.

#include "base/css.hpp"
#include "table/table.hpp"

#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/util/XNumberFormats.hpp>

namespace wetspell::addin {

/// A share formatted as per cent becomes "75%", a number whose format adds a unit "30 cm" (with all its
/// digits), a whole number whose format makes a code of it that code: "B07", "007". `table` holds the cells
/// of `range`.
void takeAsShown(Table& table, const css::uno::Reference<css::table::XCellRange>& range,
                 const css::uno::Reference<css::util::XNumberFormats>& formats);

} // namespace wetspell::addin
