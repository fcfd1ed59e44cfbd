#include "summary/ask_sheet.hpp"

#include "sheet/strip.hpp"
#include "sheet/undo_step.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>

#include <algorithm>
#include <array>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr std::array<sal_Int32, ask_columns> widths{2600, 3600, 1900, 2400, 3000,
                                                    3000, 8200, 6600, 5200}; // 1/100 mm
constexpr sal_Int32 lineHeight = 520;
constexpr std::size_t first_row = 2; // below the words and the headings

std::vector<std::string> linksOf(const std::vector<AskList>& lists) {
  std::vector<std::string> links;
  for (const AskList& list : lists)
    for (const Question& question : list.questions)
      links.push_back(linkTo(question.place, quoted(question.what)));
  return links;
}

void layOut(const SheetDocument& document, const Corner& corner, std::size_t questions) {
  for (std::size_t column = 0; column < widths.size(); ++column)
    setWidth(corner.at(0, column), widths[column]);
  const auto all = corner.range(ask_columns, first_row + questions);
  setHeights(all, lineHeight);
  dress(all, Dress::text);
  Reference<css::beans::XPropertySet>(all, UNO_QUERY_THROW)
      ->setPropertyValue("VertJustify", css::uno::Any(css::table::CellVertJustify2::TOP));
  setFormat(all, numberFormat(document, "General"));
  dress(corner.range(ask_columns, 1), Dress::words);
  dress(corner.at(1, 0).range(ask_columns, 1), Dress::heading);
  if (questions == 0)
    return;
  const auto wrapped =
      corner.at(first_row, AskColumn::name).range(AskColumn::letter - AskColumn::name, questions);
  wrap(wrapped);
  const auto links = corner.at(first_row, AskColumn::what).range(1, questions);
  dress(links, Dress::link);
  Reference<css::beans::XPropertySet>(links, UNO_QUERY_THROW)
      ->setPropertyValue("VertJustify", css::uno::Any(css::table::CellVertJustify2::TOP));
}

sal_Int32 heightOf(const Reference<css::table::XCellRange>& row) {
  sal_Int32 height = 0;
  Reference<css::beans::XPropertySet>(Reference<css::table::XColumnRowRange>(row, UNO_QUERY_THROW)->getRows(),
                                      UNO_QUERY_THROW)
      ->getPropertyValue("Height") >>= height;
  return height;
}

/// A letter has many lines, and its cell shows the first: the row stays as high as the question beside it.
void putLetters(const SheetDocument& document, const Corner& corner, const Table& list,
                const std::vector<AskList>& lists) {
  constexpr std::size_t in_part = 40; // a letter is two changes
  std::size_t row = 1;
  for (std::size_t begin = 0; begin < lists.size(); begin += in_part) {
    const UndoPart part(document);
    for (std::size_t i = begin; i < std::min(begin + in_part, lists.size()); ++i) {
      const auto cells = corner.at(row + 1, 0).range(ask_columns, 1);
      const sal_Int32 height = heightOf(cells);
      Table letter(Place{}, 1, 1);
      letter.at(0, 0) = list.at(row, AskColumn::letter);
      putCells(document, corner.at(row + 1, AskColumn::letter), letter);
      setHeights(cells, height);
      row += lists[i].questions.size();
    }
  }
}

} // namespace

void writeAskList(const SheetDocument& document, const Season& season, const std::vector<AskList>& lists) {
  const Table list = ask_table(season, lists, Place{});
  const std::size_t questions = list.rows() - 1;
  const Corner corner = takeBlock(document, askBlock, "Ask list", ask_columns, first_row + questions);
  {
    const UndoPart part(document);
    if (questions > 0) // letters of the list before make their rows tall
      clearCells(corner.at(first_row, AskColumn::letter).range(1, questions));
    layOut(document, corner, questions);
  }
  Table words(Place{}, 1, 1);
  words.at(0, 0) = Cell::of_text(
      lists.empty()
          ? "Nobody is to be asked anything."
          : "A click on 'What' leads to the cell. A person's first row holds the whole text for a mail "
            "in the last column: go there, press F2, select all and copy.");
  putCells(document, corner, words);
  putCells(document, corner.at(1, 0), list, 0, AskColumn::letter);
  Table heading(Place{}, 1, 1);
  heading.at(0, 0) = list.at(0, AskColumn::letter);
  putCells(document, corner.at(1, AskColumn::letter), heading);
  if (questions > 0) {
    putFormulas(corner.at(first_row, AskColumn::what), linksOf(lists));
    // Finding a row's height takes about a millisecond.
    constexpr std::size_t looked = 1000;
    findHeights(corner.at(first_row, 0).range(ask_columns, std::min(questions, looked)));
    putLetters(document, corner, list, lists);
  }
  const auto area = addressOf(corner.range(AskColumn::letter, first_row + questions)); // no letters on paper
  Reference<css::sheet::XPrintAreas>(corner.sheet, UNO_QUERY_THROW)->setPrintAreas({&area, 1});
  setPage(document, corner.sheet, PageKind::one_wide);
}

} // namespace wetspell::addin
