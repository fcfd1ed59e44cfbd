// R 4.2.2 on two of its series: description of LakeHuron, and Kendall's test with Sen's slope on both. Both
// series are correlated from year to year: this is arithmetic, not inference.
#include "r_series.hpp"

#include "measure/describe.hpp"
#include "measure/kendall.hpp"
#include "measure/line.hpp"
#include "measure/sen_line.hpp"

#include "engine/measure/digits.hpp"

#include <iterator>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

template <std::size_t N> Series yearly(const double (&values)[N], int first) {
  Series series;
  for (std::size_t i = 0; i < N; ++i) {
    series.x.push_back(first + static_cast<double>(i));
    series.y.push_back(values[i]);
  }
  return series;
}

TEST(RSeries, DescriptionOfLakeHuron) {
  const auto all = value_of(describe(test::lake_huron, {}));
  EXPECT_EQ(all.n, 98u);
  EXPECT_EQ(all.smallest, 575.96);
  EXPECT_EQ(all.largest, 581.86);
  EXPECT_NEAR(all.median, 579.12, 1e-12);
  EXPECT_THAT(all.lower_quartile, agrees(578.135, 1e-14)); // quantile(type = 7)
  EXPECT_THAT(all.upper_quartile, agrees(579.875, 1e-14));
  EXPECT_THAT(all.mean, agrees(579.004081632653, 1e-14));
  EXPECT_THAT(all.deviation, agrees(1.31829852597076, 1e-13));
  test::record("deviation", all.deviation, 1.31829852597076);
}

TEST(RSeries, MeanAndDeviationOfNewHaven) {
  const auto all = value_of(describe(test::new_haven, {}));
  EXPECT_THAT(all.mean, agrees(51.16, 1e-14));
  EXPECT_THAT(all.deviation, agrees(1.26560764530893, 1e-13));
}

TEST(RSeries, KendallAndSenOfLakeHuron) {
  const Series series = yearly(test::lake_huron, 1875);
  const auto kendall = value_of(mann_kendall(series));
  EXPECT_EQ(kendall.s, -1682);
  EXPECT_FALSE(kendall.exact);
  EXPECT_THAT(kendall.variance, agrees(106136.666666667, 1e-14));
  EXPECT_THAT(kendall.z, agrees(-5.15982522603, 1e-11));
  EXPECT_THAT(kendall.p, agrees(2.47180483774576e-07, 1e-10));
  EXPECT_THAT(kendall.tau_b, agrees(-0.354366707503, 1e-11));
  const auto sen = value_of(theil_sen(series.x, series.y, 0.95));
  EXPECT_THAT(sen.slope, agrees(-0.025125, 1e-11));
  EXPECT_THAT(sen.low.value(), agrees(-0.0349290970, 1e-8));
  EXPECT_THAT(sen.high.value(), agrees(-0.0165761909, 1e-8));
  const auto line = value_of(least_squares(series.x, series.y));
  EXPECT_THAT(line.slope, agrees(-0.0242011106223, 1e-11));
  EXPECT_THAT(line.slope_uncertainty, agrees(0.00403610790322, 1e-11));
  EXPECT_THAT(line.intercept, agrees(625.554917914682, 1e-13));
  test::record("slope_uncertainty", line.slope_uncertainty, 0.00403610790322);
}

TEST(RSeries, KendallAndSenOfNewHaven) {
  const Series series = yearly(test::new_haven, 1912);
  const auto kendall = value_of(mann_kendall(series));
  EXPECT_EQ(kendall.s, 624);
  EXPECT_THAT(kendall.variance, agrees(24530, 1e-14));
  EXPECT_THAT(kendall.z, agrees(3.97776637784, 1e-11));
  const auto sen = value_of(theil_sen(series.x, series.y, 0.95));
  EXPECT_THAT(sen.slope, agrees(0.0344827586207, 1e-11));
  EXPECT_NEAR(sen.low.value(), 0.0204081633, 0.5e-10);
  EXPECT_THAT(sen.high.value(), agrees(0.05, 1e-12));
}

} // namespace
} // namespace wetspell
