#include "summary/ask_sheet.hpp"

#include "sheet/strip.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>

#include <algorithm>
#include <array>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr std::array<sal_Int32, 4> widths{2600, 4600, 2400, 17000}; // 1/100 mm
constexpr sal_Int32 lineHeight = 520;

} // namespace

void writeAskList(const SheetDocument& document, const Season& season, const std::vector<AskList>& lists) {
  const Table list = ask_table(season, lists, Place{});
  const std::size_t rows = list.rows() + 1;
  const Corner corner = takeBlock(document, askBlock, "Ask list", widths.size(), rows);
  for (std::size_t column = 0; column < widths.size(); ++column)
    setWidth(corner.at(0, column), widths[column]);
  const auto all = corner.range(widths.size(), rows);
  setHeights(all, lineHeight);
  dress(all, Dress::text);
  Reference<css::beans::XPropertySet>(all, UNO_QUERY_THROW)
      ->setPropertyValue("VertJustify", css::uno::Any(css::table::CellVertJustify2::TOP));
  setFormat(all, numberFormat(document, "General"));
  dress(corner.range(widths.size(), 1), Dress::words);
  dress(corner.at(1, 0).range(widths.size(), 1), Dress::heading);
  align(corner.at(1, 2).range(1, 1), Side::right);

  Table words(Place{}, 1, 1);
  words.at(0, 0) = Cell::of_text(
      lists.empty()
          ? "Nobody is to be asked anything."
          : "Copy a text into a mail. What comes back goes beside the finding on the sheet Findings.");
  putCells(document, corner, words);
  putCells(document, corner.at(1, 0), list);
  if (!lists.empty()) {
    const auto below = corner.at(2, 0).range(widths.size(), lists.size());
    wrap(below);
    // Finding a row's height takes about a millisecond.
    constexpr std::size_t looked = 300;
    findHeights(corner.at(2, 0).range(widths.size(), std::min(lists.size(), looked)));
  }
  const auto area = addressOf(all);
  Reference<css::sheet::XPrintAreas>(corner.sheet, UNO_QUERY_THROW)->setPrintAreas({&area, 1});
  setPage(document, corner.sheet, PageKind::one_wide);
}

} // namespace wetspell::addin
