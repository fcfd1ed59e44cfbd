#include "summary/chart_choice.hpp"

#include "summary/figure_columns.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <numeric>

namespace wetspell::addin {

namespace {

constexpr std::size_t most_lines = 60, most_dots = 120, most_bars = 160;

Cell words(std::string_view text) {
  return Cell::of_text(text);
}

/// At most `most` of them, evenly spread, the first and the last among them.
template <class Each> std::vector<Each> evenly(const std::vector<Each>& all, std::size_t most) {
  if (all.size() <= most)
    return all;
  std::vector<Each> some;
  for (std::size_t i = 0; i < most; ++i)
    some.push_back(all[i * (all.size() - 1) / (most - 1)]);
  return some;
}

std::string chosen(std::size_t drawn, std::size_t all, std::string_view order) {
  if (drawn == all)
    return fmt::format("All {} pools with a reading are drawn.", all);
  return fmt::format(
      "{} of {} pools are drawn, evenly taken in the order of {}, the first and the last among them.", drawn,
      all, order);
}

std::string with_unit(std::string_view words, const std::string& unit) {
  return unit.empty() ? std::string(words) : fmt::format("{} ({})", words, unit);
}

} // namespace

DepthTable depthTable(const SeasonHistory& history) {
  const Settings& settings = history.season.settings;
  struct Ranked {
    std::uint32_t pool;
    double deepest;
    std::size_t depths;
  };
  std::vector<Ranked> ranked;
  for (const PoolHistory& pool : history.pools) {
    Ranked mine{pool.pool, -1, 0};
    for (const CountedVisit& visit : pool.visits)
      if (visit.depth) {
        mine.deepest = std::max(mine.deepest, visit.depth->value);
        ++mine.depths;
      }
    if (mine.depths > 0)
      ranked.push_back(mine);
  }
  const std::size_t all = ranked.size();
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const auto& a, const auto& b) { return a.deepest < b.deepest; });
  ranked = evenly(ranked, most_lines);
  std::sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.pool < b.pool; });

  DepthTable table;
  table.title = "Depth over the season";
  table.words = chosen(ranked.size(), all, "their greatest depth") + " A line at 0 is a dry pool.";
  const std::size_t rows =
      std::accumulate(ranked.begin(), ranked.end(), std::size_t{1},
                      [](std::size_t sum, const Ranked& each) { return sum + each.depths; });
  table.cells = Table(Place{}, rows, 3);
  table.cells.at(0, 0) = words("Pool");
  table.cells.at(0, 1) = words("Day");
  table.cells.at(0, 2) = words(with_unit("Depth", shown_unit(Figured::depth, settings)));
  std::size_t row = 1;
  for (const Ranked& each : ranked) {
    table.pools.push_back({each.pool, row, each.depths});
    for (const CountedVisit& visit : history.pools[each.pool].visits) {
      if (!visit.depth)
        continue;
      table.cells.at(row, 0) = words(history.season.pools[each.pool].code);
      table.cells.at(row, 1) = Cell::of_date(visit.day);
      table.cells.at(row++, 2) = Cell::of_number(shown(visit.depth->value, Figured::depth, settings));
    }
  }
  return table;
}

