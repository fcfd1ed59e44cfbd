#include "gather/gathered_sheets.hpp"

#include "base/text.hpp"
#include "sheet/read_sheets.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <fmt/format.h>

#include <array>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

/// The block with its cells and a heading row; the look is given once, when the sheet is new or has more
/// rows. Columns without a width are not wrapped: hidden ones would make the rows as high as what nobody
/// sees.
template <std::size_t columns>
Corner writeTable(const SheetDocument& document, const char* block, const char* sheet, const Table& table,
                  const std::array<sal_Int32, columns>& widths) {
  const bool fresh = !ownedBlock(document, block);
  Corner corner = takeBlock(document, block, sheet, table.columns(), table.rows());
  const auto all = corner.range(table.columns(), table.rows());
  dress(all, Dress::text);
  setFormat(all, textFormat(document));
  dress(corner.range(table.columns(), 1), Dress::heading);
  for (std::size_t column = 0; column < columns; ++column) {
    if (fresh)
      setWidth(corner.at(0, column), widths[column]);
    wrap(corner.at(0, column).range(1, table.rows()));
  }
  if (fresh)
    keepInView(document, corner.at(1, 0));
  putCells(document, corner, table);
  return corner;
}

} // namespace

Table tableOfBlock(const SheetDocument& document, const char* name) {
  const auto block = ownedBlock(document, name);
  return block ? tableIn(document, *block) : Table();
}

void writeToChoose(const SheetDocument& document, const Table& lines) {
  constexpr std::array<sal_Int32, choose_shown> widths{6200, 3600, 4200, 4200, 4600, 3600, 4600, 5200};
  const Corner corner = writeTable(document, chooseBlock, "To choose", lines, widths);
  for (std::size_t column = choose_shown; column < choose_headings.size(); ++column)
    Reference<css::beans::XPropertySet>(
        Reference<css::table::XColumnRowRange>(corner.at(0, column).range(1, 1), UNO_QUERY_THROW)
            ->getColumns(),
        UNO_QUERY_THROW)
        ->setPropertyValue("IsVisible", Any(false));
  if (lines.rows() < 2)
    return;
  const Reference<css::beans::XPropertySet> choice(corner.at(1, choice_column).range(1, lines.rows() - 1),
                                                   UNO_QUERY_THROW);
  const Reference<css::beans::XPropertySet> offered(choice->getPropertyValue("Validation"), UNO_QUERY_THROW);
  offered->setPropertyValue("Type", Any(css::sheet::ValidationType_LIST));
  offered->setPropertyValue("ShowErrorMessage", Any(false)); // a note in the cell is nobody's mistake
  Reference<css::sheet::XSheetCondition>(offered, UNO_QUERY_THROW)
      ->setFormula1(toOffice(fmt::format("\"{}\";\"{}\"", choose_season, choose_came)));
  choice->setPropertyValue("Validation", Any(offered));
}

void writeGathered(const SheetDocument& document, const Table& files) {
  constexpr std::array<sal_Int32, 7> widths{6200, 2200, 3400, 2600, 2400, 2200, 16000};
  const Corner corner = writeTable(document, gatheredBlock, "Gathered", files, widths);
  if (files.rows() > 1)
    setFormat(corner.at(1, 1).range(5, files.rows() - 1), numberFormat(document, "General"));
}

} // namespace wetspell::addin
