// A season as large as wanted, the same at every run, as cells of sheets.
#pragma once

#include "demo/sheet_rows.hpp"
#include "table/table.hpp"

#include <cstddef>
#include <vector>

namespace wetspell::bench {

inline constexpr std::size_t visits_a_pool = 100;

/// How the readings stand in the cells.
enum class Writing {
  bare,  ///< numbers in the sheet's units
  mixed, ///< as in the demo: two people in seven write units
  units, ///< every temperature, depth and length is a text with its unit
};

struct BigSeason {
  std::vector<Table> tables; ///< visits (first), pools, people, life, settings, with their headings
  std::size_t visits = 0;
  std::size_t typed_cells = 0; ///< cells of all tables that hold something, headings aside
};

/// `visits` visits, so many to each pool, one a day; five pools to a person; a
/// count of egg masses for every 25th visit. One visit in a hundred has a mistake of five kinds in turn, so
/// that findings are made and worded too. Readings follow the demo's pools and its ways of writing.
BigSeason big_season(std::size_t visits, Writing writing, std::size_t to_each_pool = visits_a_pool);

} // namespace wetspell::bench
