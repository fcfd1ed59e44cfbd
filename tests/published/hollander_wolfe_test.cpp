// Hollander and Wolfe, Nonparametric Statistical Methods: Kendall's test and Theil's slope.
#include "measure/kendall.hpp"
#include "measure/sen_line.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

// First edition (1973), p. 187; tau as the tests of SciPy quote it, the exact p by SciPy 1.10.1.
TEST(HollanderWolfe, Page187KendallExact) {
  const Series series{{44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1},
                      {2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8}};
  const auto kendall = value_of(mann_kendall(series));
  EXPECT_TRUE(kendall.exact);
  EXPECT_THAT(kendall.tau_a, agrees(0.4444444444444445, 1e-15));
  EXPECT_EQ(kendall.tau_b, kendall.tau_a);
  EXPECT_THAT(kendall.p, agrees(0.1194389329806, 1e-12));
  EXPECT_THAT(kendall_upper_tail(9, kendall.s), agrees(0.05971946649, 1e-10));
  test::record("p", kendall.p, 0.1194389329806);
}

// Third edition, example 9.1: cloud seeding. Slope and exact p by R 4.2.2 (package NSM3 has the data).
TEST(HollanderWolfe, Example9_1TheilSlope) {
  const Series series{{1, 2, 3, 4, 5}, {1.26, 1.27, 1.12, 1.16, 1.03}};
  const auto kendall = value_of(mann_kendall(series));
  EXPECT_EQ(kendall.s, -6);
  EXPECT_NEAR(kendall.p, 0.233333, 0.5e-6);
  const auto sen = value_of(theil_sen(series.x, series.y, 0.95));
  EXPECT_THAT(sen.slope, agrees(-0.05625, 1e-13));
  EXPECT_THAT(sen.middle_intercept, agrees(1.31625, 1e-13)); // the book's own
  EXPECT_THAT(sen.intercept, agrees(1.32875, 1e-13));        // Conover's, from the two medians
}

} // namespace
} // namespace wetspell