ChartTable sizeTable(const Season& season, const SeasonSummary& summary) {
  ChartTable table;
  const auto columns = figureColumns(summary);
  const auto area = std::find_if(columns.begin(), columns.end(), [](const FigureColumn& column) {
    return column.spec->figured == Figured::area &&
           std::any_of(column.figures.begin(), column.figures.end(),
                       [](const Figure* figure) { return figure != nullptr && figure->value; });
  });
  if (area == columns.end())
    return table;
  std::vector<std::pair<const Figure*, std::string>> sorted;
  for (std::size_t pool = 0; pool < area->figures.size(); ++pool)
    if (const Figure* figure = area->figures[pool]; figure != nullptr && figure->value)
      sorted.emplace_back(figure, season.pools[pool].code);
  std::stable_sort(sorted.begin(), sorted.end(), [](const auto& one, const auto& other) {
    return *one.first->value < *other.first->value;
  });
  const std::size_t all = sorted.size();
  sorted = evenly(sorted, most_dots);
  const auto inUnit = [&](double si) { return shown(si, Figured::area, season.settings); };
  table.title = area->title;
  table.words = chosen(sorted.size(), all, "size") + " The bars are the intervals, where there is one.";
  table.cells = Table(Place{}, sorted.size() + 1, 4);
  table.cells.at(0, 0) = words("Pool");
  table.cells.at(0, 1) = words(with_unit(area->title, shown_unit(Figured::area, season.settings)));
  table.cells.at(0, 2) = words("Interval, below");
  table.cells.at(0, 3) = words("Interval, above");
  for (std::size_t i = 0; i < sorted.size(); ++i) {
    const auto& [figure, code] = sorted[i];
    const double value = inUnit(*figure->value);
    table.cells.at(i + 1, 0) = words(code);
    table.cells.at(i + 1, 1) = Cell::of_number(value);
    table.cells.at(i + 1, 2) = Cell::of_number(figure->low ? value - inUnit(*figure->low) : 0);
    table.cells.at(i + 1, 3) = Cell::of_number(figure->high ? inUnit(*figure->high) - value : 0);
  }
  return table;
}

ChartTable wetTable(const SeasonSummary& summary, double level) {
  ChartTable table;
  if (summary.still_wet.empty())
    return table;
  table.title = "Pools that still hold water";
  table.words = fmt::format("The dashed lines are the {:g}% interval of the share.", 100 * level);
  const std::size_t points = summary.still_wet.size();
  table.cells = Table(Place{}, 2 * points, 4);
  table.cells.at(0, 0) = words("Day");
  table.cells.at(0, 1) = words("Still wet (%)");
  table.cells.at(0, 2) = words("Interval from (%)");
  table.cells.at(0, 3) = words("Interval to (%)");
  std::size_t row = 1;
  const auto put = [&](double day, const CurvePoint& at) {
    constexpr double per_cent = 100;
    table.cells.at(row, 0) = Cell::of_date(day);
    table.cells.at(row, 1) = Cell::of_number(per_cent * at.share);
    table.cells.at(row, 2) = Cell::of_number(per_cent * at.low);
    table.cells.at(row++, 3) = Cell::of_number(per_cent * at.high);
  };
  for (std::size_t i = 0; i < points; ++i) {
    put(summary.still_wet[i].day, summary.still_wet[i]);
    if (i + 1 < points)
      put(summary.still_wet[i + 1].day, summary.still_wet[i]);
  }
  return table;
}

ChartTable speciesTable(const Season& season, const SeasonSummary& summary) {
  ChartTable table;
  std::map<std::string, std::size_t> columns;
  std::map<std::uint32_t, std::map<std::string, double>> counts;
  for (const SpeciesCount& count : summary.species) {
    columns.emplace(count.of, 0);
    double& highest = counts[count.pool][count.of];
    highest = std::max(highest, count.highest);
  }
  if (columns.empty())
    return table;
  std::size_t next = 1;
  for (auto& [of, column] : columns)
    column = next++;
  std::vector<std::pair<double, std::uint32_t>> ranked;
  for (const auto& [pool, mine] : counts) {
    double sum = 0;
    for (const auto& [of, highest] : mine)
      sum += highest;
    ranked.emplace_back(-sum, pool);
  }
  std::sort(ranked.begin(), ranked.end());
  const std::size_t all = ranked.size();
  ranked.resize(std::min(all, std::max<std::size_t>(1, most_bars / columns.size())));
  std::sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
  table.title = "Highest counts by pool";
  table.words = ranked.size() == all ? fmt::format("All {} pools with a count are drawn.", all)
                                     : fmt::format("{} of {} pools are drawn, those with the highest counts.",
                                                   ranked.size(), all);
  table.cells = Table(Place{}, ranked.size() + 1, columns.size() + 1);
  table.cells.at(0, 0) = words("Pool");
  for (const auto& [of, column] : columns)
    table.cells.at(0, column) = words(of);
  for (std::size_t row = 0; row < ranked.size(); ++row) {
    table.cells.at(row + 1, 0) = words(season.pools[ranked[row].second].code);
    for (const auto& [of, highest] : counts[ranked[row].second])
      table.cells.at(row + 1, columns[of]) = Cell::of_number(highest);
  }
  return table;
}

} // namespace wetspell::addin
