#include "estimate/groups.hpp"

#include "season/words.hpp"

#include <map>
#include <numeric>

namespace wetspell {

namespace {

std::vector<PoolGroup> groups_of(const Season& season, Field field) {
  std::vector<PoolGroup> groups;
  std::map<std::string, std::size_t, std::less<>> known;
  std::string buffer;
  for (std::uint32_t i = 0; i < season.pools.size(); ++i) {
    const std::string text = to_text(season.cell(field, season.pools[i].row));
    const auto code = plain_code(text, buffer);
    if (code.empty())
      continue;
    const auto [at, fresh] = known.try_emplace(std::string(code), groups.size());
    if (fresh)
      groups.push_back({std::string(spec(field).heading), text, {}});
    groups[at->second].pools.push_back(i);
  }
  return groups;
}

} // namespace

std::vector<PoolGroup> pool_groups(const SummaryRun& run) {
  const Season& season = run.season();
  std::vector<PoolGroup> all(1);
  all.front().pools.resize(season.pools.size());
  std::iota(all.front().pools.begin(), all.front().pools.end(), 0U);
  for (const Field field : run.options.groups) {
    if (field == Field::pool_code || !season.has(field))
      continue;
    std::vector<PoolGroup> groups = groups_of(season, field);
    if (groups.size() > 1 || (groups.size() == 1 && groups.front().pools.size() < season.pools.size()))
      all.insert(all.end(), groups.begin(), groups.end());
  }
  return all;
}

} // namespace wetspell
