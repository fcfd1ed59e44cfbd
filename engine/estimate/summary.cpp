#include "estimate/summary.hpp"

#include "estimate/pool_groups.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

std::span<const SummaryTopic> topics() {
  static const std::array all{visit_topic(),  size_topic(),      basin_topic(),
                              drying_topic(), programme_topic(), wet_spell_topic(),
                              animal_topic(), observer_topic(),  month_topic()};
  return all;
}

namespace {

std::vector<std::string> remarks_on(const Season& season, std::string_view group_by) {
  std::vector<std::string> all;
  all.reserve(season.remarks.size());
  for (const std::string& remark : season.remarks)
    all.push_back(fmt::format("Not read: {}", remark));
  for (const std::string& heading : pool_groups(season, group_by).not_found)
    all.push_back(fmt::format("The pools' table has no column '{}' to group the figures by.", heading));
  return all;
}

} // namespace

SeasonSummary summarise(const Season& season, const CheckReport& report, const SummaryOptions& options) {
  const SeasonHistory history = counted_history(season, report);
  const SummaryRun run{history, options};
  SeasonSummary summary;
  summary.left_out = history.left_out;
  summary.remarks = remarks_on(season, options.group_by);
  summary.pools.reserve(history.pools.size());
  const auto goes_on = [&](double share) {
    summary.cancelled = summary.cancelled || (options.progress && !options.progress(share));
    return !summary.cancelled;
  };
  for (const PoolHistory& pool : history.pools) {
    PoolSummary& of_pool = summary.pools.emplace_back();
    of_pool.pool = pool.pool;
    for (const SummaryTopic& topic : topics())
      if (topic.of_pool != nullptr)
        topic.of_pool(run, pool, of_pool);
    if (!goes_on(0.5 * static_cast<double>(summary.pools.size()) / static_cast<double>(history.pools.size())))
      return summary;
  }
  double done = 0;
  for (const SummaryTopic& topic : topics()) {
    if (topic.of_programme != nullptr)
      topic.of_programme(run, summary);
    if (!goes_on(0.5 + 0.5 * ++done / static_cast<double>(topics().size())))
      return summary;
  }
  // All pools first, then group by group.
  std::stable_partition(summary.programme.begin(), summary.programme.end(),
                        [](const ProgrammeFigure& figure) { return figure.column.empty(); });
  return summary;
}

} // namespace wetspell
