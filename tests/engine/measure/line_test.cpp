// Lines, their intervals, and where they reach a height.
#include "measure/line.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(Line, IsTheSameWhereverTheZeroOfTheDatesLies) {
  const std::vector<double> near{0, 7, 15, 22};
  std::vector<double> far;
  for (const double day : near) {
    far.push_back(46000 + day);
  }
  const std::vector<double> depths{0.64, 0.51, 0.38, 0.2};
  const auto one = value_of(least_squares(near, depths));
  const auto other = value_of(least_squares(far, depths));
  EXPECT_THAT(other.slope, agrees(one.slope, 1e-12));
  EXPECT_THAT(other.residual_deviation, agrees(one.residual_deviation, 1e-12));
  EXPECT_THAT(other.at(46030), agrees(one.at(30), 1e-11));
  const auto when = value_of(crossing(other, 0, 0.95));
  const auto same = value_of(crossing(one, 0, 0.95));
  EXPECT_NEAR(when.x - 46000, same.x, 1e-9);
  EXPECT_NEAR(when.high.value() - 46000, same.high.value(), 1e-9);
}

TEST(Line, ACrossingsEndsAreWhereThePredictionsBoundsReachTheHeight) {
  const auto line = value_of(least_squares(std::vector<double>{0, 7, 14, 21, 28},
                                           std::vector<double>{0.60, 0.50, 0.43, 0.30, 0.21}));
  const auto when = value_of(crossing(line, 0, 0.95));
  EXPECT_NEAR(line.at(when.x), 0, 1e-15);
  EXPECT_NEAR(line.at(when.low.value()) - value_of(half_width_at(line, *when.low, 0.95, true)), 0, 1e-14);
  EXPECT_NEAR(line.at(when.high.value()) + value_of(half_width_at(line, *when.high, 0.95, true)), 0, 1e-14);
  EXPECT_LT(*when.low, when.x);
  EXPECT_GT(*when.high, when.x);
}

TEST(Line, ASlopeThatMayBeNoughtLeavesTheCrossingOpen) {
  const auto line =
      value_of(least_squares(std::vector<double>{0, 1, 2, 3}, std::vector<double>{0.5, 0.3, 0.6, 0.35}));
  const auto when = value_of(crossing(line, 0, 0.95));
  EXPECT_FALSE(when.high.has_value());
  EXPECT_GT(when.x, 3);
}

TEST(Line, RefusesWhatHasNoLineOrNoScatter) {
  using Values = std::vector<double>;
  EXPECT_EQ(least_squares(Values{1}, Values{1}).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(least_squares(Values{1, 1}, Values{1, 2}).error().text,
            "All points stand at 1; a line needs two places.");
  EXPECT_EQ(least_squares(Values{1, 2}, Values{1}).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(least_squares(Values{1, NAN}, Values{1, 2}).error().kind, ProblemKind::not_a_number);
  const auto two = value_of(least_squares(Values{1, 2}, Values{3, 5}));
  EXPECT_EQ(two.slope, 2);
  EXPECT_EQ(half_width_at(two, 1, 0.95, false).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(crossing(two, 0, 0.95).error().kind, ProblemKind::not_enough);
  const auto level = value_of(least_squares(Values{1, 2, 3}, Values{4, 4, 4}));
  EXPECT_EQ(crossing(level, 0, 0.95).error().text, "The line is level and never reaches 0.");
  EXPECT_EQ(crossing(level, 0, 1.5).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
