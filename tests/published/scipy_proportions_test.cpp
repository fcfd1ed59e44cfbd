// Reference values of R kept in the tests of SciPy (test_morestats.py) and statsmodels (test_proportion.py),
// among them shares of none and all (statsmodels GH 7386: 0 of 77 and 38 of 38 must stay within 0 to 1).
#include "estimate/proportion.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::value_of;

void expect_interval(const Result<Interval>& got, double low, double high, double within) {
  EXPECT_NEAR(value_of(got).low, low, within);
  EXPECT_NEAR(value_of(got).high, high, within);
}

TEST(ScipyProportions, ClopperPearson) {
  expect_interval(exact_interval(20, 100, 0.95), 0.1266555521019559, 0.2918426890886281, 1e-14);
  expect_interval(exact_interval(0, 10, 0.95), 0, 0.3084971, 5e-8);
  expect_interval(exact_interval(10, 10, 0.95), 0.6915029, 1, 5e-8);
  expect_interval(exact_interval(4, 20, 0.95), 0.05733399705003284, 0.436614002996668, 1e-14);
}

TEST(ScipyProportions, Wilson) {
  expect_interval(wilson_interval(3, 10, 0.95), 0.1077913, 0.6032219, 5e-8);
  expect_interval(wilson_interval(0, 10, 0.95), 0, 0.2775328, 5e-8);
  expect_interval(wilson_interval(10, 10, 0.95), 0.7224672, 1, 5e-8);
  expect_interval(wilson_interval(4, 20, 0.95), 0.0806576625797981, 0.4160174322518935, 1e-14);
}

TEST(ScipyProportions, NoneAndAllEndExactly) {
  EXPECT_EQ(value_of(wilson_interval(0, 77, 0.95)).low, 0);
  EXPECT_EQ(value_of(wilson_interval(38, 38, 0.95)).high, 1);
}

} // namespace
} // namespace wetspell
