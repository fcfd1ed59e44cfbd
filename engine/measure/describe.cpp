#include "measure/describe.hpp"

#include "measure/careful_sum.hpp"
#include "measure/statistics.hpp"
#include "measure/usable.hpp"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_int_distribution.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace wetspell {

Result<Description> describe(std::span<const double> values, const Drawing& drawing) {
  const auto found = moments(values);
  if (!found) {
    return found.error();
  }
  const Moments& of = found.value();
  Description all{.n = of.n,
                  .smallest = of.smallest,
                  .lower_quartile = quantile(values, 0.25).value(),
                  .median = quantile(values, 0.5).value(),
                  .mean = of.mean,
                  .upper_quartile = quantile(values, 0.75).value(),
                  .largest = of.largest,
                  .deviation = of.deviation,
                  .mean_by_t = {},
                  .mean_by_draws = {}};
  if (const auto half = mean_half_width(of, drawing.level)) {
    all.mean_by_t = Interval{of.mean - half.value(), of.mean + half.value()};
  }
  if (const auto drawn = bootstrap_mean(values, drawing)) {
    all.mean_by_draws = drawn.value();
  }
  return all;
}

Result<Interval> bootstrap_mean(std::span<const double> values, const Drawing& drawing) {
  if (auto problem = unusable_level(drawing.level)) {
    return *std::move(problem);
  }
  const auto found = moments(values);
  if (!found) {
    return found.error();
  }
  const Moments& of = found.value();
  if (of.n < fewest_to_draw) {
    return not_enough(
        fmt::format("{} of the at least {} values needed to be drawn from.", of.n, fewest_to_draw));
  }
  if (of.deviation == 0) {
    return not_enough(
        fmt::format("All {} values are {}: there is no scatter to draw from.", of.n, in_words(of.mean)));
  }
  if (drawing.draws == 0) {
    return bad_argument("No draws were asked for.");
  }
  boost::random::mt19937_64 chance(drawing.seed);
  const boost::random::uniform_int_distribution<std::size_t> which(0, of.n - 1);
  const auto n = static_cast<double>(of.n);
  std::vector<double> distances;
  distances.reserve(drawing.draws);
  std::vector<double> drawn(of.n);
  while (distances.size() < drawing.draws) {
    double sum = 0;
    for (double& value : drawn) {
      value = values[which(chance)];
      sum += value;
    }
    const double mean = sum / n;
    double squares = 0;
    for (const double value : drawn) {
      squares += (value - mean) * (value - mean);
    }
    // One value drawn n times has no scatter of its own and so no distance: drawn again.
    if (squares > 0) {
      distances.push_back((mean - of.mean) / std::sqrt(squares / (n - 1) / n));
    }
  }
  const double tail = (1 - drawing.level) / 2;
  return Interval{of.mean - quantile(distances, 1 - tail).value() * of.mean_uncertainty,
                  of.mean - quantile(distances, tail).value() * of.mean_uncertainty};
}

Result<Measured> total(std::span<const Measured> parts) {
  if (parts.empty()) {
    return not_enough("There is no value to add up.");
  }
  CarefulSum sum;
  double squares = 0;
  bool known = true;
  for (const Measured& part : parts) {
    sum.add(part.value);
    squares += part.uncertainty * part.uncertainty;
    known = known && part.uncertainty > 0;
  }
  const Measured all{.value = sum.value(), .uncertainty = known ? std::sqrt(squares) : 0.0};
  if (!std::isfinite(all.value) || !std::isfinite(all.uncertainty)) {
    return not_a_number("The values do not add up to a finite number.");
  }
  return all;
}

} // namespace wetspell
