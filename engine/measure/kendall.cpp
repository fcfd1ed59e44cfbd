#include "measure/kendall.hpp"

#include "measure/distribution.hpp"
#include "measure/usable.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>

namespace wetspell {

namespace {

int sign_of(double difference) {
  return difference > 0 ? 1 : difference < 0 ? -1 : 0;
}

/// The variance of s with ties, and the pairs of equal values.
struct Alone {
  double variance = 0;
  double tied_pairs = 0;
};

Alone variance_alone(std::span<const double> y) {
  const auto spread = [](double t) { return t * (t - 1) * (2 * t + 5); };
  double variance = spread(static_cast<double>(y.size()));
  std::map<double, double> equal;
  for (const double value : y) {
    equal[value] += 1;
  }
  Alone found;
  for (const auto& [value, t] : equal) {
    variance -= spread(t);
    found.tied_pairs += t * (t - 1) / 2;
  }
  found.variance = variance / 18;
  return found;
}

/// Covariances of all pairs of series and all variances at once. Of two series it is
/// (K + 4 sum R R' - n (n1 + 1) (n2 + 1)) / 3 over the n times, with K the sum over pairs of times of the
/// product of the two signs and R the middle ranks, (n1 + 1) / 2 where a series has no value; sums over all
/// series can be taken before the products.
double variance_with_covariances(std::span<const Series> seasons) {
  std::vector<double> times;
  for (const Series& season : seasons) {
    times.insert(times.end(), season.x.begin(), season.x.end());
  }
  std::ranges::sort(times);
  times.erase(std::unique(times.begin(), times.end()), times.end());
  const std::size_t n = times.size();
  std::vector<double> signs(n * n, 0);
  std::vector<double> ranks(n, 0);
  double places = 0; // sum of n1 + 1
  std::vector<std::size_t> at;
  for (const Series& season : seasons) {
    at.clear();
    for (const double x : season.x) {
      at.push_back(static_cast<std::size_t>(std::ranges::lower_bound(times, x) - times.begin()));
    }
    const double middle = (static_cast<double>(season.x.size()) + 1) / 2;
    places += 2 * middle;
    for (double& rank : ranks) {
      rank += middle;
    }
    for (std::size_t i = 0; i < at.size(); ++i) {
      for (std::size_t j = 0; j < at.size(); ++j) {
        const int sign = sign_of(season.y[i] - season.y[j]);
        signs[at[i] * n + at[j]] += sign;
        ranks[at[i]] += sign / 2.0;
      }
    }
  }
  double sum = 0;
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      sum += signs[i * n + j] * signs[i * n + j];
    }
    sum += 4 * ranks[i] * ranks[i];
  }
  return (sum - static_cast<double>(n) * places * places) / 3;
}

/// s, its variance, and the pairs of equal y.
struct Counted : Alone {
  std::int64_t s = 0;
  double pairs = 0;
};

Result<Counted> count(const Series& series) {
  if (auto problem = unusable_points(series.x, series.y)) {
    return *std::move(problem);
  }
  const std::size_t size = series.x.size();
  if (size < 2) {
    return not_enough("A trend needs two values at the very least, and there is one.");
  }
  Counted found;
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const int across = sign_of(series.x[i] - series.x[j]);
      if (across == 0) {
        return bad_argument(
            fmt::format("The time {} stands twice; a trend takes one value a time.", in_words(series.x[i])));
      }
      found.s += static_cast<long>(across) * sign_of(series.y[i] - series.y[j]);
    }
  }
  static_cast<Alone&>(found) = variance_alone(series.y);
  const auto n = static_cast<double>(size);
  found.pairs = n * (n - 1) / 2;
  return found;
}

void judge(Kendall& found) {
  const auto s = static_cast<double>(found.s);
  found.z = found.s == 0 || found.variance <= 0 ? 0.0 : (s - sign_of(s)) / std::sqrt(found.variance);
  found.p = std::min(1.0, normal_tails(found.z));
}

void correlate(Kendall& found, double pairs, double tied) {
  found.tau_a = static_cast<double>(found.s) / pairs;
  found.tau_b = tied < pairs ? static_cast<double>(found.s) / std::sqrt(pairs * (pairs - tied)) : 0.0;
}

/// Chances of every number of falling pairs, 0 to n(n-1)/2: each further value falls below 0 to k of those
/// before it, all equally likely.
std::vector<double> falling_pairs(std::size_t n) {
  std::vector<double> chance{1};
  for (std::size_t k = 1; k < n; ++k) {
    std::vector<double> next(chance.size() + k, 0);
    for (std::size_t i = 0; i < chance.size(); ++i) {
      for (std::size_t more = 0; more <= k; ++more) {
        next[i + more] += chance[i] / static_cast<double>(k + 1);
      }
    }
    chance = std::move(next);
  }
  return chance;
}

} // namespace

double kendall_upper_tail(std::size_t n, std::int64_t s) {
  const auto chance = falling_pairs(n);
  const auto pairs = static_cast<std::int64_t>(chance.size()) - 1;
  double tail = 0;
  for (std::int64_t falling = 0; falling <= pairs && pairs - 2 * falling >= s; ++falling) {
    tail += chance[static_cast<std::size_t>(falling)];
  }
  return tail;
}

std::size_t fewest_for(double p) {
  std::size_t n = 2;
  for (double all_orders = 2; 2 / all_orders > p && n < 100; all_orders *= static_cast<double>(n)) {
    ++n;
  }
  return n;
}

Result<Kendall> mann_kendall(const Series& series) {
  const auto counted = count(series);
  if (!counted) {
    return counted.error();
  }
  const Counted& one = counted.value();
  Kendall found{.n = series.x.size(), .s = one.s, .variance = one.variance};
  judge(found);
  correlate(found, one.pairs, one.tied_pairs);
  if (one.tied_pairs == 0 && found.n <= exact_kendall_most) {
    found.exact = true;
    found.p = std::min(1.0, 2 * kendall_upper_tail(found.n, std::abs(found.s)));
  }
  return found;
}

double variance_of_sum(std::span<const Series> seasons, Together together) {
  if (together == Together::dependent) {
    return variance_with_covariances(seasons);
  }
  double sum = 0;
  for (const Series& season : seasons) {
    sum += variance_alone(season.y).variance;
  }
  return sum;
}

Result<Kendall> seasonal_kendall(std::span<const Series> seasons, Together together) {
  Kendall found;
  double pairs = 0;
  double tied = 0;
  for (const Series& season : seasons) {
    const auto counted = count(season);
    if (!counted) {
      return counted.error();
    }
    found.n += season.x.size();
    found.s += counted.value().s;
    pairs += counted.value().pairs;
    tied += counted.value().tied_pairs;
  }
  if (pairs == 0) {
    return not_enough("There is no season to work with.");
  }
  found.variance = variance_of_sum(seasons, together);
  judge(found);
  correlate(found, pairs, tied);
  return found;
}

} // namespace wetspell
