#include "summary/programme_sheet.hpp"

#include "sheet/strip.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"
#include "summary/programme_content.hpp"
#include "summary/season_charts.hpp"

#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>

#include <algorithm>
#include <array>
#include <map>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 lineHeight = 520; // 1/100 mm

css::awt::Point positionOf(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 column,
                           sal_Int32 row) {
  css::awt::Point point;
  Reference<css::beans::XPropertySet>(sheet->getCellByPosition(column, row), UNO_QUERY_THROW)
      ->getPropertyValue("Position") >>= point;
  return point;
}

/// The cells below a chart.
css::table::CellRangeAddress cellsUnder(const Reference<css::sheet::XSpreadsheet>& sheet,
                                        const css::awt::Rectangle& place) {
  css::table::CellRangeAddress cells = addressOf(sheet);
  cells.StartColumn = cells.StartRow = 0;
  while (positionOf(sheet, cells.StartColumn + 1, 0).X <= place.X)
    ++cells.StartColumn;
  while (positionOf(sheet, 0, cells.StartRow + 1).Y <= place.Y)
    ++cells.StartRow;
  cells.EndColumn = cells.StartColumn;
  while (positionOf(sheet, cells.EndColumn + 1, 0).X < place.X + place.Width)
    ++cells.EndColumn;
  cells.EndRow = cells.StartRow;
  while (positionOf(sheet, 0, cells.EndRow + 1).Y < place.Y + place.Height)
    ++cells.EndRow;
  return cells;
}

void layOut(const SheetDocument& document, const Corner& corner, const ProgrammeContent& content,
            const Settings& settings) {
  const std::size_t rows = content.cells.rows();
  const auto row = [&](std::size_t at, std::size_t column = 0, std::size_t width = programme_columns) {
    return corner.at(at, column).range(width, 1);
  };
  constexpr std::array<sal_Int32, programme_columns> widths{8600, 4600, 2400, 1900, 2400,
                                                            2400, 1900, 1300, 9000};
  for (std::size_t c = 0; c < widths.size(); ++c)
    setWidth(corner.at(0, c), widths[c]);
  const auto all = corner.range(programme_columns, rows);
  setHeights(all, lineHeight);
  dress(all, Dress::text);
  setFormat(all, numberFormat(document, "General"));
  const auto bare = [&](std::size_t at, Dress as) { dress(row(at), as); };
  bare(0, Dress::title);
  setHeights(row(0), 2 * lineHeight);
  for (std::size_t at = 1; at < content.headings.front(); ++at)
    bare(at, Dress::words);
  for (const std::size_t at : content.words)
    bare(at, Dress::words);
  for (const std::size_t at : content.sections)
    bare(at, Dress::section);
  for (const std::size_t at : content.headings)
    bare(at, Dress::heading);
  for (const std::size_t column : {value, from, to, level, n})
    align(row(content.headings.front(), column, 1), Side::right);
  for (const std::size_t column : {unit, note})
    indent(row(content.headings.front(), column, 1));
  std::map<sal_Int32, std::vector<css::table::CellRangeAddress>> numbers; // by their format
  for (const FigureRow& figure : content.figures)
    for (const std::size_t column : {value, from, to})
      numbers[figureFormat(document, figure.figured, settings, figure.whole)].push_back(
          addressOf(row(figure.row, column, 1)));
  for (const auto& [format, cells] : numbers)
    setFormat(together(document, cells), format);
  if (!content.left_out.empty())
    dress(corner.at(content.first_left_out, 0).range(1, content.left_out.size()), Dress::link);
  // Notes are sentences. Finding a row's height takes about a millisecond, so far down they are on one line.
  constexpr std::size_t looked = 300;
  const std::size_t first = content.headings.front() + 1, end = std::min(rows, first + looked);
  if (end > first)
    for (const std::size_t column : {of_what, note})
      wrap(corner.at(first, column).range(1, end - first));
  if (!content.figures.empty())
    for (const std::size_t column : {unit, note})
      dress(corner.at(first, column).range(1, content.figures.size()), Dress::in_words);
}

void putLinks(const Corner& corner, const ProgrammeContent& content) {
  std::vector<std::string> links;
  for (const auto& place : content.left_out)
    links.push_back(linkTo(*place, quoted(to_text(*place))));
  putFormulas(corner.at(content.first_left_out, 0), links);
}

} // namespace

void writeProgramme(const Reference<css::uno::XComponentContext>& context, const SheetDocument& document,
                    const SeasonHistory& history, const SeasonSummary& summary, const Numbers& numbers) {
  const ProgrammeContent content = programmeContent(history, summary);
  const std::size_t rows = content.cells.rows();
  const Corner corner =
      takeBlock(document, programmeBlock, "Programme this season", programme_columns, rows, numbersBlock);
  layOut(document, corner, content, history.season.settings);
  putCells(document, corner, content.cells);
  putLinks(corner, content);
  const std::size_t first = content.headings.front() + 1;
  constexpr std::size_t looked = 300;
  if (rows > first)
    findHeights(corner.at(first, 0).range(1, std::min(looked, rows - first)));

  const Corner beside = corner.at(0, programme_columns + 1);
  const css::awt::Point start = positionOf(corner.sheet, beside.column, beside.row);
  const auto places = putSeasonCharts({context, document, corner.sheet}, start.X, start.Y + lineHeight,
                                      numbers, history.season.settings);
  std::vector<css::table::CellRangeAddress> areas{addressOf(corner.range(programme_columns, rows))};
  for (const css::awt::Rectangle& place : places)
    areas.push_back(cellsUnder(corner.sheet, place));
  Reference<css::sheet::XPrintAreas>(corner.sheet, UNO_QUERY_THROW)
      ->setPrintAreas({areas.data(), static_cast<sal_Int32>(areas.size())});
  setPage(document, corner.sheet, PageKind::one_wide);
}

} // namespace wetspell::addin
