#include "measure/sen_line.hpp"

#include "measure/distribution.hpp"
#include "measure/statistics.hpp"
#include "measure/usable.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

namespace wetspell {

namespace {

void add_slopes(std::span<const double> x, std::span<const double> y, std::vector<double>& slopes) {
  for (std::size_t i = 0; i < x.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (x[i] != x[j]) {
        slopes.push_back((y[i] - y[j]) / (x[i] - x[j]));
      }
    }
  }
}

/// Variance of Kendall's s with ties in x and in y (Kendall 1975, ch. 4).
double variance_of_s(std::span<const double> x, std::span<const double> y) {
  struct Ties {
    double spread = 0, triples = 0, pairs = 0;
    explicit Ties(std::span<const double> values) {
      std::map<double, double> equal;
      for (const double value : values) {
        equal[value] += 1;
      }
      for (const auto& [value, t] : equal) {
        spread += t * (t - 1) * (2 * t + 5);
        triples += t * (t - 1) * (t - 2);
        pairs += t * (t - 1);
      }
    }
  };
  const auto n = static_cast<double>(x.size());
  const Ties in_x(x);
  const Ties in_y(y);
  double variance = (n * (n - 1) * (2 * n + 5) - in_x.spread - in_y.spread) / 18;
  if (n > 2) {
    variance += in_x.triples * in_y.triples / (9 * n * (n - 1) * (n - 2));
  }
  return variance + in_x.pairs * in_y.pairs / (2 * n * (n - 1));
}

/// The value at a place among sorted slopes, counted from 1.
std::optional<double> at_place(const std::vector<double>& sorted, double place) {
  const auto last = static_cast<double>(sorted.size());
  if (place < 1 || place > last) {
    return std::nullopt;
  }
  const auto below = static_cast<std::size_t>(place);
  const std::size_t above = std::min(below + 1, sorted.size());
  return std::lerp(sorted[below - 1], sorted[above - 1], place - std::floor(place));
}

Result<SenLine> from_slopes(std::vector<double> slopes, double variance, double level) {
  if (slopes.empty()) {
    return not_enough("A slope needs values at two different times.");
  }
  const auto middle = quantile(slopes, 0.5);
  if (!middle) {
    return middle.error();
  }
  std::ranges::sort(slopes);
  const auto count = static_cast<double>(slopes.size());
  const double reach = normal_factor(level) * std::sqrt(variance);
  SenLine line;
  line.slope = middle.value();
  line.low = at_place(slopes, (count - reach) / 2);
  line.high = at_place(slopes, (count + reach) / 2 + 1);
  return line;
}

} // namespace

Result<SenLine> theil_sen(std::span<const double> x, std::span<const double> y, double level) {
  if (auto problem = unusable_points(x, y)) {
    return *std::move(problem);
  }
  if (auto problem = unusable_level(level)) {
    return *std::move(problem);
  }
  std::vector<double> slopes;
  add_slopes(x, y, slopes);
  auto line = from_slopes(std::move(slopes), variance_of_s(x, y), level);
  if (!line) {
    return line.error();
  }
  std::vector<double> starts;
  for (std::size_t i = 0; i < x.size(); ++i) {
    starts.push_back(y[i] - line.value().slope * x[i]);
  }
  line.value().n = x.size();
  line.value().middle_intercept = quantile(starts, 0.5).value();
  line.value().intercept = quantile(y, 0.5).value() - line.value().slope * quantile(x, 0.5).value();
  return line;
}

Result<SenLine> seasonal_sen(std::span<const Series> seasons, double level, Together together) {
  if (auto problem = unusable_level(level)) {
    return *std::move(problem);
  }
  const auto kendall = seasonal_kendall(seasons, together);
  if (!kendall) {
    return kendall.error();
  }
  std::vector<double> slopes;
  for (const Series& season : seasons) {
    add_slopes(season.x, season.y, slopes);
  }
  auto line = from_slopes(std::move(slopes), kendall.value().variance, level);
  if (line) {
    line.value().n = kendall.value().n;
  }
  return line;
}

} // namespace wetspell
