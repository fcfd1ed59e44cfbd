#include "measure/statistics.hpp"

#include "measure/careful_sum.hpp"
#include "measure/distribution.hpp"
#include "measure/refuse.hpp"
#include "measure/usable.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>
#include <vector>

namespace wetspell {

namespace {

double sorted_quantile(const std::vector<double>& sorted, double p) {
  const double place = p * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(std::floor(place));
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  return std::lerp(sorted[below], sorted[above], place - static_cast<double>(below));
}

double sorted_median(const std::vector<double>& sorted) {
  const std::size_t half = sorted.size() / 2;
  return sorted.size() % 2 == 1 ? sorted[half] : std::midpoint(sorted[half - 1], sorted[half]);
}

} // namespace

Result<Moments> moments(std::span<const double> values) {
  if (auto problem = unusable_values(values)) {
    return *std::move(problem);
  }
  const auto [smallest, largest] = std::ranges::minmax(values);
  const auto n = static_cast<double>(values.size());
  CarefulSum sum;
  for (const double value : values) {
    sum.add(value);
  }
  // Rounding may push the mean of nearly equal values just outside them.
  const double mean = std::clamp(sum.value() / n, smallest, largest);
  CarefulSum offsets;
  CarefulSum squares;
  for (const double value : values) {
    offsets.add(value - mean);
    squares.add((value - mean) * (value - mean));
  }
  // The second term takes out what the rounded mean left in the squares.
  const double about_mean = squares.value() - offsets.value() * offsets.value() / n;
  if (!std::isfinite(sum.value()) || !std::isfinite(about_mean)) {
    return not_a_number(fmt::format("The values reach {}, too large to be added up.",
                                    in_words(std::max(std::abs(smallest), std::abs(largest)))));
  }
  const double deviation = values.size() > 1 ? std::sqrt(std::max(about_mean, 0.0) / (n - 1)) : 0.0;
  return Moments{.n = values.size(),
                 .mean = mean,
                 .deviation = deviation,
                 .mean_uncertainty = deviation / std::sqrt(n),
                 .smallest = smallest,
                 .largest = largest};
}

Result<double> mean_half_width(const Moments& moments, double level) {
  if (auto problem = unusable_level(level)) {
    return *std::move(problem);
  }
  if (moments.n < 2) {
    return not_enough(fmt::format("{} of the at least 2 values needed to judge scatter.", moments.n));
  }
  const double t = student_factor(level, static_cast<double>(moments.n - 1));
  const double half_width = t * moments.mean_uncertainty;
  if (!std::isfinite(half_width)) {
    return not_a_number(fmt::format("The half-width at level {} is not a finite number.", in_words(level)));
  }
  return half_width;
}

Result<double> quantile(std::span<const double> values, double p) {
  if (!(p >= 0 && p <= 1)) {
    return bad_argument(
        fmt::format("A quantile of {} was asked for; it must lie between 0 and 1.", in_words(p)));
  }
  if (auto problem = unusable_values(values)) {
    return *std::move(problem);
  }
  std::vector<double> sorted(values.begin(), values.end());
  std::ranges::sort(sorted);
  return sorted_quantile(sorted, p);
}

Result<Robust> robust(std::span<const double> values) {
  if (auto problem = unusable_values(values)) {
    return *std::move(problem);
  }
  constexpr double normal_consistency = 1.4826; // 1 / (upper quartile of the standard normal distribution)
  std::vector<double> work(values.begin(), values.end());
  std::ranges::sort(work);
  const double median = sorted_median(work);
  for (double& value : work) {
    value = std::abs(value - median);
  }
  std::ranges::sort(work);
  const double deviation = normal_consistency * sorted_median(work);
  if (!std::isfinite(deviation)) {
    return not_a_number(fmt::format("The values lie too far from their median {}.", in_words(median)));
  }
  return Robust{.median = median, .deviation = deviation};
}

Result<OriginLine> line_through_origin(std::span<const double> x, std::span<const double> y,
                                       std::span<const double> weights) {
  if (x.size() != y.size() || x.size() != weights.size()) {
    return bad_argument(
        fmt::format("{} x values, {} y values and {} weights were given; they must be as many.", x.size(),
                    y.size(), weights.size()));
  }
  for (const auto values : {x, y, weights}) {
    if (auto problem = unusable_values(values)) {
      return *std::move(problem);
    }
  }
  CarefulSum products;
  CarefulSum squares;
  for (std::size_t i = 0; i < x.size(); ++i) {
    if (!(weights[i] > 0)) {
      return bad_argument(
          fmt::format("Weight {} is {}; weights must be over 0.", i + 1, in_words(weights[i])));
    }
    products.add(weights[i] * x[i] * y[i]);
    squares.add(weights[i] * x[i] * x[i]);
  }
  const double slope = products.value() / squares.value();
  CarefulSum residuals;
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double off = y[i] - slope * x[i];
    residuals.add(weights[i] * off * off);
  }
  OriginLine line{.slope = slope, .residual_squares = residuals.value()};
  if (x.size() > 1) {
    line.slope_uncertainty =
        std::sqrt(line.residual_squares / static_cast<double>(x.size() - 1) / squares.value());
  }
  if (!std::isfinite(line.slope) || !std::isfinite(line.slope_uncertainty)) {
    return not_a_number("These points give no finite slope through the origin.");
  }
  return line;
}

} // namespace wetspell
