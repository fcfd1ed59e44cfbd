// The pools that the programme's figures are about: all of them, and those that a column of their table tells
// apart.
#pragma once

#include "estimate/summary.hpp"

namespace wetspell {

struct PoolGroup {
  std::string column;               ///< heading of the pools' column; empty for all pools
  std::string name;                 ///< what stands in it, as first written; empty for all pools
  std::vector<std::uint32_t> pools; ///< indices into Season::pools
};

/// All pools first, then the groups of each column asked for, in the order of their first pool. Capitals and
/// blanks do not tell groups apart; a pool whose cell is blank is in no group, and a column that puts all its
/// pools into one group says nothing new and makes none.
std::vector<PoolGroup> pool_groups(const SummaryRun& run);

} // namespace wetspell
