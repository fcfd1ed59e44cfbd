#include "measure/pacing.hpp"

#include "engine/measure/digits.hpp"

#include <limits>
#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;
using testing::HasSubstr;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();

TEST(PaceFromRuns, OfOneRunIsItsLengthWithTheRoundingOfTheCount) {
  const std::vector<CalibrationRun> runs{{.distance = 30, .count = 20}};
  const auto found = value_of(pace_from_runs(runs, CountedAs::paces));
  EXPECT_THAT(found.pace.value, agrees(1.5, 1e-15));
  // Half a pace in twenty, rectangular: 1.5 * 0.5 / sqrt(3) / 20.
  EXPECT_THAT(found.pace.uncertainty, agrees(1.5 * 0.5 / std::sqrt(3.0) / 20, 1e-14));
  EXPECT_EQ(found.runs, 1);
  EXPECT_TRUE(std::isnan(found.variation));
}

TEST(PaceFromRuns, IsAllMetresOverAllCounts) {
  const std::vector<CalibrationRun> runs{
      {.distance = 20, .count = 13}, {.distance = 50, .count = 34}, {.distance = 30, .count = 20}};
  const auto found = value_of(pace_from_runs(runs, CountedAs::paces));
  EXPECT_THAT(found.pace.value, agrees(100.0 / 67.0, 1e-14));
  EXPECT_EQ(found.runs, 3);
  // Relative standard deviation of 20/13, 50/34 and 30/20, worked out with mpmath 1.2.1.
  EXPECT_THAT(found.variation, agrees(0.02264582859286855562, 1e-12));
}

TEST(PaceFromRuns, TakesTwoStepsForOnePace) {
  const std::vector<CalibrationRun> in_paces{{.distance = 30, .count = 20}, {.distance = 30, .count = 21}};
  const std::vector<CalibrationRun> in_steps{{.distance = 30, .count = 40}, {.distance = 30, .count = 42}};
  const auto paces = value_of(pace_from_runs(in_paces, CountedAs::paces));
  const auto steps = value_of(pace_from_runs(in_steps, CountedAs::steps));
  EXPECT_THAT(steps.pace.value, agrees(paces.pace.value, 1e-14));
  // A step is the finer count, so its rounding weighs half as much.
  EXPECT_LT(steps.pace.uncertainty, paces.pace.uncertainty);
}

TEST(PaceFromRuns, OfEqualRunsStillHasTheRounding) {
  const std::vector<CalibrationRun> runs(4, {.distance = 25, .count = 16});
  const auto found = value_of(pace_from_runs(runs, CountedAs::paces));
  EXPECT_NEAR(found.variation, 0, 1e-12);
  EXPECT_THAT(found.pace.uncertainty, agrees(25.0 / 16 * 0.5 / std::sqrt(3.0) / 16 / 2, 1e-9));
}

TEST(PaceFromRuns, DoesNotDependOnTheOrderAndFollowsTheUnit) {
  const std::vector<CalibrationRun> runs{{.distance = 20, .count = 13}, {.distance = 50, .count = 34}};
  const std::vector<CalibrationRun> turned{runs[1], runs[0]};
  const std::vector<CalibrationRun> in_feet{{.distance = 20 / 0.3048, .count = 13},
                                            {.distance = 50 / 0.3048, .count = 34}};
  const auto found = value_of(pace_from_runs(runs, CountedAs::paces));
  const auto other = value_of(pace_from_runs(turned, CountedAs::paces));
  const auto feet = value_of(pace_from_runs(in_feet, CountedAs::paces));
  EXPECT_THAT(other.pace.value, agrees(found.pace.value, 1e-15));
  EXPECT_THAT(other.pace.uncertainty, agrees(found.pace.uncertainty, 1e-13));
  EXPECT_THAT(feet.pace.value, agrees(found.pace.value / 0.3048, 1e-14));
  EXPECT_THAT(feet.pace.uncertainty, agrees(found.pace.uncertainty / 0.3048, 1e-12));
  EXPECT_THAT(feet.variation, agrees(found.variation, 1e-12));
}

