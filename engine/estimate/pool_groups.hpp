// Pools told apart by the contents of a column of their table, whichever column the programme keeps there.
#pragma once

#include "season/season.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

struct PoolGroup {
  std::string column;               ///< heading as it stands in the table: "Owner"
  std::string group;                ///< what the cells hold: "town forest"; "(blank)" for blank cells
  std::vector<std::uint32_t> pools; ///< indices into Season::pools
};

struct PoolGroups {
  std::vector<PoolGroup> groups;      ///< column by column in the order asked for, contents sorted
  std::vector<std::string> not_found; ///< headings that the pools' table does not have
};

/// `headings` with commas between. A heading is found by its words (capitals and blanks aside) or, for
/// columns of the catalogue, by any heading that is read as that column. A season without a table of pools
/// has none.
PoolGroups pool_groups(const Season& season, std::string_view headings);

} // namespace wetspell
