// What a set of numbers looks like: range, quartiles, mean with two intervals, total.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>

namespace wetspell {

/// How intervals are worked out: the same seed gives the same answer on every machine.
struct Drawing {
  double level = 0.95;
  std::size_t draws = 2000;
  std::uint64_t seed = 20260401;
};

struct Description {
  std::size_t n = 0;
  double smallest = 0, lower_quartile = 0, median = 0, mean = 0, upper_quartile = 0, largest = 0;
  double deviation = 0;                  ///< standard deviation (n - 1); 0 for one value
  std::optional<Interval> mean_by_t;     ///< two values or more
  std::optional<Interval> mean_by_draws; ///< bootstrap_mean(); where that refuses, empty
};

/// Quartiles by definition 7 of Hyndman and Fan. Refuses as moments() does.
Result<Description> describe(std::span<const double> values, const Drawing& drawing);

/// Fewer values than these say too little about their own scatter to be drawn from.
inline constexpr std::size_t fewest_to_draw = 5;

/// Interval of the mean by the studentised bootstrap (Efron and Tibshirani 1993, 12.5): the values drawn
/// again with replacement, the distance of each draw's mean in its own standard errors, and the quantiles of
/// those distances in place of Student's. Unlike the plain percentile interval it keeps its promise for a
/// dozen values, also when they lean to one side. Refuses fewer than fewest_to_draw values (not_enough),
/// values that are all the same (not_enough: no scatter to draw from), and a bad level or no draws
/// (bad_argument).
Result<Interval> bootstrap_mean(std::span<const double> values, const Drawing& drawing);

/// The sum, its uncertainty from the parts' (independent, GUM 5.1.2); not known when one part's is not.
Result<Measured> total(std::span<const Measured> parts);

} // namespace wetspell
