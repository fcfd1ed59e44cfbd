// A printout of SAS (PROC FREQ) kept in the tests of statsmodels (test_inter_rater.py): 19 things, three
// ordered classes. More digits: R 4.2.2, vcd 1.4-11, Kappa().
#include "estimate/agreement.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(SasKappa, PlainAndLinear) {
  const std::vector<double> counts{0, 4, 1, 0, 8, 0, 0, 1, 5};
  const Kappa plain = value_of(kappa(counts, 3, KappaWeights::none, 0.95));
  EXPECT_NEAR(plain.kappa, 0.4842, 5e-5);
  EXPECT_NEAR(plain.error, 0.1380, 5e-5);
  EXPECT_NEAR(plain.interval.low, 0.2137, 5e-5);
  EXPECT_NEAR(plain.interval.high, 0.7547, 5e-5);
  EXPECT_THAT(plain.error, agrees(0.138013578, 1e-8));
  const Kappa linear = value_of(kappa(counts, 3, KappaWeights::linear, 0.95));
  EXPECT_NEAR(linear.kappa, 0.4701, 5e-5);
  EXPECT_NEAR(linear.error, 0.1457, 5e-5);
  EXPECT_NEAR(linear.interval.low, 0.1845, 5e-5);
  EXPECT_NEAR(linear.interval.high, 0.7558, 5e-5);
  EXPECT_THAT(linear.kappa, agrees(0.470119522, 1e-8));
}

} // namespace
} // namespace wetspell
