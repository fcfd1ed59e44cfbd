#include "check/signs.hpp"

#include <algorithm>
#include <array>

namespace wetspell {

double usual_depth(const Season& season, const Visit& visit) {
  if (visit.pool.known()) {
    const Quantity& deepest = season.pools[static_cast<std::size_t>(visit.pool.index)].deepest;
    if (deepest.has_value())
      return deepest.si * 1.1 + season.limits[Limit::depth_slack];
  }
  return season.limits[Limit::depth_doubtful];
}

bool agrees_with_class(const Season& season, double si, std::size_t row) {
  const ClassTable& table = season.depth_classes;
  if (row >= table.rows.size())
    return true;
  const double value = from_si(si, table.unit);
  const double slack = difference_from_si(season.limits[Limit::depth_slack], table.unit);
  return value >= table.rows[row].low - slack && value <= table.rows[row].high + slack;
}

Signs signs_of_readings(const Season& season, const Visit& visit) {
  Signs signs;
  const double low = season.limits[Limit::temperature_doubtful_low];
  const double high = season.limits[Limit::temperature_doubtful_high];
  const double lowest = season.limits[Limit::temperature_lowest];
  const double highest = season.limits[Limit::temperature_highest];
  double coldest = 0, warmest = 0;
  int read = 0;
  const auto look = [&](const Quantity& reading) {
    if (reading.has_value()) {
      signs.temperature = true;
      signs.unusual_water = signs.unusual_water || reading.si < low || reading.si > high;
      signs.not_water = signs.not_water || reading.si < lowest || reading.si > highest;
      return true;
    }
    if (reading.typed() && reading.status != Status::missing)
      signs.not_a_reading = true;
    return false;
  };
  for (const Quantity* reading : {&visit.temperature_1, &visit.temperature_2, &visit.temperature_3}) {
    if (!look(*reading))
      continue;
    coldest = read == 0 ? reading->si : std::min(coldest, reading->si);
    warmest = read == 0 ? reading->si : std::max(warmest, reading->si);
    ++read;
  }
  look(visit.temperature_mean);
  signs.readings_apart = warmest - coldest > season.limits[Limit::temperature_spread];
  if (visit.depth.has_value() && visit.depth.si > 0)
    signs.depth_suspect =
        visit.depth.si > usual_depth(season, visit) ||
        (visit.depth_class.chosen() &&
         !agrees_with_class(season, visit.depth.si, static_cast<std::size_t>(visit.depth_class.index)));
  return signs;
}

} // namespace wetspell
