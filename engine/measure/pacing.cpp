#include "measure/pacing.hpp"

#include "measure/refuse.hpp"
#include "measure/statistics.hpp"

#include <cmath>
#include <limits>
#include <numbers>
#include <string_view>
#include <vector>

namespace wetspell {

namespace {

/// Standard uncertainty of a count that was rounded to a whole one: rectangular, half a count either way.
constexpr double count_rounding = 0.5 / std::numbers::sqrt3;

double paces_per_count(CountedAs counted) {
  return counted == CountedAs::paces ? 1.0 : 0.5;
}

std::string_view plural(CountedAs counted) {
  return counted == CountedAs::paces ? "paces" : "steps";
}

} // namespace

Result<PaceLength> pace_from_runs(std::span<const CalibrationRun> runs, CountedAs counted) {
  if (runs.empty()) {
    return not_enough("There is no run over a taped distance to work a pace out from.");
  }
  std::vector<double> distances;
  std::vector<double> counts;
  std::vector<double> weights;
  std::vector<double> single_lengths;
  for (const CalibrationRun& run : runs) {
    const std::size_t place = counts.size() + 1;
    if (!std::isfinite(run.distance) || !std::isfinite(run.count)) {
      return not_a_number(fmt::format("Run {}: the distance or the count is not a finite number.", place));
    }
    if (run.distance <= 0) {
      return bad_argument(fmt::format("Run {}: a taped distance of {} m was read; it must be over 0.", place,
                                      in_words(run.distance)));
    }
    if (run.count <= 0) {
      return bad_argument(fmt::format("Run {}: a count of {} {} was read; it must be over 0.", place,
                                      in_words(run.count), plural(counted)));
    }
    distances.push_back(run.distance);
    counts.push_back(run.count);
    weights.push_back(1 / run.distance);
    single_lengths.push_back(run.distance / run.count);
  }

  const auto line = line_through_origin(distances, counts, weights);
  if (!line) {
    return line.error();
  }
  const auto between = moments(single_lengths);
  if (!between) {
    return between.error();
  }
  const double n = static_cast<double>(runs.size());
  const double counts_a_metre = line.value().slope;
  double total = 0;
  for (const double count : counts) {
    total += count;
  }
  const double scatter = line.value().slope_uncertainty / counts_a_metre;
  const double rounding = count_rounding * std::sqrt(n) / total;
  const double pace = 1 / (counts_a_metre * paces_per_count(counted));
  const Measured measured{.value = pace, .uncertainty = pace * std::hypot(scatter, rounding)};
  if (!std::isfinite(measured.value) || !std::isfinite(measured.uncertainty)) {
    return not_a_number("These runs give no finite pace length.");
  }
  return PaceLength{.pace = measured,
                    .runs = static_cast<int>(runs.size()),
                    .variation = runs.size() > 1 ? between.value().deviation / between.value().mean
                                                 : std::numeric_limits<double>::quiet_NaN()};
}

Result<Measured> paced_length(double count, CountedAs counted, const Measured& pace) {
  if (!std::isfinite(count) || !std::isfinite(pace.value) || !std::isfinite(pace.uncertainty)) {
    return not_a_number("The count or the pace length is not a finite number.");
  }
  if (count < 0) {
    return bad_argument(
        fmt::format("A count of {} {} was read; it cannot be below 0.", in_words(count), plural(counted)));
  }
  if (pace.value <= 0 || pace.uncertainty < 0) {
    return bad_argument(
        fmt::format("A pace of {} m with uncertainty {} m was read; a pace must be over 0 and its "
                    "uncertainty not below 0.",
                    in_words(pace.value), in_words(pace.uncertainty)));
  }
  const double paces = count * paces_per_count(counted);
  const double paces_uncertainty = count_rounding * paces_per_count(counted);
  const Measured length{
      .value = paces * pace.value,
      .uncertainty =
          pace.uncertainty > 0 ? std::hypot(pace.value * paces_uncertainty, paces * pace.uncertainty) : 0.0};
  if (!std::isfinite(length.value) || !std::isfinite(length.uncertainty)) {
    return not_a_number(fmt::format("{} {} of {} m are too long to be worked out.", in_words(count),
                                    plural(counted), in_words(pace.value)));
  }
  return length;
}

} // namespace wetspell
