#include "estimate/agreement.hpp"

#include "measure/distribution.hpp"
#include "measure/line.hpp"
#include "measure/special_functions.hpp"
#include "measure/statistics.hpp"
#include "measure/usable.hpp"

#include <boost/math/distributions/chi_squared.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace wetspell {

namespace {

/// Sums of a square table's rows and columns.
struct Margins {
  std::vector<double> rows, columns;
  double n = 0;
};

Margins margins(std::span<const double> table, std::size_t k) {
  Margins all{std::vector<double>(k), std::vector<double>(k), 0};
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t j = 0; j < k; ++j) {
      all.rows[i] += table[i * k + j];
      all.columns[j] += table[i * k + j];
      all.n += table[i * k + j];
    }
  return all;
}

/// Fleiss, Cohen and Everitt (1969): the variance of a weighted kappa in a large sample.
double variance(std::span<const double> table, std::span<const double> similarity, const Margins& sums,
                const Kappa& found) {
  const std::size_t k = sums.rows.size();
  std::vector<double> of_rows(k), of_columns(k); // mean similarity to what the other person says
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t j = 0; j < k; ++j) {
      of_rows[i] += similarity[i * k + j] * sums.columns[j] / sums.n;
      of_columns[j] += similarity[i * k + j] * sums.rows[i] / sums.n;
    }
  double sum = 0;
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t j = 0; j < k; ++j) {
      const double term = similarity[i * k + j] - (of_rows[i] + of_columns[j]) * (1 - found.kappa);
      sum += table[i * k + j] / sums.n * term * term;
    }
  const double shift = found.kappa - found.by_chance * (1 - found.kappa);
  const double beyond = 1 - found.by_chance;
  return (sum - shift * shift) / (sums.n * beyond * beyond);
}

double similarity_of(std::size_t i, std::size_t j, std::size_t classes, KappaWeights weights) {
  const double apart = std::abs(static_cast<double>(i) - static_cast<double>(j));
  const double share = classes > 1 ? apart / static_cast<double>(classes - 1) : 0;
  switch (weights) {
  case KappaWeights::linear:
    return 1 - share;
  case KappaWeights::quadratic:
    return 1 - share * share;
  case KappaWeights::none:
    break;
  }
  return i == j ? 1 : 0;
}

} // namespace

Result<Kappa> kappa(std::span<const double> table, std::span<const double> similarity, double level) {
  const auto k = static_cast<std::size_t>(std::lround(std::sqrt(static_cast<double>(table.size()))));
  if (k * k != table.size() || similarity.size() != table.size())
    return bad_argument("A table of agreement has as many rows as columns.");
  for (const double count : table)
    if (!(count >= 0) || !std::isfinite(count))
      return bad_argument(fmt::format("{} is no number of things that were judged.", in_words(count)));
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  const Margins sums = margins(table, k);
  if (sums.n < 2)
    return not_enough("Agreement needs at least two things that both judged.");
  Kappa found;
  found.n = sums.n;
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t j = 0; j < k; ++j) {
      found.agreement += similarity[i * k + j] * table[i * k + j] / sums.n;
      found.by_chance += similarity[i * k + j] * (sums.rows[i] / sums.n) * (sums.columns[j] / sums.n);
    }
  constexpr double full = 1 - 1e-12;
  if (found.by_chance > full)
    return not_a_number("Both always said the same one class: chance alone would agree in full, and kappa "
                        "says nothing.");
  found.kappa = (found.agreement - found.by_chance) / (1 - found.by_chance);
  found.error = std::sqrt(std::max(0.0, variance(table, similarity, sums, found)));
  const double half = normal_factor(level) * found.error;
  found.interval = {std::max(-1.0, found.kappa - half), std::min(1.0, found.kappa + half)};
  return found;
}