TEST(PaceFromRuns, RefusesInWords) {
  EXPECT_EQ(pace_from_runs({}, CountedAs::paces).error().kind, ProblemKind::not_enough);
  const CalibrationRun good{.distance = 30, .count = 20};
  for (const double bad : {0.0, -4.0}) {
    const auto distance = pace_from_runs(std::vector{good, {.distance = bad, .count = 20}}, CountedAs::paces);
    ASSERT_FALSE(distance);
    EXPECT_EQ(distance.error().kind, ProblemKind::bad_argument);
    EXPECT_THAT(distance.error().text, HasSubstr("Run 2"));
    const auto count = pace_from_runs(std::vector{good, {.distance = 30, .count = bad}}, CountedAs::steps);
    ASSERT_FALSE(count);
    EXPECT_EQ(count.error().kind, ProblemKind::bad_argument);
    EXPECT_THAT(count.error().text, HasSubstr("steps"));
  }
  for (const double bad : {nan, inf}) {
    EXPECT_EQ(
        pace_from_runs(std::vector{good, {.distance = bad, .count = 20}}, CountedAs::paces).error().kind,
        ProblemKind::not_a_number);
    EXPECT_EQ(
        pace_from_runs(std::vector{good, {.distance = 20, .count = bad}}, CountedAs::paces).error().kind,
        ProblemKind::not_a_number);
  }
}

TEST(PacedLength, CountsPacesAndSteps) {
  const Measured pace{.value = 1.5, .uncertainty = 0.02};
  const auto paces = value_of(paced_length(12, CountedAs::paces, pace));
  const auto steps = value_of(paced_length(24, CountedAs::steps, pace));
  EXPECT_THAT(paces.value, agrees(18, 1e-15));
  EXPECT_THAT(steps.value, agrees(18, 1e-15));
  EXPECT_LT(steps.uncertainty, paces.uncertainty);
}

TEST(PacedLength, DoesNotClaimAnUncertaintyItCannotKnow) {
  EXPECT_EQ(value_of(paced_length(12, CountedAs::paces, {.value = 1.5, .uncertainty = 0})).uncertainty, 0);
}

TEST(PacedLength, OfNoPacesIsNoLength) {
  const auto none = value_of(paced_length(0, CountedAs::paces, {.value = 1.5, .uncertainty = 0.02}));
  EXPECT_EQ(none.value, 0);
  EXPECT_THAT(none.uncertainty, agrees(1.5 * 0.5 / std::sqrt(3.0), 1e-14));
}

TEST(PacedLength, RefusesInWords) {
  const Measured pace{.value = 1.5, .uncertainty = 0.02};
  const auto negative = paced_length(-3, CountedAs::steps, pace);
  ASSERT_FALSE(negative);
  EXPECT_EQ(negative.error().kind, ProblemKind::bad_argument);
  EXPECT_THAT(negative.error().text, HasSubstr("-3 steps"));
  EXPECT_EQ(paced_length(3, CountedAs::paces, {.value = 0, .uncertainty = 1}).error().kind,
            ProblemKind::bad_argument);
  EXPECT_EQ(paced_length(3, CountedAs::paces, {.value = 1, .uncertainty = -1}).error().kind,
            ProblemKind::bad_argument);
  EXPECT_EQ(paced_length(nan, CountedAs::paces, pace).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(paced_length(3, CountedAs::paces, {.value = 1, .uncertainty = nan}).error().kind,
            ProblemKind::not_a_number);
  EXPECT_EQ(paced_length(1e200, CountedAs::paces, {.value = 1e200, .uncertainty = 1}).error().kind,
            ProblemKind::not_a_number);
}

} // namespace
} // namespace wetspell
