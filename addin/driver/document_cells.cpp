// Cells of a document, for reading and writing from outside.

#include "driver/document.hpp"

#include "base/text.hpp"
#include "driver/failure.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <fmt/format.h>

namespace wetspell::driver {

using addin::fromOffice;
using addin::toOffice;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

css::table::CellRangeAddress addressOf(const Reference<css::table::XCellRange>& range) {
  return Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
}

std::string shown(const Reference<css::table::XCell>& cell) {
  return fromOffice(Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->getString());
}

std::string dumpRange(const Reference<css::table::XCellRange>& range) {
  const css::table::CellRangeAddress area = addressOf(range);
  std::string lines;
  for (sal_Int32 row = 0; row <= area.EndRow - area.StartRow; ++row) {
    for (sal_Int32 column = 0; column <= area.EndColumn - area.StartColumn; ++column) {
      lines += column == 0 ? "" : "\t";
      lines += shown(range->getCellByPosition(column, row));
    }
    lines += '\n';
  }
  return lines;
}

} // namespace

std::vector<std::string> Document::sheetNames() const {
  std::vector<std::string> names;
  for (const rtl::OUString& name : model_->getSheets()->getElementNames()) {
    names.push_back(fromOffice(name));
  }
  return names;
}

Reference<css::sheet::XSpreadsheet> Document::sheet(const std::string& name) const {
  const auto sheets = model_->getSheets();
  if (!sheets->hasByName(toOffice(name))) {
    throw Failure(fmt::format("the document has no sheet '{}'", name));
  }
  return {sheets->getByName(toOffice(name)), UNO_QUERY_THROW};
}

Reference<css::table::XCellRange> Document::range(const std::string& address) const {
  // A sheet's name may hold a dot, an address may not.
  const std::size_t dot = address.rfind('.');
  const auto on = sheet(dot == std::string::npos ? sheetNames().front() : address.substr(0, dot));
  try {
    return on->getCellRangeByName(toOffice(dot == std::string::npos ? address : address.substr(dot + 1)));
  } catch (const css::uno::Exception&) {
    throw Failure(fmt::format("'{}' is not the address of a cell or a range", address));
  }
}

Reference<css::table::XCell> Document::cell(const std::string& address) const {
  return range(address)->getCellByPosition(0, 0);
}

void Document::setValue(const std::string& address, double value) const {
  cell(address)->setValue(value);
}

void Document::setText(const std::string& address, const std::string& text) const {
  Reference<css::text::XTextRange>(cell(address), UNO_QUERY_THROW)->setString(toOffice(text));
}

void Document::setFormula(const std::string& address, const std::string& formula) const {
  cell(address)->setFormula(toOffice(formula));
}

void Document::type(const std::string& address, const std::string& text) const {
  Reference<css::beans::XPropertySet>(cell(address), UNO_QUERY_THROW)
      ->setPropertyValue("FormulaLocal", css::uno::Any(toOffice(text)));
}

CellState Document::read(const std::string& address) const {
  const auto it = cell(address);
  return {shown(it), it->getValue(), fromOffice(it->getFormula()), it->getError()};
}

std::string Document::dump(const std::string& address) const {
  return dumpRange(range(address));
}

std::string Document::dumpSheet(const std::string& name) const {
  const auto on = sheet(name);
  const auto cursor = on->createCursor();
  const Reference<css::sheet::XUsedAreaCursor> used(cursor, UNO_QUERY_THROW);
  used->gotoEndOfUsedArea(false);
  const auto end = addressOf(Reference<css::table::XCellRange>(cursor, UNO_QUERY_THROW));
  return dumpRange(on->getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow));
}

std::string Document::dumpStored(const std::string& address) const {
  const Reference<css::sheet::XCellRangeFormula> formulas(range(address), UNO_QUERY_THROW);
  std::string lines;
  for (const auto& row : formulas->getFormulaArray()) {
    bool first = true;
    for (const rtl::OUString& one : row) {
      lines += first ? "" : "\t";
      lines += fromOffice(one);
      first = false;
    }
    lines += '\n';
  }
  return lines;
}

} // namespace wetspell::driver