Result<Kappa> kappa(std::span<const double> table, std::size_t classes, KappaWeights weights, double level) {
  std::vector<double> similarity;
  similarity.reserve(classes * classes);
  for (std::size_t i = 0; i < classes; ++i)
    for (std::size_t j = 0; j < classes; ++j)
      similarity.push_back(similarity_of(i, j, classes, weights));
  return kappa(table, similarity, level);
}

Result<Differences> differences(std::span<const double> first, std::span<const double> second, double level) {
  if (first.size() != second.size())
    return bad_argument(fmt::format("{} values cannot be paired with {}.", first.size(), second.size()));
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  if (first.size() < 2)
    return not_enough("A difference between two people needs at least two pairs of readings.");
  std::vector<double> apart;
  apart.reserve(first.size());
  for (std::size_t i = 0; i < first.size(); ++i)
    apart.push_back(first[i] - second[i]);
  const auto of_apart = moments(apart);
  const auto of_first = moments(first);
  const auto of_second = moments(second);
  for (const auto* each : {&of_apart, &of_first, &of_second})
    if (!*each)
      return each->error();
  const auto half = mean_half_width(of_apart.value(), level);
  if (!half)
    return half.error();
  const Moments& all = of_apart.value();
  const double mean = all.mean;
  const double spread = normal_factor(level) * all.deviation;
  // Student's for the mean of n and one more: a half-width of the mean grown by the root of n + 1.
  const double reach = half.value() * std::sqrt(static_cast<double>(all.n) + 1);
  // Lin's with moments over n: twice the covariance is the sum of the variances less that of the differences.
  const auto square = [](double value) { return value * value; };
  const double n = static_cast<double>(all.n);
  const double variances =
      (square(of_first.value().deviation) + square(of_second.value().deviation)) * (n - 1) / n;
  const double of_differences = square(all.deviation) * (n - 1) / n;
  const double below = variances + square(mean);
  return Differences{.n = all.n,
                     .mean = mean,
                     .deviation = all.deviation,
                     .mean_interval = {mean - half.value(), mean + half.value()},
                     .limits = {mean - spread, mean + spread},
                     .next = {mean - reach, mean + reach},
                     .concordance = variances > 0 ? (variances - of_differences) / below
                                                  : std::numeric_limits<double>::quiet_NaN()};
}

Result<Scatter> scatter_within_pairs(std::span<const double> differences, double level) {
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  if (differences.empty())
    return not_enough("Scatter needs at least one pair of readings.");
  const double n = static_cast<double>(differences.size());
  double squares = 0;
  for (const double each : differences)
    squares += each * each;
  if (!std::isfinite(squares))
    return not_a_number("A difference is not a finite number.");
  const boost::math::chi_squared_distribution<double, QuietPolicy> chi_squared(n);
  const double tail = (1 - level) / 2;
  return Scatter{differences.size(),
                 std::sqrt(squares / (2 * n)),
                 {std::sqrt(squares / 2 / boost::math::quantile(chi_squared, 1 - tail)),
                  std::sqrt(squares / 2 / boost::math::quantile(chi_squared, tail))}};
}

Result<Drift> drift(std::span<const double> moments_of, std::span<const double> values, double level) {
  const auto line = least_squares(moments_of, values);
  if (!line)
    return line.error();
  const auto half = slope_half_width(line.value(), level);
  if (!half)
    return half.error();
  const auto [first, last] = std::minmax_element(moments_of.begin(), moments_of.end());
  const double span = *last - *first;
  const double change = line.value().slope * span;
  return Drift{values.size(), change, {change - half.value() * span, change + half.value() * span}};
}

Result<double> relative_difference(double first, double second) {
  if (!std::isfinite(first) || !std::isfinite(second))
    return not_a_number("A value is not a finite number.");
  if (first < 0 || second < 0)
    return bad_argument("A relative difference is for values from 0 on.");
  if (first + second == 0)
    return not_a_number("Both are 0, and no share of 0 can be taken.");
  return std::abs(first - second) / ((first + second) / 2);
}

} // namespace wetspell
