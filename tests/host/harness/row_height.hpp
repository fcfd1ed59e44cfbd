#pragma once
// How high a row stands on the sheet.

#include "driver/document.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>

#include <string>

namespace wetspell::host {

/// The height of a cell's row in hundredths of a millimetre.
inline sal_Int32 rowHeight(const driver::Document& document, const std::string& cell) {
  using css::uno::UNO_QUERY_THROW;
  const css::uno::Reference<css::table::XColumnRowRange> row(document.cell(cell), UNO_QUERY_THROW);
  sal_Int32 height = 0;
  css::uno::Reference<css::beans::XPropertySet>(row->getRows(), UNO_QUERY_THROW)
      ->getPropertyValue("Height") >>= height;
  return height;
}

} // namespace wetspell::host
