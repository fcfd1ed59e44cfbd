#pragma once
// What the charts of a summary show, as tables, and how much of it: a chart with too many lines says nothing
// and takes long to draw.

#include "estimate/summary.hpp"
#include "table/table.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace wetspell::addin {

/// Numbers of one chart: a table with a row of headings, and words on what was chosen.
struct ChartTable {
  std::string title; ///< of the chart
  std::string words; ///< below the title
  Table cells;
  bool empty() const { return cells.rows() < 2; }
};

/// A stretch of rows of the depths' table that belong to one pool.
struct PoolRows {
  std::uint32_t pool = 0;
  std::size_t first = 0, count = 0;
};

/// Pool, day, depth: a row a depth that counts, pool by pool in the order of days. At most sixty pools,
/// evenly taken in the order of their greatest depths.
struct DepthTable : ChartTable {
  std::vector<PoolRows> pools;
};
DepthTable depthTable(const SeasonHistory& history);

/// Pool, value, arm below, arm above, from the smallest to the largest: the catalogue's first figure of an
/// area that any pool has. At most a hundred and twenty pools, evenly taken.
ChartTable sizeTable(const Season& season, const SeasonSummary& summary);

/// Day, share, from, to, in per cent, with a row for each corner of the steps.
ChartTable wetTable(const SeasonSummary& summary, double level);

/// Pool, and a column a species: the highest counts. As many of the pools with the highest counts as make 160
/// bars.
ChartTable speciesTable(const Season& season, const SeasonSummary& summary);

} // namespace wetspell::addin
