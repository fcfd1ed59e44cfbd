// How far two people agree: the corners. Published values are in tests/published.
#include "estimate/agreement.hpp"

#include "engine/measure/digits.hpp"

#include <cmath>
#include <limits>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(Kappa, FullAgreementIsOneAndIndependenceIsZero) {
  const std::vector<double> full{5, 0, 0, 0, 7, 0, 0, 0, 3};
  const std::vector<double> apart{4, 8, 6, 12};
  for (const auto weights : {KappaWeights::none, KappaWeights::linear, KappaWeights::quadratic}) {
    const Kappa same = value_of(kappa(full, 3, weights, 0.95));
    EXPECT_THAT(same.kappa, agrees(1, 1e-15));
    EXPECT_NEAR(same.error, 0, 1e-7);
    EXPECT_NEAR(value_of(kappa(apart, 2, weights, 0.95)).kappa, 0, 1e-15);
  }
}

TEST(Kappa, WithTwoClassesAllWeightsAreOne) {
  const std::vector<double> table{20, 5, 10, 15};
  const Kappa none = value_of(kappa(table, 2, KappaWeights::none, 0.95));
  EXPECT_THAT(none.kappa, agrees(0.4, 1e-14)); // (0.7 - 0.5) / (1 - 0.5), by hand
  EXPECT_EQ(none.kappa, value_of(kappa(table, 2, KappaWeights::quadratic, 0.95)).kappa);
}

TEST(Kappa, Refuses) {
  const std::vector<double> one_class{9, 0, 0, 0};
  EXPECT_EQ(kappa(one_class, 2, KappaWeights::none, 0.95).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(kappa(std::vector<double>{1, 0, 0, 0}, 2, KappaWeights::none, 0.95).error().kind,
            ProblemKind::not_enough);
  EXPECT_EQ(kappa(std::vector<double>{1, 2, 3}, 2, KappaWeights::none, 0.95).error().kind,
            ProblemKind::bad_argument);
  EXPECT_EQ(kappa(std::vector<double>{1, -2, 3, 5}, 2, KappaWeights::none, 0.95).error().kind,
            ProblemKind::bad_argument);
  EXPECT_EQ(kappa(std::vector<double>{1, 2, 3, 5}, 2, KappaWeights::none, 0).error().kind,
            ProblemKind::bad_argument);
}

TEST(Differences, OfTheSameValuesAreNone) {
  const std::vector<double> same{3, 5, 9};
  const Differences found = value_of(differences(same, same, 0.95));
  EXPECT_EQ(found.mean, 0);
  EXPECT_EQ(found.limits.high, 0);
  EXPECT_THAT(found.concordance, agrees(1, 1e-15));
}

TEST(Differences, AShiftIsTheMeanAndTakesConcordanceDown) {
  const std::vector<double> first{3, 5, 9}, second{1, 3, 7}, flat{4, 4, 4};
  const Differences found = value_of(differences(first, second, 0.95));
  EXPECT_EQ(found.mean, 2);
  EXPECT_EQ(found.deviation, 0);
  // 2 * 56/9 / (56/9 + 56/9 + 4), by hand.
  EXPECT_THAT(found.concordance, agrees(112.0 / 148.0, 1e-14));
  EXPECT_TRUE(std::isnan(value_of(differences(flat, flat, 0.95)).concordance));
}

TEST(Differences, Refuses) {
  const std::vector<double> one{1}, two{1, 2}, not_finite{1, std::numeric_limits<double>::infinity()};
  EXPECT_EQ(differences(one, one, 0.95).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(differences(one, two, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(differences(two, not_finite, 0.95).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(differences(two, two, 2).error().kind, ProblemKind::bad_argument);
}

TEST(Scatter, HasTheIntervalOfChiSquared) {
  const std::vector<double> apart{1, -1, 2, -2};
  const Scatter found = value_of(scatter_within_pairs(apart, 0.95));
  EXPECT_THAT(found.deviation, agrees(std::sqrt(10.0 / 8), 1e-15));
  // Chi-squared with 4 degrees at 0.975 and 0.025: R 4.2.2, qchisq.
  EXPECT_THAT(found.interval.low, agrees(std::sqrt(5 / 11.1432867818778), 1e-12));
  EXPECT_THAT(found.interval.high, agrees(std::sqrt(5 / 0.4844185570879), 1e-12));
  EXPECT_EQ(scatter_within_pairs({}, 0.95).error().kind, ProblemKind::not_enough);
}

TEST(Drift, IsTheLinesChangeOverTheTime) {
  const std::vector<double> days{0, 1, 2, 3}, straight{5, 7, 9, 11}, bent{0, 1, 1, 2};
  const Drift full = value_of(drift(days, straight, 0.95));
  EXPECT_THAT(full.change, agrees(6, 1e-14));
  EXPECT_NEAR(full.interval.high - full.interval.low, 0, 1e-12);
  const Drift found = value_of(drift(days, bent, 0.95));
  EXPECT_THAT(found.change, agrees(1.8, 1e-14));
  // R 4.2.2, confint(lm(c(0, 1, 1, 2) ~ c(0, 1, 2, 3))): slope 0.6, -0.008486984459 to 1.208486984459.
  EXPECT_THAT(found.interval.low, agrees(3 * -0.008486984459331, 1e-9));
  EXPECT_THAT(found.interval.high, agrees(3 * 1.208486984459, 1e-11));
  EXPECT_EQ(drift(days, std::vector<double>{1, 2}, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(drift(std::vector<double>{1, 1, 1}, std::vector<double>{1, 2, 3}, 0.95).error().kind,
            ProblemKind::not_enough);
  EXPECT_EQ(drift(std::vector<double>{1, 2}, std::vector<double>{1, 2}, 0.95).error().kind,
            ProblemKind::not_enough);
}

TEST(RelativeDifference, IsOverTheMeanOfBoth) {
  EXPECT_THAT(value_of(relative_difference(9, 11)), agrees(0.2, 1e-15));
  EXPECT_EQ(value_of(relative_difference(0, 3)), 2);
  EXPECT_EQ(relative_difference(0, 0).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(relative_difference(-1, 3).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
