// Kendall's test and Sen's slope at their corners.
#include "measure/kendall.hpp"
#include "measure/sen_line.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::value_of;

TEST(Kendall, OrderOfTheSeriesDoesNotMatter) {
  const auto one = value_of(mann_kendall({{2021, 2022, 2023, 2024, 2025}, {3, 5, 4, 7, 9}}));
  const auto other = value_of(mann_kendall({{2025, 2021, 2024, 2022, 2023}, {9, 3, 7, 5, 4}}));
  EXPECT_EQ(one.s, 8);
  EXPECT_EQ(other.s, 8);
  EXPECT_EQ(one.p, other.p);
}

TEST(Kendall, AllTheSameIsNoTrend) {
  const auto flat = value_of(mann_kendall({{1, 2, 3, 4}, {7, 7, 7, 7}}));
  EXPECT_EQ(flat.s, 0);
  EXPECT_EQ(flat.p, 1);
  EXPECT_EQ(flat.tau_b, 0);
}

TEST(Kendall, TheNormalTakesOverWhereTheExactEnds) {
  Series series;
  for (std::size_t i = 0; i < exact_kendall_most; ++i) {
    series.x.push_back(static_cast<double>(i));
    series.y.push_back(static_cast<double>(i % 2 == 0 ? i : 1000 - i));
  }
  const auto exact = value_of(mann_kendall(series));
  EXPECT_TRUE(exact.exact);
  series.x.push_back(99);
  series.y.push_back(99.5);
  EXPECT_FALSE(value_of(mann_kendall(series)).exact);
}

TEST(Kendall, Refuses) {
  EXPECT_EQ(mann_kendall({{1}, {1}}).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(mann_kendall({{1, 2, 2}, {1, 2, 3}}).error().text,
            "The time 2 stands twice; a trend takes one value a time.");
  EXPECT_EQ(mann_kendall({{1, 2}, {1}}).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(seasonal_kendall({}).error().kind, ProblemKind::not_enough);
}

TEST(SeasonalKendall, CovariancesOfOneSeriesAreItsVariance) {
  const std::vector<Series> tied{{{1, 2, 3, 4, 5, 6}, {3, 1, 3, 3, 7, 1}}};
  EXPECT_NEAR(variance_of_sum(tied, Together::dependent), variance_of_sum(tied, Together::independent),
              1e-12);
  EXPECT_NEAR(variance_of_sum(tied, Together::dependent), value_of(mann_kendall(tied[0])).variance, 1e-12);
}

TEST(SeasonalKendall, TheSameSeriesTwiceSaysNothingNew) {
  const Series series{{2020, 2021, 2022, 2023, 2024}, {4, 9, 6, 8, 12}};
  const std::vector<Series> twice{series, series};
  const double once = value_of(mann_kendall(series)).variance;
  EXPECT_NEAR(variance_of_sum(twice, Together::dependent), 4 * once,
              1e-12); // twice the sum, four times the variance
  EXPECT_NEAR(variance_of_sum(twice, Together::independent), 2 * once, 1e-12);
}

TEST(SeasonalKendall, AgainstItsMirrorNothingIsLeft) {
  const std::vector<Series> mirrored{{{1, 2, 3, 4}, {4, 9, 6, 8}}, {{1, 2, 3, 4}, {-4, -9, -6, -8}}};
  EXPECT_NEAR(variance_of_sum(mirrored, Together::dependent), 0, 1e-12);
  EXPECT_EQ(value_of(seasonal_kendall(mirrored, Together::dependent)).p, 1);
}

TEST(SeasonalKendall, SeriesThatShareNoTimeAreIndependent) {
  const std::vector<Series> apart{{{1, 2, 3, 4}, {4, 9, 6, 8}}, {{5, 6, 7}, {1, 2, 3}}};
  EXPECT_NEAR(variance_of_sum(apart, Together::dependent), variance_of_sum(apart, Together::independent),
              1e-12);
}

TEST(SenLine, OneWildValueDoesNotMoveIt) {
  const std::vector<double> x{1, 2, 3, 4, 5, 6, 7};
  const auto clean = value_of(theil_sen(x, std::vector<double>{2, 4, 6, 8, 10, 12, 14}, 0.95));
  const auto wild = value_of(theil_sen(x, std::vector<double>{2, 4, 6, 80, 10, 12, 14}, 0.95));
  EXPECT_EQ(clean.slope, 2);
  EXPECT_EQ(wild.slope, 2);
  EXPECT_EQ(wild.intercept + wild.slope * 4, 10); // the median of y, which the wild value moved by one rank
}

TEST(SenLine, FewPointsHaveNoBounds) {
  const std::vector<double> x{1, 2, 3};
  const auto line = value_of(theil_sen(x, std::vector<double>{1, 2, 4}, 0.95));
  EXPECT_EQ(line.slope, 1.5);
  EXPECT_FALSE(line.low.has_value());
  EXPECT_FALSE(line.high.has_value());
  EXPECT_EQ(theil_sen(std::vector<double>{1, 1}, std::vector<double>{1, 2}, 0.95).error().kind,
            ProblemKind::not_enough);
}

} // namespace
} // namespace wetspell
