// The last fall of a pool and the day it will be dry.
#include "measure/fall.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

constexpr double stick = 0.0147;

std::vector<DepthReading> readings(std::initializer_list<std::pair<double, double>> all) {
  std::vector<DepthReading> found;
  for (const auto& [day, depth] : all) {
    found.push_back({day, {depth, depth > 0 ? stick : 0}});
  }
  return found;
}

TEST(Fall, BeginsAtTheDeepestReadingSinceTheLastRise) {
  EXPECT_EQ(last_high_water(readings({{1, 0.6}, {8, 0.5}, {15, 0.4}})), 0u);
  EXPECT_EQ(last_high_water(readings({{1, 0.6}, {8, 0.3}, {15, 0.5}, {22, 0.4}})), 2u);
  // A rise that the readings' own uncertainty may make is none ...
  EXPECT_EQ(last_high_water(readings({{1, 0.6}, {8, 0.50}, {15, 0.52}, {22, 0.4}})), 0u);
  // ... but the fall begins at the deepest, and of equal ones at the last.
  EXPECT_EQ(last_high_water(readings({{1, 0.58}, {8, 0.6}, {15, 0.6}, {22, 0.4}})), 2u);
  EXPECT_EQ(last_high_water(readings({{1, 0}, {8, 0.4}})), 1u);
  EXPECT_EQ(last_high_water({}), 0u);
}

TEST(Fall, ASteadyFallIsDryWhereItsLineSays) {
  const auto drying_now =
      value_of(drying(readings({{46100, 0.60}, {46107, 0.53}, {46114, 0.46}, {46121, 0.39}}), 0.95));
  EXPECT_THAT(drying_now.fall_a_day.value, agrees(0.01, 1e-9));
  EXPECT_NEAR(drying_now.dry.x, 46160, 1e-6);
  EXPECT_NEAR(drying_now.robust_dry.value(), 46160, 1e-6);
  // A perfect line is still read with a stick.
  EXPECT_THAT(drying_now.line.residual_deviation, agrees(stick, 1e-12));
  EXPECT_GT(drying_now.dry.high.value(), 46165);
  EXPECT_LT(drying_now.dry.low.value(), 46155);
}

TEST(Fall, OneWildReadingMovesTheRobustLineLess) {
  const auto all = value_of(drying(
      readings({{0, 0.60}, {7, 0.53}, {14, 0.46}, {21, 0.20}, {28, 0.32}, {35, 0.25}, {42, 0.18}}), 0.95));
  EXPECT_NEAR(all.robust_dry.value(), 60, 3);
  EXPECT_LT(all.dry.x, all.robust_dry.value());
}

TEST(Fall, RefusesInWords) {
  EXPECT_EQ(drying(readings({{1, 0.5}, {8, 0.4}}), 0.95).error().text,
            "2 of the at least 3 readings since the last high water.");
  EXPECT_EQ(drying(readings({{1, 0.5}, {8, 0.4}, {15, 0}}), 0.95).error().text,
            "The last reading is 0: the pool is dry.");
  EXPECT_EQ(drying(readings({{1, 0.5}, {8, 0.4}, {15, 0.5}}), 0.95).error().text,
            "The pool is not falling: 0.5 m at first, 0.5 m at last.");
  EXPECT_EQ(drying(readings({{1, 0.5}, {1, 0.5}, {1, 0.4}}), 0.95).error().kind, ProblemKind::not_enough);
}

} // namespace
} // namespace wetspell
