#include "sheet/cells.hpp"

#include "base/text.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/strip.hpp"

#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XSheetCellRangeContainer.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

namespace {

Any contentOf(const Cell& cell, double zero) {
  switch (cell.kind()) {
  case CellKind::empty:
    break;
  case CellKind::number:
    return Any(cell.number());
  case CellKind::date:
    return Any(cell.number() - zero);
  case CellKind::text:
  case CellKind::error:
    return Any(toOffice(cell.text()));
  }
  return Any(rtl::OUString()); // nothing at all would be written as an error
}

Sequence<Sequence<Any>> dataOf(const Table& table, std::size_t begin, std::size_t end, double zero) {
  Sequence<Sequence<Any>> data(static_cast<sal_Int32>(table.rows()));
  Sequence<Any>* lines = data.getArray();
  for (std::size_t row = 0; row < table.rows(); ++row) {
    lines[row].realloc(static_cast<sal_Int32>(end - begin));
    Any* cells = lines[row].getArray();
    for (std::size_t c = begin; c < end; ++c)
      cells[c - begin] = contentOf(table.at(row, c), zero);
  }
  return data;
}

/// The cells that stay empty, in stretches of a column.
std::vector<css::table::CellRangeAddress> blanksOf(const Corner& corner, const Table& table,
                                                   std::size_t begin, std::size_t end) {
  const sal_Int16 sheet = addressOf(corner.sheet).Sheet;
  std::vector<css::table::CellRangeAddress> blanks;
  for (std::size_t c = begin; c < end; ++c) {
    const sal_Int32 column = corner.column + static_cast<sal_Int32>(c - begin);
    bool before = false;
    for (std::size_t row = 0; row < table.rows(); ++row) {
      const sal_Int32 at = corner.row + static_cast<sal_Int32>(row);
      const bool blank = table.at(row, c).empty();
      if (blank && before)
        blanks.back().EndRow = at;
      else if (blank)
        blanks.emplace_back(sheet, column, at, column, at);
      before = blank;
    }
  }
  return blanks;
}

/// A block written at once stays, when it is undone, in the cells that were empty before, and when it is
/// redone, cells that it left empty keep what they held (seen in LibreOffice 7.4). So an array formula, which
/// undoes well, fills the cells first, and the empty ones are cleared afterwards.
void makeUndoable(const Reference<css::table::XCellRange>& cells) {
  Reference<css::sheet::XArrayFormulaRange>(cells, UNO_QUERY_THROW)->setArrayFormula("=0");
}

} // namespace

void clearCells(const Reference<css::uno::XInterface>& range) {
  Reference<css::sheet::XSheetOperation>(range, UNO_QUERY_THROW)->clearContents(allContents);
}

Reference<css::uno::XInterface> together(const SheetDocument& document,
                                         const std::vector<css::table::CellRangeAddress>& ranges) {
  const Reference<css::sheet::XSheetCellRangeContainer> all(
      Reference<css::lang::XMultiServiceFactory>(document, UNO_QUERY_THROW)
          ->createInstance("com.sun.star.sheet.SheetCellRanges"),
      UNO_QUERY_THROW);
  all->addRangeAddresses({ranges.data(), static_cast<sal_Int32>(ranges.size())}, false);
  return all;
}

void putCells(const SheetDocument& document, const Corner& corner, const Table& table, std::size_t begin,
              std::size_t end) {
  if (table.rows() == 0 || end <= begin)
    return;
  const auto cells = corner.range(end - begin, table.rows());
  makeUndoable(cells);
  Reference<css::sheet::XCellRangeData>(cells, UNO_QUERY_THROW)
      ->setDataArray(dataOf(table, begin, end, dayZero(document)));
  const auto blanks = blanksOf(corner, table, begin, end);
  if (blanks.empty())
    return;
  clearCells(together(document, blanks));
}

void putCells(const SheetDocument& document, const Corner& corner, const Table& table) {
  putCells(document, corner, table, 0, table.columns());
}

void putFormulas(const Corner& corner, const std::vector<std::string>& formulas) {
  if (formulas.empty())
    return;
  const auto cells = corner.range(1, formulas.size());
  makeUndoable(cells);
  Sequence<Sequence<rtl::OUString>> lines(static_cast<sal_Int32>(formulas.size()));
  for (std::size_t i = 0; i < formulas.size(); ++i) {
    const rtl::OUString formula = toOffice(formulas[i]);
    lines.getArray()[i] = {&formula, 1};
  }
  Reference<css::sheet::XCellRangeFormula>(cells, UNO_QUERY_THROW)->setFormulaArray(lines);
}

} // namespace wetspell::addin
