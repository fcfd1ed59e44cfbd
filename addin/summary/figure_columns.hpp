#pragma once
// The figures about single pools as columns: one for every entry of the catalogue that some pool has a figure
// of, and where an entry serves many (species), one for each.

#include "estimate/summary.hpp"

#include <string>
#include <vector>

namespace wetspell::addin {

struct FigureColumn {
  const FigureSpec* spec = nullptr;
  std::string of;
  std::string title;                  ///< "Highest count: wood frog, egg masses"
  std::vector<const Figure*> figures; ///< one a pool of the season; null: that pool has none
  bool whole = true;                  ///< no value with decimals
};

/// In the catalogue's order.
std::vector<FigureColumn> figureColumns(const SeasonSummary& summary);

} // namespace wetspell::addin
