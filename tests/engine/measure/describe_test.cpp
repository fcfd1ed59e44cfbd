// Descriptions of sets of numbers.
#include "measure/describe.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(Describe, TheSameSeedGivesTheSameInterval) {
  const std::vector<double> areas{140, 310, 95, 520, 77, 230, 180, 1240};
  const auto one = value_of(bootstrap_mean(areas, {.level = 0.95, .draws = 500, .seed = 7}));
  const auto same = value_of(bootstrap_mean(areas, {.level = 0.95, .draws = 500, .seed = 7}));
  const auto other = value_of(bootstrap_mean(areas, {.level = 0.95, .draws = 500, .seed = 8}));
  EXPECT_EQ(one.low, same.low);
  EXPECT_EQ(one.high, same.high);
  EXPECT_NE(one.high, other.high);
  // Areas lean to the right, and so does the interval of their mean.
  const double mean = 349;
  EXPECT_GT(one.high - mean, mean - one.low);
}

TEST(Describe, FewValuesHaveNoIntervals) {
  const auto one = value_of(describe(std::vector<double>{4}, {}));
  EXPECT_EQ(one.mean, 4);
  EXPECT_EQ(one.median, 4);
  EXPECT_FALSE(one.mean_by_t.has_value());
  const auto two = value_of(describe(std::vector<double>{4, 6}, {}));
  EXPECT_TRUE(two.mean_by_t.has_value());
  EXPECT_FALSE(two.mean_by_draws.has_value());
  EXPECT_EQ(describe(std::vector<double>{}, {}).error().kind, ProblemKind::not_enough);
  const std::vector<double> same(6, 3);
  EXPECT_EQ(bootstrap_mean(same, {}).error().text, "All 6 values are 3: there is no scatter to draw from.");
}

TEST(Describe, TotalsAddUncertaintiesInQuadrature) {
  const auto both = value_of(total(std::vector<Measured>{{10, 3}, {20, 4}}));
  EXPECT_EQ(both.value, 30);
  EXPECT_THAT(both.uncertainty, agrees(5, 1e-15));
  EXPECT_EQ(value_of(total(std::vector<Measured>{{10, 3}, {20, 0}})).uncertainty, 0);
  EXPECT_EQ(total({}).error().kind, ProblemKind::not_enough);
}

} // namespace
} // namespace wetspell
