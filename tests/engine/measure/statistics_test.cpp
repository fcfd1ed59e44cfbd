#include "measure/statistics.hpp"

#include "engine/measure/digits.hpp"

#include <limits>
#include <random>
#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;
using testing::HasSubstr;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();

/// The same invented numbers in every run.
std::vector<double> invented(std::size_t n) {
  std::mt19937 source(20260321);
  std::vector<double> values;
  for (std::size_t i = 0; i < n; ++i) {
    values.push_back(static_cast<double>(source() % 100000) / 1000.0 - 20.0);
  }
  return values;
}

TEST(Moments, OfOneValueHaveNoScatter) {
  const std::vector<double> one{12.5};
  const auto found = value_of(moments(one));
  EXPECT_EQ(found.n, 1U);
  EXPECT_EQ(found.mean, 12.5);
  EXPECT_EQ(found.deviation, 0);
  EXPECT_EQ(found.smallest, 12.5);
  EXPECT_EQ(found.largest, 12.5);
}

TEST(Moments, DoNotDependOnTheOrder) {
  auto values = invented(200);
  const auto before = value_of(moments(values));
  std::mt19937 source(7);
  for (int round = 0; round < 20; ++round) {
    std::ranges::shuffle(values, source);
    const auto after = value_of(moments(values));
    EXPECT_THAT(after.mean, agrees(before.mean, 1e-15));
    EXPECT_THAT(after.deviation, agrees(before.deviation, 1e-14));
  }
}

TEST(Moments, FollowAShiftAndAScale) {
  const auto values = invented(100);
  const auto before = value_of(moments(values));
  for (const double scale : {1.8, -2.5, 1e-6, 1e6}) {
    for (const double shift : {0.0, 32.0, -1000.0}) {
      std::vector<double> moved;
      for (const double value : values) {
        moved.push_back(scale * value + shift);
      }
      const auto after = value_of(moments(moved));
      const double size = std::abs(scale * before.mean) + std::abs(shift);
      EXPECT_NEAR(after.mean, scale * before.mean + shift, 1e-14 * size);
      EXPECT_NEAR(after.deviation, std::abs(scale) * before.deviation,
                  1e-10 * std::abs(scale) * before.deviation + 1e-13 * size);
    }
  }
}

TEST(Moments, KeepTheMeanAmongTheValues) {
  const std::vector<double> equal(7, 0.1);
  const auto found = value_of(moments(equal));
  EXPECT_EQ(found.mean, 0.1);
  EXPECT_EQ(found.deviation, 0);
}

TEST(Moments, RefuseInWords) {
  const auto none = moments({});
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().kind, ProblemKind::not_enough);
  for (const double bad : {nan, inf, -inf}) {
    const std::vector<double> values{1, bad, 3};
    const auto refused = moments(values);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, ProblemKind::not_a_number);
    EXPECT_THAT(refused.error().text, HasSubstr("Value 2 of 3"));
  }
  const std::vector<double> huge{1.7e308, 1.7e308};
  const auto too_large = moments(huge);
  ASSERT_FALSE(too_large);
  EXPECT_EQ(too_large.error().kind, ProblemKind::not_a_number);
}

TEST(MeanHalfWidth, GrowsWithTheLevelAndRefusesWhatIsNoLevel) {
  const auto found = value_of(moments(invented(12)));
  double before = 0;
  for (const double level : {0.1, 0.5, 0.9, 0.95, 0.99, 0.999999}) {
    const double width = value_of(mean_half_width(found, level));
    EXPECT_GT(width, before);
    before = width;
  }
  for (const double level : {0.0, 1.0, -0.5, 95.0, nan, inf}) {
    const auto refused = mean_half_width(found, level);
    ASSERT_FALSE(refused) << level;
    EXPECT_EQ(refused.error().kind, ProblemKind::bad_argument);
  }
  EXPECT_THAT(mean_half_width(found, 95.0).error().text, HasSubstr("95"));
}

TEST(MeanHalfWidth, NeedsTwoValues) {
  const std::vector<double> one{4};
  const auto refused = mean_half_width(value_of(moments(one)), 0.95);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, ProblemKind::not_enough);
}

