#include "summary/figure_columns.hpp"

#include <cmath>
#include <map>

namespace wetspell::addin {

std::vector<FigureColumn> figureColumns(const SeasonSummary& summary) {
  std::map<const FigureSpec*, std::map<std::string, FigureColumn>> found;
  for (std::size_t pool = 0; pool < summary.pools.size(); ++pool)
    for (const Figure& figure : summary.pools[pool].figures) {
      FigureColumn& column = found[figure.spec][figure.of];
      if (column.figures.empty()) {
        column.spec = figure.spec;
        column.of = figure.of;
        column.title = full_title(figure);
        column.figures.resize(summary.pools.size());
      }
      column.figures[pool] = &figure;
      column.whole = column.whole && (!figure.value || *figure.value == std::floor(*figure.value));
    }
  std::vector<FigureColumn> columns;
  for (const FigureSpec* spec : figure_catalogue())
    for (auto& [of, column] : found[spec])
      columns.push_back(std::move(column));
  return columns;
}

} // namespace wetspell::addin
