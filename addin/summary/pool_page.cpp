#include "summary/pool_page.hpp"

#include "base/text.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/strip.hpp"
#include "sheet/undo_step.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"
#include "summary/page_content.hpp"
#include "summary/season_charts.hpp"

#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/util/XMergeable.hpp>

#include <algorithm>
#include <array>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 lineHeight = 500; // 1/100 mm

Reference<css::table::XCellRange> part(const Corner& page, std::size_t row, std::size_t column,
                                       std::size_t height, std::size_t width) {
  return page.at(row, column).range(width, height);
}

/// Whole columns of numbers below the headings of the visits.
void setFormats(const SheetDocument& document, const Corner& cells, const PageContent& content,
                const Settings& settings) {
  const auto column = [&](PageColumn which, sal_Int32 format) {
    setFormat(part(cells, content.visits_heading + 1, which, content.visits, 1), format);
  };
  column(day, dateFormat(document, false));
  column(depth, figureFormat(document, Figured::depth, settings, false));
  column(dry, numberFormat(document, "[=0]\"dry\";General")); // 0 for the chart, a word for the reader
  column(full, figureFormat(document, Figured::count, settings, true));
  column(temperature, figureFormat(document, Figured::temperature, settings, false));
  column(area, figureFormat(document, Figured::area, settings, false));
}

/// A finding's message needs the width of several columns.
void spreadFindings(const SheetDocument& document, const Corner& cells, const PageContent& content) {
  const UndoPart of(document);
  constexpr std::size_t from = 2, signs = 95; // signs that have room in a line
  for (std::size_t i = 0; i < content.findings; ++i) {
    const std::size_t row = content.findings_heading + 1 + i;
    const auto message = part(cells, row, from, 1, page_gap - from);
    Reference<css::util::XMergeable>(message, UNO_QUERY_THROW)->merge(true);
    wrap(message);
    const std::size_t lines = 1 + content.cells.at(row, from).text().size() / signs;
    setHeights(message, std::max<sal_Int32>(lineHeight, static_cast<sal_Int32>(lines) * (lineHeight - 60)));
  }
}

void layOut(const SheetDocument& document, const Corner& cells, const PageContent& content,
            const Settings& settings) {
  const std::size_t rows = content.cells.rows();
  const auto all = part(cells, 0, 0, rows, page_columns);
  Reference<css::util::XMergeable>(all, UNO_QUERY_THROW)->merge(false);
  constexpr std::array<sal_Int32, page_columns> widths{2300, 2900, 2000, 1100, 1500, 2100,
                                                       2000, 2100, 3400, 500,  5200, 8200};
  for (std::size_t c = 0; c < widths.size(); ++c)
    setWidth(cells.at(0, c), widths[c]);
  dress(all, Dress::words);
  setFormat(all, numberFormat(document, "General"));
  setHeights(all, lineHeight);
  dress(part(cells, 0, 0, 1, 1), Dress::title);
  setHeights(part(cells, 0, 0, 1, 1), 2 * lineHeight);
  dress(part(cells, content.visits_heading, 0, 1, page_gap), Dress::heading);
  dress(part(cells, content.figures_heading, figure_title, 1, 2), Dress::heading);
  for (const std::size_t column : {depth, full, temperature, area})
    align(part(cells, content.visits_heading, column, 1, 1), Side::right);
  for (const std::size_t column : {dry, people})
    indent(part(cells, content.visits_heading, column, 1, 1));
  if (content.visits > 0) {
    dress(part(cells, content.visits_heading + 1, 0, content.visits, page_gap), Dress::text);
    dress(part(cells, content.visits_heading + 1, people, content.visits, 1), Dress::in_words);
    align(part(cells, content.visits_heading + 1, day, content.visits, 1), Side::left);
    setFormats(document, cells, content, settings);
  }
  if (content.figures > 0) {
    const auto list = part(cells, content.figures_heading + 1, figure_title, content.figures, 2);
    dress(list, Dress::text);
    wrap(list);
    findHeights(list);
  }
  if (content.findings > 0) {
    dress(part(cells, content.findings_section, 0, 1, 1), Dress::section);
    dress(part(cells, content.findings_heading, 0, 1, page_gap), Dress::heading);
    dress(part(cells, content.findings_heading + 1, 0, content.findings, page_gap), Dress::text);
  }
}

css::awt::Rectangle placeOf(const Reference<css::table::XCellRange>& cells) {
  const Reference<css::beans::XPropertySet> properties(cells, UNO_QUERY_THROW);
  css::awt::Point position;
  css::awt::Size size;
  properties->getPropertyValue("Position") >>= position;
  properties->getPropertyValue("Size") >>= size;
  return {position.X, position.Y, size.Width, size.Height};
}

PoolDepths depthsOf(const SheetDocument& document, const Corner& cells, const PageContent& content,
                    const Settings& settings) {
  const auto values = [&](PageColumn column) {
    return nameOf(part(cells, content.visits_heading + 1, column, content.visits, 1));
  };
  const auto heading = [&](PageColumn column) {
    return nameOf(part(cells, content.visits_heading, column, 1, 1));
  };
  const double first = content.cells.at(content.visits_heading + 1, day).number();
  const double last = content.cells.at(content.visits_heading + content.visits, day).number();
  const double zero = dayZero(document);
  return {{heading(depth), values(day), values(depth), {}, {}},
          {heading(dry), values(day), values(dry), {}, {}},
          std::min(first, settings.first_day.value_or(first)) - zero,
          std::max(last, settings.last_day.value_or(last)) - zero};
}

} // namespace

std::string writePoolPage(const Reference<css::uno::XComponentContext>& context,
                          const SheetDocument& document, const SeasonHistory& history,
                          const CheckReport& report, const PoolSummary& summary) {
  const Season& season = history.season;
  const PageContent content = pageContent(history, report, summary);
  const std::string& code = season.pools[summary.pool].code;
  const Corner corner =
      takeBlock(document, pageBlock(code), "Page of " + code, page_columns, content.cells.rows());
  layOut(document, corner, content, season.settings);
  putCells(document, corner, content.cells);
  if (content.figures > 0)
    findHeights(part(corner, content.figures_heading + 1, figure_title, content.figures, 1));
  spreadFindings(document, corner, content);
  if (content.visits > 0)
    putPoolChart({context, document, corner.sheet},
                 placeOf(part(corner, content.chart_row, 0, content.chart_rows, page_gap)),
                 depthsOf(document, corner, content, season.settings), season.settings);
  const auto area = addressOf(corner.range(page_columns, content.cells.rows()));
  Reference<css::sheet::XPrintAreas>(corner.sheet, UNO_QUERY_THROW)->setPrintAreas({&area, 1});
  setPage(document, corner.sheet, PageKind::one_page);
  return fromOffice(Reference<css::container::XNamed>(corner.sheet, UNO_QUERY_THROW)->getName());
}

} // namespace wetspell::addin
