#include "functions/arguments.hpp"

#include "base/text.hpp"
#include "functions/cells.hpp"
#include "functions/sheet_source.hpp"

#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/sheet/NoConvergenceException.hpp>

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;

Argument argumentOf(CellSource::Block block) {
  return {.given = true,
          .rows = block.rows,
          .columns = block.columns,
          .cells = std::move(block.cells),
          .formula = std::move(block.formula),
          .source = {}};
}

/// Columns worked out from rows need no dates; looking for them would double the time.
Formats formatsFor(const ParameterSpec& parameter) {
  if (parameter.takes == Takes::rows) {
    return parameter.kind == Kind::date ? Formats::dates : Formats::ignored;
  }
  return Formats::dates_and_shares;
}

/// A number that is none. Inside a rectangle the office reads which error is meant from its lower bits, as it
/// writes them itself; where it did not, the cell would show #NUM!.
double errorNumber(ProblemKind kind) {
  std::uint64_t number = 503;
  switch (kind) {
  case ProblemKind::bad_argument:
    number = 502;
    break;
  case ProblemKind::not_enough:
    number = 32767;
    break;
  case ProblemKind::not_a_number:
    break;
  case ProblemKind::no_convergence:
    number = 523;
    break;
  }
  return std::bit_cast<double>(std::bit_cast<std::uint64_t>(std::numeric_limits<double>::quiet_NaN()) |
                               number);
}

Any contentOf(const Cell& cell) {
  switch (cell.kind()) {
  case CellKind::number:
  case CellKind::date:
    return Any(std::isfinite(cell.number()) ? cell.number() : std::numeric_limits<double>::quiet_NaN());
  case CellKind::text:
    return Any(toOffice(cell.text()));
  case CellKind::empty:
    return Any(rtl::OUString());
  case CellKind::error:
    break;
  }
  for (const ProblemKind kind :
       {ProblemKind::not_enough, ProblemKind::not_a_number, ProblemKind::no_convergence}) {
    if (cell.text() == error_value(kind)) {
      return Any(errorNumber(kind));
    }
  }
  return Any(errorNumber(ProblemKind::bad_argument));
}

Any refuse(const Problem& problem) {
  switch (problem.kind) {
  case ProblemKind::not_enough:
    return {}; // nothing at all is #N/A
  case ProblemKind::not_a_number:
    return Any(std::numeric_limits<double>::quiet_NaN());
  case ProblemKind::no_convergence:
    throw css::sheet::NoConvergenceException(toOffice(problem.text), nullptr);
  case ProblemKind::bad_argument:
    break;
  }
  throw css::lang::IllegalArgumentException(toOffice(problem.text), nullptr, 0);
}

} // namespace

void take(const ParameterSpec& parameter, const Reference<css::table::XCellRange>& cells,
          std::vector<Argument>& arguments) {
  if (!cells.is()) { // from a macro
    arguments.emplace_back();
    return;
  }
  arguments.push_back(argumentOf(blockOf(cells, formatsFor(parameter))));
}

void take(const ParameterSpec&, const FormulaCell& cell, std::vector<Argument>& arguments) {
  if (!cell.cells.is()) { // from a macro
    arguments.emplace_back();
    return;
  }
  arguments.push_back(formulaArgument(cell.document, cell.cells));
}

void take(const ParameterSpec&, const Any& value, std::vector<Argument>& arguments) {
  Sequence<Sequence<Any>> rows;
  if (!value.hasValue()) {
    arguments.emplace_back();
  } else if (value >>= rows) {
    arguments.push_back(argumentOf(blockOf(rows)));
  } else {
    arguments.push_back(Argument::of(cellOf(value)));
  }
}

void take(const ParameterSpec& parameter, const Sequence<Any>& values, std::vector<Argument>& arguments) {
  for (const Any& value : values) {
    take(parameter, value, arguments);
  }
}

Any give(const Result<Value>& result) {
  if (!result) {
    return refuse(result.error());
  }
  const Value& value = result.value();
  if (value.cells.size() == 1) {
    return contentOf(value.cells.front());
  }
  const auto columns = static_cast<sal_Int32>(value.columns);
  Sequence<Sequence<Any>> rows(static_cast<sal_Int32>(value.rows));
  Sequence<Any>* row = rows.getArray();
  for (std::size_t at = 0; at < value.cells.size(); at += value.columns, ++row) {
    row->realloc(columns);
    std::transform(value.cells.begin() + static_cast<std::ptrdiff_t>(at),
                   value.cells.begin() + static_cast<std::ptrdiff_t>(at + value.columns), row->getArray(),
                   contentOf);
  }
  return Any(rows);
}

} // namespace wetspell::addin
