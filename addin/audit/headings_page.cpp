#include "audit/headings_page.hpp"

#include "audit/blocks.hpp"
#include "audit/drop_down.hpp"
#include "audit/links.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/strip.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"
#include "templates/look.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>

#include <algorithm>
#include <array>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

enum Row : std::size_t { title_row, words_row, more_words_row, heading_row = 4, first_row };
// A gap, then the words that the drop-downs offer.
enum Column : std::size_t { field_words = headings_columns + 1, unit_words, all_columns };
constexpr std::array<sal_Int32, all_columns> widths{5200, 4600, 5600, 1900, 2300,
                                                    9800, 5600, 900,  5600, 2900};
constexpr sal_Int32 lineHeight = 520; // 1/100 mm

Table contents(const HeadingsSheet& headings, const std::vector<std::string>& fields,
               const std::vector<std::string>& units) {
  const std::size_t rows = std::max({headings.cells.rows(), fields.size() + 1, units.size() + 1});
  Table table(Place{}, heading_row + rows, all_columns);
  const auto say = [&](std::size_t row, std::size_t column, const std::string& words) {
    table.at(row, column) = Cell::of_text(words);
  };
  say(title_row, 0, "Headings");
  say(words_row, 0,
      "What the audit took every heading for. Correct Field and Unit where it is wrong and run the audit "
      "again: your "
      "word counts from then on, for every table that has the heading.");
  say(more_words_row, 0,
      "'leave alone' keeps a column out. An emptied field hands the heading back to the audit. A field that "
      "it left "
      "empty was not sure enough (below 0.6).");
  for (std::size_t row = 0; row < headings.cells.rows(); ++row)
    for (std::size_t column = 0; column < headings_columns; ++column)
      table.at(heading_row + row, column) = headings.cells.at(row, column);
  say(heading_row, field_words, "Words for Field");
  say(heading_row, unit_words, "Words for Unit");
  for (std::size_t i = 0; i < fields.size(); ++i)
    say(first_row + i, field_words, fields[i]);
  for (std::size_t i = 0; i < units.size(); ++i)
    say(first_row + i, unit_words, units[i]);
  return table;
}

void layOut(const SheetDocument& document, const Corner& corner, std::size_t rows, std::size_t lines) {
  for (std::size_t column = 0; column < widths.size(); ++column)
    setWidth(corner.at(0, column), widths[column]);
  setHeights(corner.range(1, rows), lineHeight);
  setHeights(corner.range(1, 1), 2 * lineHeight);
  dress(corner.range(1, 1), Dress::title);
  dress(corner.at(words_row, 0).range(1, heading_row - words_row), Dress::words);
  dress(corner.at(heading_row, 0).range(headings_columns, 1), Dress::heading);
  align(corner.at(heading_row, headings_confidence).range(1, 1), Side::right);
  indent(corner.at(heading_row, headings_reason).range(1, 1));
  dress(corner.at(heading_row, field_words).range(all_columns - field_words, 1), Dress::heading);
  const std::size_t below = rows - first_row;
  dress(corner.at(first_row, field_words).range(all_columns - field_words, below), Dress::words);
  setFormat(corner.at(first_row, 0).range(1, below), textFormat(document));
  setFormat(corner.at(first_row, headings_field).range(std::size_t{all_columns} - headings_field, below),
            textFormat(document));
  if (lines == 0)
    return;
  dress(corner.at(first_row, 0).range(headings_columns, lines), Dress::text);
  dress(corner.at(first_row, headings_reason).range(1, lines), Dress::in_words);
  dress(corner.at(first_row, headings_written).range(1, lines), Dress::words);
  setFormat(corner.at(first_row, headings_confidence).range(1, lines), numberFormat(document, "0.00"));
  const Reference<css::beans::XPropertySet> yours(corner.at(first_row, headings_field).range(2, lines),
                                                  UNO_QUERY_THROW);
  yours->setPropertyValue("CellBackColor", css::uno::Any(colourOf(workbook::colour::lantern)));
}

} // namespace

Corrections correctionsIn(const SheetDocument& document) {
  const auto block = ownedBlock(document, headingsBlock);
  if (!block)
    return {};
  auto corrections = corrections_on(tableIn(document, *block));
  if (!corrections)
    refuse(corrections.error().text);
  return std::move(corrections).value();
}

void writeHeadingsPage(const SheetDocument& document, const Audit& audit, const Corrections& corrections) {
  const HeadingsSheet headings = headings_sheet(audit, corrections);
  const std::size_t lines = headings.cells.rows() - 1;
  const auto fields = words_for_field(audit);
  const auto units = words_for_unit();
  const Table cells = contents(headings, fields, units);
  const Corner corner = takeBlock(document, headingsBlock, "Headings", all_columns, cells.rows());
  layOut(document, corner, cells.rows(), lines);
  putCells(document, corner, cells);
  std::vector<Link> links;
  for (std::size_t row = 1; row <= lines; ++row)
    links.push_back({to_text(headings.cells.at(row, headings_where)), headings.leads_to[row]});
  putLinks(document, corner.at(first_row, headings_where), links);
  if (lines > 0) {
    offer(corner.at(first_row, headings_field).range(1, lines),
          corner.at(first_row, field_words).range(1, fields.size()), "What the column holds",
          "'leave alone' keeps it out; empty: the audit decides.");
    offer(corner.at(first_row, headings_unit).range(1, lines),
          corner.at(first_row, unit_words).range(1, units.size()), "The unit of bare numbers",
          "Empty: the audit decides. A unit that stands in a cell counts there.");
    wrap(corner.at(first_row, headings_reason).range(1, lines));
    findHeights(corner.at(first_row, 0).range(1, lines));
  }
  const auto area = addressOf(corner.range(headings_written, first_row + lines));
  const Reference<css::sheet::XPrintAreas> print(corner.sheet, UNO_QUERY_THROW);
  print->setPrintAreas({&area, 1});
  print->setTitleRows(addressOf(corner.at(heading_row, 0).range(1, 1)));
  print->setPrintTitleRows(true);
  setPage(document, corner.sheet, PageKind::one_wide);
  keepInView(document, corner.at(first_row, 1));
}

} // namespace wetspell::addin
