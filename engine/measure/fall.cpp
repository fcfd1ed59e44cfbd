#include "measure/fall.hpp"

#include "measure/refuse.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace wetspell {

namespace {

bool rises(const DepthReading& before, const DepthReading& after) {
  return after.depth.value - before.depth.value >
         2 * std::hypot(before.depth.uncertainty, after.depth.uncertainty);
}

/// The line with a scatter that is no smaller than the readings' own uncertainties say.
Line with_own_scatter(Line line, std::span<const DepthReading> fall) {
  double squares = 0;
  for (const DepthReading& reading : fall) {
    squares += reading.depth.uncertainty * reading.depth.uncertainty;
  }
  const double own = std::sqrt(squares / static_cast<double>(fall.size()));
  if (own > line.residual_deviation) {
    line.residual_deviation = own;
    line.slope_uncertainty = own / std::sqrt(line.x_squares);
    line.intercept_uncertainty = line.uncertainty_at(0, false);
  }
  return line;
}

} // namespace

std::size_t last_high_water(std::span<const DepthReading> readings) {
  if (readings.empty()) {
    return 0;
  }
  std::size_t begin = readings.size() - 1;
  while (begin > 0 && !rises(readings[begin - 1], readings[begin])) {
    --begin;
  }
  const auto since = readings.subspan(begin);
  // The last of equal depths: a level pool falls from its last day at that height.
  const auto deepest =
      std::max_element(since.rbegin(), since.rend(), [](const DepthReading& one, const DepthReading& other) {
        return one.depth.value < other.depth.value;
      });
  return begin + since.size() - 1 - static_cast<std::size_t>(deepest - since.rbegin());
}

Result<Drying> drying(std::span<const DepthReading> fall, double level) {
  if (!fall.empty() && fall.back().depth.value <= 0) {
    return bad_argument("The last reading is 0: the pool is dry.");
  }
  std::vector<double> days;
  std::vector<double> depths;
  for (const DepthReading& reading : fall) {
    days.push_back(reading.day);
    depths.push_back(reading.depth.value);
  }
  if (fall.size() < 3) {
    return not_enough(fmt::format("{} of the at least 3 readings since the last high water.", fall.size()));
  }
  const auto fitted = least_squares(days, depths);
  if (!fitted) {
    return fitted.error();
  }
  const Line line = with_own_scatter(fitted.value(), fall);
  if (line.slope >= 0) {
    return bad_argument(fmt::format("The pool is not falling: {} m at first, {} m at last.",
                                    in_words(depths.front()), in_words(depths.back())));
  }
  const auto dry = crossing(line, 0, level);
  if (!dry) {
    return dry.error();
  }
  const auto robust = theil_sen(days, depths, level);
  if (!robust) {
    return robust.error();
  }
  Drying found{.n = fall.size(),
               .line = line,
               .robust = robust.value(),
               .fall_a_day = {.value = -line.slope, .uncertainty = line.slope_uncertainty},
               .dry = dry.value(),
               .robust_dry = {}};
  if (robust.value().slope < 0) {
    found.robust_dry = -robust.value().middle_intercept / robust.value().slope;
  }
  return found;
}

} // namespace wetspell
