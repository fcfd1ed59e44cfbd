// The pools and days that stand beside the rows of a table: in its title, in lines between the rows.
#pragma once

#include "audit/map_headings.hpp"

#include <string>

namespace wetspell {

struct NamedBeside {
  std::string pool; ///< of the whole table, or of its first rows
  bool pool_in_lines = false;
  bool pools_by_name = false; ///< the lines may be a name alone: "Otter Pool"
  std::string date;           ///< as it stands there
  bool date_in_lines = false;

  [[nodiscard]] bool any_pool() const { return !pool.empty() || pool_in_lines; }
  [[nodiscard]] bool any_date() const { return !date.empty() || date_in_lines; }
  /// Puts the pools, or the days, into a map whose columns hold none.
  void give_pools(BlockMap& map) const;
  void give_dates(BlockMap& map) const;
};

/// `sheet_pool`: the pool that the sheet's name stands for; empty: none.
NamedBeside named_beside(const Block& block, const std::string& sheet_pool);

} // namespace wetspell
