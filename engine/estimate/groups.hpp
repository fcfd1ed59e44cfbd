// The pools that the programme's figures are about: all of them, and those that columns of their table tell
// apart.
#pragma once

#include "estimate/pool_groups.hpp"
#include "estimate/summary.hpp"

namespace wetspell {

/// All pools first (`column` and `group` empty), then the groups of the columns asked for. A column that puts
/// all pools into one group says nothing new and makes none.
std::vector<PoolGroup> pool_groups(const SummaryRun& run);

} // namespace wetspell
