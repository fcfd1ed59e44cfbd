#include "estimate/groups.hpp"

#include <numeric>

namespace wetspell {

std::vector<PoolGroup> pool_groups(const SummaryRun& run) {
  const Season& season = run.season();
  std::vector<PoolGroup> all(1);
  all.front().pools.resize(season.pools.size());
  std::iota(all.front().pools.begin(), all.front().pools.end(), 0U);
  for (PoolGroup& group : pool_groups(season, run.options.group_by).groups)
    if (group.pools.size() < season.pools.size())
      all.push_back(std::move(group));
  return all;
}

} // namespace wetspell
