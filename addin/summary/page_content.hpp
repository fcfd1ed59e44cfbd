#pragma once
// What stands on a pool's page, before it is a sheet.

#include "estimate/summary.hpp"
#include "table/table.hpp"

namespace wetspell::addin {

// Left the visits and below them the findings, right the figures.
enum PageColumn : std::size_t {
  day,
  water,
  depth,
  dry,
  full,
  temperature,
  area,
  people,
  photographs,
  page_gap,
  figure_title,
  figure_words,
  page_columns
};

struct PageContent {
  Table cells;
  std::size_t chart_row = 0, chart_rows = 0;
  std::size_t visits_heading = 0, visits = 0; ///< row of the headings, and how many rows follow
  std::size_t figures_heading = 0, figures = 0;
  std::size_t findings_section = 0, findings_heading = 0, findings = 0; ///< no section: 0
};

PageContent pageContent(const SeasonHistory& history, const CheckReport& report, const PoolSummary& summary);

} // namespace wetspell::addin
