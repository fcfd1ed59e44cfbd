#include "estimate/two_counts.hpp"

#include "estimate/proportion.hpp"
#include "measure/distribution.hpp"
#include "measure/special_functions.hpp"
#include "measure/usable.hpp"

#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace wetspell {

namespace {

constexpr double no_end = std::numeric_limits<double>::infinity();

/// The log likelihood of a number, both chances of being found set to their best values for it.
class Profile {
public:
  Profile(double first, double second, double seen) : first_(first), second_(second), seen_(seen) {}

  [[nodiscard]] double at(double number) const {
    const auto part = [number](double count) { return count > 0 ? count * std::log(count / number) : 0.0; };
    return log_factorial(number) - log_factorial(number - seen_) + part(first_) + part(number - first_) +
           part(second_) + part(number - second_);
  }

  /// The number of the greatest likelihood, by thirds: the profile has one peak.
  [[nodiscard]] double peak(double beyond) const {
    double low = seen_;
    double high = beyond;
    for (int i = 0; i < thirds; ++i) {
      const double one = low + (high - low) / 3;
      const double other = high - (high - low) / 3;
      (at(one) < at(other) ? low : high) = at(one) < at(other) ? one : other;
    }
    return low;
  }

  /// Where the likelihood crosses a level between a number above it and one below it.
  [[nodiscard]] double crossing(double above, double below, double level) const {
    for (int i = 0; i < halves; ++i) {
      const double middle = (above + below) / 2;
      (at(middle) < level ? below : above) = middle;
    }
    return above;
  }

private:
  static double log_factorial(double number) { return boost::math::lgamma(number + 1, QuietPolicy()); }
  static constexpr int thirds = 80;
  static constexpr int halves = 50;

  double first_, second_, seen_;
};

Interval profile_interval(double first, double second, double both, double z) {
  const double seen = first + second - both;
  if (both == 0)
    return {seen, no_end};
  const Profile profile(first, second, seen);
  const double peak = profile.peak(std::max(seen + 1, 4 * first * second / both));
  const double level = profile.at(peak) - z * z / 2;
  double beyond = peak + 1;
  while (profile.at(beyond) > level)
    beyond += beyond - peak;
  const double low = profile.at(seen) < level ? profile.crossing(peak, seen, level) : seen;
  return {std::max(seen, std::round(low)), std::round(profile.crossing(peak, beyond, level))};
}

/// Of the number that both missed, taken as log-normal.
Interval log_interval(double seen, double estimate, double error, double z) {
  const double missed = estimate - seen;
  if (!(missed > 0) || !(error > 0))
    return {seen, estimate};
  const double factor = std::exp(z * std::sqrt(std::log1p(error * error / (missed * missed))));
  return {seen + missed / factor, seen + missed * factor};
}

std::optional<FoundOfOther> found(double both, double other, double level) {
  if (other == 0)
    return std::nullopt;
  return FoundOfOther{both / other, wilson_interval(both, other, level).value()};
}

} // namespace

Result<TwoCounts> two_counts(double first, double second, double both, double level) {
  for (const double count : {first, second, both}) {
    if (!std::isfinite(count))
      return not_a_number("A count is not a finite number.");
    if (count < 0 || count != std::floor(count))
      return bad_argument(fmt::format("A count is a whole number from 0 on, not {}.", in_words(count)));
  }
  if (both > std::min(first, second))
    return bad_argument(fmt::format("Both saw {}, which is more than one of them saw at all: {} and {}.",
                                    in_words(both), in_words(first), in_words(second)));
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  const double z = normal_factor(level);
  TwoCounts result;
  result.seen = first + second - both;
  result.estimate = (first + 1) * (second + 1) / (both + 1) - 1;
  result.error = std::sqrt((first + 1) * (second + 1) * (first - both) * (second - both) /
                           ((both + 1) * (both + 1) * (both + 2)));
  result.interval = profile_interval(first, second, both, z);
  result.log_interval = log_interval(result.seen, result.estimate, result.error, z);
  result.first_finds = found(both, second, level);
  result.second_finds = found(both, first, level);
  return result;
}

} // namespace wetspell
