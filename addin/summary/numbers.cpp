#include "summary/numbers.hpp"

#include "sheet/read_sheets.hpp"
#include "summary/blocks.hpp"
#include "summary/chart_choice.hpp"
#include "summary/look.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace wetspell::addin {

namespace {

enum Row : std::size_t { title_row, words_row, chart_row, heading_row };
constexpr std::size_t gap = 1; // empty columns between two charts' numbers

/// Where the numbers of one chart stand, and how its ranges are called.
struct Part {
  const ChartTable* table;
  Corner heading;

  [[nodiscard]] std::string label(std::size_t column) const {
    return nameOf(heading.at(0, column).range(1, 1));
  }
  [[nodiscard]] std::string values(std::size_t column) const {
    return values(column, 1, table->cells.rows() - 1);
  }
  [[nodiscard]] std::string values(std::size_t column, std::size_t first, std::size_t count) const {
    return nameOf(heading.at(first, column).range(1, count));
  }
};

/// The first and the last day in a column, as the document counts days.
std::pair<double, double> daysOf(const SheetDocument& document, const Table& cells, std::size_t column) {
  double first = cells.at(1, column).number(), last = first;
  for (std::size_t row = 1; row < cells.rows(); ++row) {
    first = std::min(first, cells.at(row, column).number());
    last = std::max(last, cells.at(row, column).number());
  }
  const double zero = dayZero(document);
  return {first - zero, last - zero};
}

void put(const SheetDocument& document, const Part& part, const Settings& settings) {
  const Table& cells = part.table->cells;
  constexpr sal_Int32 forNumber = 2600;
  for (std::size_t c = 0; c < cells.columns(); ++c)
    setWidth(part.heading.at(0, c), forNumber);
  dress(part.heading.range(cells.columns(), 1), Dress::heading);
  dress(part.heading.at(1, 0).range(cells.columns(), cells.rows() - 1), Dress::text);
  for (std::size_t c = 0; c < cells.columns(); ++c) {
    const CellKind kind = cells.at(1, c).kind();
    if (kind != CellKind::text)
      setFormat(part.heading.at(1, c).range(1, cells.rows() - 1),
                kind == CellKind::date ? dateFormat(document, false)
                                       : figureFormat(document, Figured::depth, settings, false));
  }
  putCells(document, part.heading, cells);
}

} // namespace

Numbers writeNumbers(const SheetDocument& document, const SeasonHistory& history,
                     const SeasonSummary& summary, const SummaryOptions& options) {
  const Season& season = history.season;
  const DepthTable depths = depthTable(history);
  const ChartTable sizes = sizeTable(season, summary);
  const ChartTable wet = wetTable(summary, options.level);
  const ChartTable species = speciesTable(season, summary);

  std::size_t width = 1, rows = heading_row;
  for (const ChartTable* each : {static_cast<const ChartTable*>(&depths), &sizes, &wet, &species})
    if (!each->empty()) {
      width += each->cells.columns() + gap;
      rows = std::max(rows, heading_row + each->cells.rows());
    }
  const Corner corner = takeBlock(document, numbersBlock, "Numbers behind the charts", width, rows);
  clearCells(corner.range(width, rows));
  Table head(Place{}, heading_row, width);
  head.at(title_row, 0) = Cell::of_text("Numbers behind the charts");
  head.at(words_row, 0) =
      Cell::of_text("The charts of the programme's sheet are drawn from these numbers; every "
                    "summary writes them anew.");
  Numbers numbers;
  std::size_t column = 0;
  const auto place = [&](const ChartTable& table) {
    Part part{&table, corner.at(heading_row, column)};
    put(document, part, season.settings);
    head.at(chart_row, column) = Cell::of_text(table.title);
    column += table.cells.columns() + gap;
    return part;
  };
  dress(corner.range(width, heading_row), Dress::words);
  if (!depths.empty()) {
    const Part part = place(depths);
    for (const PoolRows& pool : depths.pools)
      numbers.depths.push_back({nameOf(part.heading.at(pool.first, 0).range(1, 1)),
                                part.values(1, pool.first, pool.count),
                                part.values(2, pool.first, pool.count),
                                {},
                                {}});
    numbers.depth_words = depths.words;
    std::tie(numbers.first_day, numbers.last_day) = daysOf(document, depths.cells, 1);
  }
  if (!sizes.empty()) {
    const Part part = place(sizes);
    numbers.sizes.push_back({part.label(1), part.values(0), part.values(1), part.values(2), part.values(3)});
    numbers.size_title = sizes.title;
    numbers.size_words = sizes.words;
  }
  if (!wet.empty()) {
    const Part part = place(wet);
    for (std::size_t c = 1; c < wet.cells.columns(); ++c)
      numbers.wet.push_back({part.label(c), part.values(0), part.values(c), {}, {}});
    numbers.wet_words = wet.words;
    std::tie(numbers.first_wet_day, numbers.last_wet_day) = daysOf(document, wet.cells, 0);
  }
  if (!species.empty()) {
    const Part part = place(species);
    for (std::size_t c = 1; c < species.cells.columns(); ++c)
      numbers.species.push_back({part.label(c), part.values(0), part.values(c), {}, {}});
    numbers.species_words = species.words;
  }
  putCells(document, corner, head);
  dress(corner.range(1, 1), Dress::title);
  constexpr sal_Int32 titleHeight = 1000;
  setHeights(corner.range(1, 1), titleHeight);
  setPage(document, corner.sheet, PageKind::one_wide);
  keepInView(document, corner.at(heading_row + 1, 0));
  return numbers;
}

} // namespace wetspell::addin
