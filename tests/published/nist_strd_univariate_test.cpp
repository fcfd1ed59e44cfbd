// NIST Statistical Reference Datasets, univariate summary statistics: certified means and standard
// deviations.
//
// NumAcc1 to NumAcc4 are built as their headers say. Mavro is quoted in full. Michelso is Michelson's 1879
// speed of light, 299 + x / 1000 in thousands of km/s; its x are also the dataset "michelson" of R's MASS
// (Debian package r-cran-mass). Lew, Lottery and PiDigits are left out: no Debian package was found that
// carries their data.
#include "measure/statistics.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::digits;
using test::value_of;

struct Certified {
  double mean;
  double deviation;
  double mean_digits; ///< digits asked for; double precision input allows no more for NumAcc3 and 4
  double deviation_digits;
};

void expect_certified(const std::vector<double>& values, const Certified& certified) {
  const auto found = value_of(moments(values));
  test::record("mean", found.mean, certified.mean);
  test::record("deviation", found.deviation, certified.deviation);
  EXPECT_GE(digits(found.mean, certified.mean), certified.mean_digits);
  EXPECT_GE(digits(found.deviation, certified.deviation), certified.deviation_digits);
}

/// One `first`, then `low` and `high` by turns, 500 of each.
std::vector<double> alternating(double first, double low, double high) {
  std::vector<double> values{first};
  for (int i = 0; i < 500; ++i) {
    values.push_back(low);
    values.push_back(high);
  }
  return values;
}

TEST(NistStrdUnivariate, NumAcc1) {
  expect_certified({10000001, 10000003, 10000002},
                   {.mean = 10000002, .deviation = 1, .mean_digits = 15, .deviation_digits = 15});
}

TEST(NistStrdUnivariate, NumAcc2) {
  expect_certified(alternating(1.2, 1.1, 1.3),
                   {.mean = 1.2, .deviation = 0.1, .mean_digits = 14.5, .deviation_digits = 14});
}

TEST(NistStrdUnivariate, NumAcc3) {
  expect_certified(alternating(1000000.2, 1000000.1, 1000000.3),
                   {.mean = 1000000.2, .deviation = 0.1, .mean_digits = 14.5, .deviation_digits = 9.4});
}

TEST(NistStrdUnivariate, NumAcc4) {
  expect_certified(alternating(10000000.2, 10000000.1, 10000000.3),
                   {.mean = 10000000.2, .deviation = 0.1, .mean_digits = 14.5, .deviation_digits = 8.2});
}

TEST(NistStrdUnivariate, Mavro) {
  expect_certified({2.0018, 2.0017, 2.0018, 2.0019, 2.0018, 2.0017, 2.0015, 2.0014, 2.0015, 2.0015,
                    2.0017, 2.0018, 2.0018, 2.0019, 2.0019, 2.0021, 2.0020, 2.0016, 2.0014, 2.0013,
                    2.0013, 2.0015, 2.0015, 2.0016, 2.0015, 2.0014, 2.0013, 2.0014, 2.0015, 2.0014,
                    2.0015, 2.0016, 2.0015, 2.0016, 2.0019, 2.0020, 2.0020, 2.0021, 2.0022, 2.0023,
                    2.0024, 2.0025, 2.0027, 2.0026, 2.0026, 2.0026, 2.0027, 2.0026, 2.0025, 2.0024},
                   {.mean = 2.00185600000000,
                    .deviation = 0.000429123454003053,
                    .mean_digits = 15,
                    .deviation_digits = 12.5});
}

TEST(NistStrdUnivariate, Michelso) {
  const std::vector<int> thousandths{
      850, 740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960,
      960, 940, 960, 940,  880, 800, 850, 880, 900, 840, 830,  790, 810, 880, 880, 830, 800,  790,  760, 800,
      880, 880, 880, 860,  720, 720, 620, 860, 970, 950, 880,  910, 850, 870, 840, 840, 850,  840,  840, 840,
      890, 810, 810, 820,  800, 770, 760, 740, 750, 760, 910,  920, 890, 860, 880, 720, 840,  850,  850, 780,
      890, 840, 780, 810,  760, 810, 790, 810, 820, 850, 870,  870, 810, 740, 810, 940, 950,  800,  810, 870};
  std::vector<double> values;
  for (const int x : thousandths) {
    values.push_back((299000 + x) / 1000.0);
  }
  expect_certified(
      values,
      {.mean = 299.852400000000, .deviation = 0.0790105478190518, .mean_digits = 15, .deviation_digits = 13});
}

} // namespace
} // namespace wetspell
