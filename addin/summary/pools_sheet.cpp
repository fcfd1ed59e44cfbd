#include "summary/pools_sheet.hpp"

#include "base/text.hpp"
#include "estimate/depth_picture.hpp"
#include "sheet/add_sheet.hpp"
#include "sheet/strip.hpp"
#include "sheet/undo_step.hpp"
#include "summary/blocks.hpp"
#include "summary/figure_columns.hpp"
#include "summary/look.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XDatabaseRange.hpp>
#include <com/sun/star/sheet/XDatabaseRanges.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <fmt/format.h>

#include <map>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

// Rows of the block, from 0.
enum Row : std::size_t { title_row, signs_row, words_row, left_out_row, heading_row, unit_row, first_row };
// Its columns; behind them two a figure.
enum Column : std::size_t { code, name, rows, picture, first_figure };

const rtl::OUString filterName("wetspell_pools_filter");

struct Line {
  std::optional<std::uint32_t> pool; ///< index into Season::pools; nothing: no longer a pool
  std::string code;
};

std::vector<std::string> codesIn(const Owned& block) {
  std::vector<std::string> codes;
  const sal_Int32 first = block.area.StartRow + static_cast<sal_Int32>(first_row);
  if (first > block.area.EndRow)
    return codes;
  const Reference<css::sheet::XCellRangeData> cells(
      block.sheet->getCellRangeByPosition(block.area.StartColumn, first, block.area.StartColumn,
                                          block.area.EndRow),
      UNO_QUERY_THROW);
  for (const auto& line : cells->getDataArray()) {
    rtl::OUString text;
    double number = 0;
    if (line[0] >>= text)
      codes.push_back(fromOffice(text));
    else if (line[0] >>= number)
      codes.push_back(to_text(Cell::of_number(number)));
    else
      codes.emplace_back();
  }
  return codes;
}

bool hasBeside(const Owned& block, sal_Int32 row) {
  constexpr sal_Int32 farthest = 1023; // a column that every file format has
  const auto holds = [&](sal_Int32 from, sal_Int32 to) {
    return from <= to && holdsContent(block.sheet->getCellRangeByPosition(from, row, to, row), true);
  };
  return holds(0, block.area.StartColumn - 1) || holds(block.area.EndColumn + 1, farthest);
}

/// The lines in their order. Rows of the block are taken out or added as needed, whole rows of the sheet.
std::vector<Line> linesFor(const std::optional<Owned>& block, const Season& season) {
  std::map<std::string, std::uint32_t> left;
  for (std::uint32_t pool = 0; pool < season.pools.size(); ++pool)
    left.emplace(season.pools[pool].code, pool);
  std::vector<Line> lines;
  if (block) {
    const auto rows = Reference<css::table::XColumnRowRange>(block->sheet, UNO_QUERY_THROW)->getRows();
    sal_Int32 at = block->area.StartRow + static_cast<sal_Int32>(first_row);
    for (const std::string& code : codesIn(*block)) {
      const auto found = left.find(code);
      if (found == left.end() && !hasBeside(*block, at)) {
        rows->removeByIndex(at, 1);
        continue;
      }
      lines.push_back({found == left.end() ? std::nullopt : std::optional(found->second), code});
      if (found != left.end())
        left.erase(found);
      ++at;
    }
    if (!left.empty())
      rows->insertByIndex(at, static_cast<sal_Int32>(left.size()));
  }
  for (std::uint32_t pool = 0; pool < season.pools.size(); ++pool)
    if (const auto found = left.find(season.pools[pool].code); found != left.end() && found->second == pool)
      lines.push_back({pool, found->first});
  return lines;
}

/// Of every pool: how many rows of the visits are its own, and the first of them.
struct VisitRows {
  std::size_t count = 0;
  std::optional<Place> first;
};
std::vector<VisitRows> visitRowsOf(const Season& season) {
  std::vector<VisitRows> all(season.pools.size());
  for (const Visit& visit : season.visits) {
    if (!visit.pool.known())
      continue;
    VisitRows& mine = all[static_cast<std::size_t>(visit.pool.index)];
    if (mine.count++ == 0)
      mine.first = season.place(Field::visit_pool, visit.row);
  }
  return all;
}

Cell valueOf(const Figure& figure, const Settings& settings) {
  const Figured figured = figure.spec->figured;
  if (figured == Figured::words)
    return figure.words.empty() ? Cell{} : Cell::of_text(figure.words);
  if (!figure.value)
    return {};
  const double value = shown(*figure.value, figured, settings);
  return figured == Figured::date ? Cell::of_date(value) : Cell::of_number(value);
}

