// A basin's volume by Monte Carlo (JCGM 101:2008).
#include "measure/basin.hpp"
#include "measure/refuse.hpp"
#include "measure/statistics.hpp"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>

#include <cmath>

namespace wetspell {

Result<DrawnVolume> volume_drawn(const Basin& basin, const Measured& depth,
                                 std::optional<std::size_t> reading, double level, std::size_t draws,
                                 std::uint64_t seed) {
  const auto plain = volume_at(basin, depth, reading);
  if (!plain) {
    return plain.error();
  }
  if (plain.value().uncertainty == 0 || draws == 0) {
    return not_enough("Without uncertainties there is nothing to draw from.");
  }
  boost::random::mt19937_64 chance(seed);
  boost::random::normal_distribution<double> normal;
  const double log_depth = std::log(depth.value);
  std::vector<double> volumes;
  volumes.reserve(draws);
  // A basin widens upwards: draws whose exponent is not over 0 are no basins. When most are, the readings
  // cannot tell its shape.
  for (std::size_t tried = 0; volumes.size() < draws && tried < 2 * draws; ++tried) {
    double log_scale = basin.log_scale;
    double exponent = basin.exponent;
    double log_here = log_depth;
    const double given = basin.given_error > 0 ? basin.given_error * normal(chance) : 0.0;
    exponent += given;
    log_scale += basin.given_on_scale * given;
    for (std::size_t i = 0; i < basin.pulls.size(); ++i) {
      const BasinPull& pull = basin.pulls[i];
      const double in_depth = basin.stretch * pull.depth_error * normal(chance);
      const double off = basin.stretch * pull.area_error * normal(chance) - basin.exponent * in_depth;
      log_scale += pull.on_scale * off;
      exponent += pull.on_exponent * off;
      log_here += i == reading ? in_depth : 0.0;
    }
    if (!reading) {
      log_here += depth.uncertainty / depth.value * normal(chance);
    }
    if (exponent > 0) {
      volumes.push_back(std::exp(log_scale + (1 + exponent) * log_here - std::log(1 + exponent)));
    }
  }
  if (volumes.size() < draws) {
    return not_enough("The depths of the visits lie too near each other to tell the basin's shape.");
  }
  const auto found = moments(volumes);
  if (!found) {
    return found.error();
  }
  const double tail = (1 - level) / 2;
  const auto at = [&](double share) { return quantile(volumes, share).value(); };
  return DrawnVolume{.volume = {.value = at(0.5), .uncertainty = found.value().deviation},
                     .interval = {at(tail), at(1 - tail)}};
}

} // namespace wetspell
