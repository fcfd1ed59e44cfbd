// How far two people agree: in classes, in numbers, in counts.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace wetspell {

/// How much a disagreement counts. One class away out of k: all of it; 1/(k-1) of it; the square of that.
enum class KappaWeights : std::uint8_t { none, linear, quadratic };

struct Kappa {
  double agreement = 0; ///< share of agreement, weighted
  double by_chance = 0; ///< what two people would reach who judge by their own shares of classes, at random
  double kappa = 0;     ///< how far agreement goes beyond chance: 1 in full, 0 not at all
  double error = 0;     ///< standard error, Fleiss, Cohen and Everitt (1969)
  Interval interval;    ///< normal, within -1 to 1
  double n = 0;
};

/// Cohen's kappa (1960), or weighted (1968), of a square table: row the first person's class, column the
/// second's, a cell the number of things judged so. `similarity`, of the table's shape: 1 for full agreement,
/// 0 for none.
///
/// Refuses a table that is not square or holds what is no count (bad_argument), fewer than two things
/// (not_enough), and one in which chance alone agrees in full, as when both always said the same one class
/// (not_a_number).
Result<Kappa> kappa(std::span<const double> table, std::span<const double> similarity, double level);
Result<Kappa> kappa(std::span<const double> table, std::size_t classes, KappaWeights weights, double level);

/// Differences of pairs, first minus second (Bland and Altman 1986).
struct Differences {
  std::size_t n = 0;
  double mean = 0;
  double deviation = 0;   ///< n - 1
  Interval mean_interval; ///< Student's t
  Interval limits;        ///< mean minus and plus 1.96 deviations for 0.95: not 2, and no t
  Interval next;          ///< holds a new difference with the level's chance, however few pairs (normal)
  double concordance = 0; ///< Lin (1989), with moments over n; NaN when neither person's values vary
};

/// Refuses fewer than two pairs (not_enough), sides of unequal length and a level not between 0 and 1
/// (bad_argument), and what is not finite (not_a_number).
Result<Differences> differences(std::span<const double> first, std::span<const double> second, double level);

/// The standard deviation of one person's readings of the same thing: the root of the squared differences'
/// sum over twice their number, with the interval of its chi-squared distribution. It does not matter who of
/// a pair is first. Refuses as `differences` does, but takes one pair.
struct Scatter {
  std::size_t n = 0;
  double deviation = 0;
  Interval interval;
};
Result<Scatter> scatter_within_pairs(std::span<const double> differences, double level);

/// How much a value changes from the first of its moments to the last, along the straight line through all
/// (least squares, Student's t with n - 2 degrees of freedom).
struct Drift {
  std::size_t n = 0;
  double change = 0;
  Interval interval;
};
/// Refuses fewer than three values and all at one moment (not_enough), sides of unequal length and a level
/// not between 0 and 1 (bad_argument), and what is not finite (not_a_number).
Result<Drift> drift(std::span<const double> moments, std::span<const double> values, double level);

/// |first - second| over their mean: for what has a true zero, so not for temperatures in °C or °F. Refuses
/// values below 0 (bad_argument) and two zeros (not_a_number).
Result<double> relative_difference(double first, double second);

} // namespace wetspell