Table contents(const SeasonHistory& history, const std::vector<FigureColumn>& columns,
               const std::vector<Line>& lines) {
  const Season& season = history.season;
  const DepthScale scale = depth_scale(history);
  Table table(Place{}, first_row + lines.size(), first_figure + 2 * columns.size());
  const auto say = [&](std::size_t row, std::size_t column, std::string_view words) {
    table.at(row, column) = Cell::of_text(words);
  };
  say(title_row, code, "Pools this season");
  // Not in the first columns, which a print repeats on every page.
  say(signs_row, rows, explained(scale, season.settings));
  say(words_row, rows,
      "Beside every number stands the same in words, with its interval and n, the readings behind it, or why "
      "there is none.");
  say(left_out_row, rows, "What an open finding to fix is about is left out of all figures.");
  say(heading_row, code, "Pool");
  say(heading_row, name, "Name");
  say(heading_row, rows, "Visit rows");
  say(unit_row, rows, "to the first");
  say(heading_row, picture, "Depth over the season");
  for (std::size_t c = 0; c < columns.size(); ++c) {
    const std::size_t at = first_figure + 2 * c;
    say(heading_row, at, columns[c].title);
    const Figured figured = columns[c].spec->figured;
    const std::string unit = shown_unit(figured, season.settings);
    say(unit_row, at, figured == Figured::date ? "day" : unit);
    say(unit_row, at + 1, "in words");
  }
  for (std::size_t l = 0; l < lines.size(); ++l) {
    say(first_row + l, code, lines[l].code);
    if (!lines[l].pool) {
      say(first_row + l, name, "no longer one of the pools");
      continue;
    }
    const std::uint32_t pool = *lines[l].pool;
    say(first_row + l, name, season.pools[pool].name);
    say(first_row + l, picture, depth_picture(history.pools[pool], scale));
    for (std::size_t c = 0; c < columns.size(); ++c) {
      const Figure* figure = columns[c].figures[pool];
      if (figure == nullptr)
        continue;
      table.at(first_row + l, first_figure + 2 * c) = valueOf(*figure, season.settings);
      say(first_row + l, first_figure + 2 * c + 1, in_words(*figure, season.settings));
    }
  }
  for (std::size_t row = 0; row < table.rows(); ++row)
    for (std::size_t column = 0; column < table.columns(); ++column)
      if (table.at(row, column).kind() == CellKind::text && table.at(row, column).text().empty())
        table.at(row, column) = {};
  return table;
}

void putLinks(const Corner& corner, const Season& season, const std::vector<Line>& lines) {
  const auto visits = visitRowsOf(season);
  std::vector<std::string> links;
  for (const Line& line : lines) {
    const VisitRows mine = line.pool ? visits[*line.pool] : VisitRows{};
    links.push_back(mine.first ? linkTo(*mine.first, std::to_string(mine.count)) : line.pool ? "0" : "");
  }
  putFormulas(corner.at(first_row, rows), links);
}

void setWidths(const SheetDocument& document, const Corner& corner, const std::vector<FigureColumn>& columns,
               const Table& cells) {
  constexpr sal_Int32 forCode = 1900, forName = 4200, forRows = 2500, forNumber = 2300, forWords = 5600;
  constexpr sal_Int32 forUnit = 2200; // "in words" and the button of the filter
  setWidth(corner.at(0, code), forCode);
  setWidth(corner.at(0, name), forName);
  setWidth(corner.at(0, rows), forRows);
  constexpr std::size_t in_part = 40; // figures
  for (std::size_t begin = 0; begin < columns.size(); begin += in_part) {
    const UndoPart part(document);
    for (std::size_t c = begin; c < std::min(begin + in_part, columns.size()); ++c) {
      const std::size_t at = first_figure + 2 * c;
      setWidth(corner.at(0, at), columns[c].spec->figured == Figured::words ? forWords : forNumber);
      constexpr std::size_t over_number = 12; // signs of the title that stand above the number
      std::size_t longest = columns[c].title.size() - std::min(columns[c].title.size(), over_number);
      for (std::size_t row = first_row; row < cells.rows(); ++row)
        longest = std::max(longest, cells.at(row, at + 1).text().size());
      setWidth(corner.at(0, at + 1), widthFor(longest, forUnit, 2 * forWords));
    }
  }
}

