#include "measure/three_readings.hpp"

#include "measure/refuse.hpp"
#include "measure/statistics.hpp"

#include <boost/container/small_vector.hpp>

#include <cmath>
#include <limits>
#include <numbers>

namespace wetspell {

namespace {

/// Why this reading cannot enter a mean, although something was typed.
Problem unusable(std::size_t place, const Quantity& reading) {
  switch (reading.status) {
  case Status::over:
  case Status::under:
    return bad_argument(fmt::format("Reading {} says {} {} {}; a mean needs the reading itself.", place,
                                    reading.status == Status::over ? "over" : "under",
                                    in_words(reading.written), symbol(reading.unit)));
  case Status::range:
    return bad_argument(fmt::format("Reading {} is a range, {} to {} {}; a mean needs one number.", place,
                                    in_words(reading.written),
                                    in_words(from_si(reading.si_high, reading.unit)), symbol(reading.unit)));
  case Status::paces:
  case Status::steps:
    return bad_argument(fmt::format("Reading {} is a count of {}, not a temperature.", place,
                                    reading.status == Status::paces ? "paces" : "steps"));
  default:
    return bad_argument(fmt::format("Reading {} cannot be read: {}.", place, text(reading.reason)));
  }
}

} // namespace

double thermometer_uncertainty() {
  // Common practice, no source: a field thermometer is taken to be right within half a degree.
  constexpr double half_width = 0.5;
  return half_width / std::numbers::sqrt3; // rectangular, GUM 4.3.7
}

Result<ReadingsMean> mean_of_readings(std::span<const Quantity> readings) {
  ReadingsMean found{.expected = static_cast<int>(readings.size())};
  boost::container::small_vector<double, 8> values;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const Quantity& reading = readings[i];
    if (reading.status == Status::blank) {
      ++found.blank;
    } else if (reading.status == Status::missing) {
      ++found.missing;
    } else if (!reading.has_value()) {
      return unusable(i + 1, reading);
    } else if (!fits(reading.unit, Kind::temperature)) {
      return bad_argument(fmt::format("Reading {} is {} {}, not a temperature.", i + 1,
                                      in_words(reading.written), symbol(reading.unit)));
    } else {
      values.push_back(reading.si);
    }
  }
  if (values.empty()) {
    return not_enough(fmt::format("None of the {} temperature readings was taken.", readings.size()));
  }
  const auto all = moments({values.data(), values.size()});
  if (!all) {
    return all.error();
  }
  const Moments& moments = all.value();
  const bool several = moments.n > 1;
  found.read = static_cast<int>(moments.n);
  found.mean = moments.mean;
  found.spread = several ? moments.largest - moments.smallest : std::numeric_limits<double>::quiet_NaN();
  found.deviation = several ? moments.deviation : std::numeric_limits<double>::quiet_NaN();
  // Not std::hypot: temperatures are far from overflowing, and this is worked out for every visit.
  const double scatter = moments.mean_uncertainty;
  const double own = thermometer_uncertainty();
  found.uncertainty = std::sqrt(scatter * scatter + own * own);
  return found;
}

} // namespace wetspell
