// USEPA (2009), Statistical Analysis of Groundwater Monitoring Data at RCRA Facilities, Unified Guidance, EPA
// 530/R-09-007: examples 17-6, 17-7 and 14-10, with the results that the R package EnvStats documents for
// them (kendallTrendTest, kendallSeasonalTrendTest).
#include "measure/kendall.hpp"
#include "measure/line.hpp"
#include "measure/sen_line.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

// Example 17-6, p. 17-33: sulfate, 23 values with ties.
TEST(EpaTrend, Example17_6SulfateWithTies) {
  const Series series{{89.6, 89.8, 90.1, 90.3, 90.6, 90.8, 91.1, 91.3, 91.6, 91.8, 92.1, 92.6,
                       93.1, 93.6, 94.1, 94.6, 95.1, 95.6, 95.8, 96.1, 96.3, 96.6, 96.8},
                      {480, 450, 490, 520, 485, 510, 510, 530, 510, 560, 560, 540,
                       590, 550, 600, 700, 570, 610, 650, 620, 830, 720, 590}};
  const auto kendall = value_of(mann_kendall(series));
  EXPECT_EQ(kendall.s, 194);
  EXPECT_THAT(kendall.variance, agrees(1428, 1e-14));
  EXPECT_NEAR(kendall.z, 5.107322, 0.5e-6);
  EXPECT_THAT(kendall.p, agrees(3.267574e-07, 1e-6));
  EXPECT_NEAR(kendall.tau_a, 0.7667984, 0.5e-7); // EnvStats prints tau a; R's cor() gives tau b
  EXPECT_NEAR(kendall.tau_b, 0.7745, 0.5e-4);
  EXPECT_FALSE(kendall.exact);
  const auto sen = value_of(theil_sen(series.x, series.y, 0.95));
  EXPECT_NEAR(sen.slope, 26.6666667, 0.5e-7);
  EXPECT_NEAR(sen.intercept, -1909.3333333, 0.5e-7);
  EXPECT_NEAR(sen.low.value(), 20.00000, 0.5e-5);
  EXPECT_NEAR(sen.high.value(), 35.71182, 0.5e-5);
  test::record("z", kendall.z, 5.10732159684); // R 4.2.2
}

// Example 17-7, p. 17-36: sodium. The printed slope, 1.33, is quoted from memory; in numbers by R 4.2.2.
TEST(EpaTrend, Example17_7SodiumBySen) {
  const Series series{{89.6, 90.1, 90.8, 91.1, 92.1, 93.1, 94.1, 95.6, 96.1, 96.3},
                      {56, 53, 51, 55, 52, 60, 62, 59, 61, 63}};
  const auto kendall = value_of(mann_kendall(series));
  EXPECT_EQ(kendall.s, 25);
  EXPECT_THAT(kendall.variance, agrees(125, 1e-14));
  EXPECT_THAT(kendall.z, agrees(2.1466252584, 1e-10));
  EXPECT_TRUE(kendall.exact);
  const auto sen = value_of(theil_sen(series.x, series.y, 0.95));
  EXPECT_NEAR(sen.slope, 1.33, 0.005);
  EXPECT_THAT(sen.slope, agrees(1.33333333333, 1e-11));
  EXPECT_THAT(sen.intercept, agrees(-65.9666666667, 1e-11));
  EXPECT_THAT(sen.low.value(), agrees(0.3992082719, 1e-9));
  EXPECT_THAT(sen.high.value(), agrees(2.3333333333, 1e-9));
  EXPECT_THAT(value_of(least_squares(series.x, series.y)).slope, agrees(1.38776502457, 1e-11));
}

// Example 14-10, p. 14-38: 36 monthly values, three years of each month.
TEST(EpaTrend, Example14_10SeasonalKendall) {
  const std::vector<std::vector<double>> years{
      {1.99, 2.10, 2.12, 2.12, 2.11, 2.15, 2.19, 2.18, 2.16, 2.08, 2.05, 2.08},
      {2.01, 2.10, 2.17, 2.13, 2.13, 2.18, 2.25, 2.24, 2.22, 2.13, 2.08, 2.16},
      {2.15, 2.17, 2.27, 2.23, 2.24, 2.26, 2.31, 2.32, 2.28, 2.22, 2.19, 2.22}};
  std::vector<Series> months;
  for (std::size_t month = 0; month < 12; ++month) {
    months.push_back({{1983, 1984, 1985}, {years[0][month], years[1][month], years[2][month]}});
  }
  const auto kendall = value_of(seasonal_kendall(months));
  EXPECT_EQ(kendall.n, 36u);
  EXPECT_EQ(kendall.s, 35);
  EXPECT_THAT(kendall.variance, agrees(43, 1e-14));
  EXPECT_NEAR(kendall.z, 5.1849514, 0.5e-7);
  EXPECT_THAT(kendall.p, agrees(2.160712e-07, 1e-6));
  EXPECT_NEAR(kendall.tau_a, 0.9722222, 0.5e-7);
  const auto sen = value_of(seasonal_sen(months, 0.95));
  EXPECT_NEAR(sen.slope, 0.06, 1e-12);
  EXPECT_NEAR(sen.low.value(), 0.05786914, 0.5e-8);
  EXPECT_NEAR(sen.high.value(), 0.07213086, 0.5e-8);
}

} // namespace
} // namespace wetspell