void layOut(const SheetDocument& document, const Corner& corner, const Settings& settings,
            const std::vector<FigureColumn>& columns, const Table& cells) {
  const std::size_t lines = cells.rows() - first_row;
  const auto part = [&](std::size_t row, std::size_t column, std::size_t height, std::size_t width) {
    return corner.at(row, column).range(width, height);
  };
  const std::size_t width = first_figure + 2 * columns.size();
  dress(part(title_row, 0, 1, 1), Dress::title);
  dress(part(signs_row, 0, heading_row - signs_row, first_figure), Dress::words);
  dress(part(heading_row, 0, 1, width), Dress::heading);
  dress(part(unit_row, 0, 1, width), Dress::unit);
  if (lines > 0) {
    dress(part(first_row, 0, lines, width), Dress::text);
    dress(part(first_row, rows, lines, 1), Dress::link);
    dress(part(first_row, picture, lines, 1), Dress::picture);
    setFormat(part(first_row, code, lines, 2), textFormat(document));
  }
  if (columns.empty())
    return;
  std::vector<css::table::CellRangeAddress> units, unitWords, words;
  std::map<sal_Int32, std::vector<css::table::CellRangeAddress>> numbers; // by their format
  for (std::size_t c = 0; c < columns.size(); ++c) {
    const std::size_t at = first_figure + 2 * c;
    units.push_back(addressOf(part(unit_row, at, 1, 1)));
    unitWords.push_back(addressOf(part(unit_row, at + 1, 1, 1)));
    if (lines == 0)
      continue;
    words.push_back(addressOf(part(first_row, at + 1, lines, 1)));
    numbers[figureFormat(document, columns[c].spec->figured, settings, columns[c].whole)].push_back(
        addressOf(part(first_row, at, lines, 1)));
  }
  align(together(document, units), Side::right);
  dress(together(document, unitWords), Dress::unit_in_words);
  if (!words.empty())
    dress(together(document, words), Dress::in_words);
  for (const auto& [format, cells_of_it] : numbers)
    setFormat(together(document, cells_of_it), format);
}

void filterAndPrint(const SheetDocument& document, const Corner& corner, std::size_t width,
                    std::size_t lines) {
  const auto area = addressOf(corner.range(width, first_row + lines));
  css::table::CellRangeAddress table = area;
  table.StartRow += static_cast<sal_Int32>(unit_row);
  Reference<css::sheet::XDatabaseRanges> ranges;
  Reference<css::beans::XPropertySet>(document, UNO_QUERY_THROW)->getPropertyValue("DatabaseRanges") >>=
      ranges;
  if (!ranges->hasByName(filterName))
    ranges->addNewByName(filterName, table);
  const Reference<css::sheet::XDatabaseRange> range(ranges->getByName(filterName), UNO_QUERY_THROW);
  range->setDataArea(table);
  Reference<css::beans::XPropertySet>(range, UNO_QUERY_THROW)->setPropertyValue("AutoFilter", Any(true));

  const Reference<css::sheet::XPrintAreas> print(corner.sheet, UNO_QUERY_THROW);
  css::table::CellRangeAddress titles = area;
  titles.StartRow += static_cast<sal_Int32>(heading_row);
  titles.EndRow = titles.StartRow + 1;
  titles.EndColumn = titles.StartColumn + 1;
  print->setPrintAreas({&area, 1});
  print->setTitleRows(titles);
  print->setPrintTitleRows(true);
  print->setTitleColumns(titles);
  print->setPrintTitleColumns(true);
}

} // namespace

void writePools(const SheetDocument& document, const SeasonHistory& history, const SeasonSummary& summary) {
  const Season& season = history.season;
  const auto columns = figureColumns(summary);
  const std::size_t width = first_figure + 2 * columns.size();
  const auto old = ownedBlock(document, poolsBlock);
  const auto lines = linesFor(old, season);
  if (old)
    fitColumns(*old, width);
  const Corner corner = old ? Corner{old->sheet, old->area.StartColumn, old->area.StartRow}
                            : Corner{sheetNamed(document, addSheet(document, "Pools this season")), 0, 0};
  own(document, poolsBlock, corner.range(width, first_row + lines.size()));
  constexpr sal_Int32 lineHeight = 520;
  setHeights(corner.range(1, first_row + lines.size()), lineHeight);
  const Table cells = contents(history, columns, lines);
  layOut(document, corner, season.settings, columns, cells);
  setWidths(document, corner, columns, cells);
  putCells(document, corner, cells);
  putLinks(corner, season, lines);
  setHeights(corner.range(1, 1), 2 * lineHeight);
  const DepthScale scale = depth_scale(history);
  constexpr sal_Int32 forSign = 200, least = 4200;
  setWidth(corner.at(0, picture), std::max(least, static_cast<sal_Int32>(scale.signs) * forSign + forSign));
  filterAndPrint(document, corner, width, lines.size());
  setPage(document, corner.sheet, PageKind::columns_over_pages);
  keepInView(document, corner.at(first_row, 2));
}

std::optional<std::uint32_t> poolOfLine(const SheetDocument& document, const Season& season,
                                        const std::string& sheet, std::size_t row) {
  const auto block = ownedBlock(document, poolsBlock);
  if (!block ||
      sheet != fromOffice(Reference<css::container::XNamed>(block->sheet, UNO_QUERY_THROW)->getName()))
    return std::nullopt;
  const auto codes = codesIn(*block);
  const sal_Int32 line = static_cast<sal_Int32>(row - 1 - first_row) - block->area.StartRow;
  if (line < 0 || line >= static_cast<sal_Int32>(codes.size()))
    return std::nullopt;
  for (std::uint32_t pool = 0; pool < season.pools.size(); ++pool)
    if (season.pools[pool].code == codes[static_cast<std::size_t>(line)])
      return pool;
  return std::nullopt;
}

} // namespace wetspell::addin
