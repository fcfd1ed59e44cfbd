#pragma once
// From what Calc hands to a method, to the engine's arguments and back. Nothing else in the extension looks
// at cells for the functions.

#include "base/css.hpp"
#include "function/function.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Reference.hxx>
#include <com/sun/star/uno/Sequence.hxx>

#include <vector>

namespace wetspell::addin {

/// A cell whose formula is looked at, and the document it stands in, which Calc adds by itself.
struct FormulaCell {
  const css::uno::Reference<css::beans::XPropertySet>& document;
  const css::uno::Reference<css::table::XCellRange>& cells;
};

// Each appends what the parameter got to `arguments`.
void take(const ParameterSpec& parameter, const css::uno::Reference<css::table::XCellRange>& cells,
          std::vector<Argument>& arguments);
void take(const ParameterSpec& parameter, const FormulaCell& cell, std::vector<Argument>& arguments);
void take(const ParameterSpec& parameter, const css::uno::Any& value, std::vector<Argument>& arguments);
void take(const ParameterSpec& parameter, const css::uno::Sequence<css::uno::Any>& values,
          std::vector<Argument>& arguments);

/// What the cell shows. Throws what the office turns into an error value; the reason is in the message, which
/// the office drops in cells and keeps for macros.
css::uno::Any give(const Result<Value>& result);

} // namespace wetspell::addin