TEST(Quantile, RunsFromSmallestToLargestWithoutFalling) {
  const auto values = invented(57);
  const auto found = value_of(moments(values));
  EXPECT_EQ(value_of(quantile(values, 0)), found.smallest);
  EXPECT_EQ(value_of(quantile(values, 1)), found.largest);
  double before = -inf;
  for (int step = 0; step <= 1000; ++step) {
    const double at = value_of(quantile(values, step / 1000.0));
    EXPECT_GE(at, before);
    before = at;
  }
}

TEST(Quantile, RefusesWhatIsNoQuantile) {
  const std::vector<double> values{1, 2};
  for (const double p : {-0.1, 1.1, nan, 50.0}) {
    const auto refused = quantile(values, p);
    ASSERT_FALSE(refused) << p;
    EXPECT_EQ(refused.error().kind, ProblemKind::bad_argument);
  }
  EXPECT_EQ(quantile({}, 0.5).error().kind, ProblemKind::not_enough);
  const std::vector<double> with_nan{1, nan};
  EXPECT_EQ(quantile(with_nan, 0.5).error().kind, ProblemKind::not_a_number);
}

TEST(Robust, IsNotMovedByOneWildValue) {
  std::vector<double> values{10, 11, 12, 13, 14};
  const auto before = value_of(robust(values));
  EXPECT_EQ(before.median, 12);
  EXPECT_THAT(before.deviation, agrees(1.4826, 1e-15));
  values.back() = 1e9;
  const auto after = value_of(robust(values));
  EXPECT_EQ(after.median, 12);
  EXPECT_THAT(after.deviation, agrees(1.4826, 1e-15));
}

TEST(Robust, TakesTheMiddleOfAnEvenNumberAndRefusesAsMomentsDo) {
  const std::vector<double> even{4, 1, 3, 2};
  EXPECT_EQ(value_of(robust(even)).median, 2.5);
  EXPECT_EQ(robust({}).error().kind, ProblemKind::not_enough);
  const std::vector<double> with_inf{1, inf};
  EXPECT_EQ(robust(with_inf).error().kind, ProblemKind::not_a_number);
  const std::vector<double> apart{-1.7e308, -1.7e308, 1.7e308};
  EXPECT_TRUE(robust(apart));
  const std::vector<double> too_far{-1.7e308, -1.6e308, 1.7e308, 1.6e308, 0, 1.5e308, -1.5e308};
  EXPECT_EQ(robust(too_far).error().kind, ProblemKind::not_a_number);
}

TEST(LineThroughOrigin, FindsAnExactLineWhateverTheWeights) {
  const std::vector<double> x{1, 2, 5};
  const std::vector<double> y{3, 6, 15};
  const std::vector<double> weights{1, 0.5, 7};
  const auto line = value_of(line_through_origin(x, y, weights));
  EXPECT_THAT(line.slope, agrees(3, 1e-15));
  EXPECT_NEAR(line.slope_uncertainty, 0, 1e-15);
}

TEST(LineThroughOrigin, CountsAPointOfDoubleWeightTwiceInItsSlope) {
  const std::vector<double> x{1, 2, 2};
  const std::vector<double> y{1.1, 2.3, 2.3};
  const std::vector<double> ones{1, 1, 1};
  const std::vector<double> doubled{1, 2};
  const auto twice = value_of(line_through_origin(x, y, ones));
  const auto weighted = value_of(line_through_origin(std::span(x).first(2), std::span(y).first(2), doubled));
  EXPECT_THAT(weighted.slope, agrees(twice.slope, 1e-15));
  EXPECT_THAT(weighted.residual_squares, agrees(twice.residual_squares, 1e-12));
}

TEST(LineThroughOrigin, RefusesInWords) {
  const std::vector<double> two{1, 2};
  const std::vector<double> one{1};
  const std::vector<double> zeros{0, 0};
  const std::vector<double> negative{1, -1};
  EXPECT_EQ(line_through_origin(two, one, two).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(line_through_origin({}, {}, {}).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(line_through_origin(zeros, two, two).error().kind, ProblemKind::not_a_number);
  const auto refused = line_through_origin(two, two, negative);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, ProblemKind::bad_argument);
  EXPECT_THAT(refused.error().text, HasSubstr("Weight 2 is -1"));
}

} // namespace
} // namespace wetspell
