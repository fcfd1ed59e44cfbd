// NIST Statistical Reference Datasets, linear regression: NoInt1 and NoInt2 through the origin, Norris
// with an intercept. Pontius, the other line of the collection, is a parabola and none of ours.
#include "measure/line.hpp"
#include "measure/statistics.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::digits;
using test::value_of;

void expect_certified(const std::vector<double>& x, const std::vector<double>& y, double slope,
                      double uncertainty, double squares) {
  const std::vector<double> equal(x.size(), 1);
  const auto line = value_of(line_through_origin(x, y, equal));
  test::record("slope", line.slope, slope);
  test::record("slope_uncertainty", line.slope_uncertainty, uncertainty);
  test::record("residual_squares", line.residual_squares, squares);
  EXPECT_GE(digits(line.slope, slope), 14);
  EXPECT_GE(digits(line.slope_uncertainty, uncertainty), 13);
  EXPECT_GE(digits(line.residual_squares, squares), 13);
}

TEST(NistStrdLinear, NoInt1) {
  std::vector<double> x;
  std::vector<double> y;
  for (int i = 0; i <= 10; ++i) {
    x.push_back(60 + i);
    y.push_back(130 + i);
  }
  expect_certified(x, y, 2.07438016528926, 0.0165289256198347, 127.272727272727);
}

TEST(NistStrdLinear, NoInt2) {
  expect_certified({4, 5, 6}, {3, 4, 4}, 0.727272727272727, 0.0420827318078432, 0.272727272727273);
}

TEST(NistStrdLinear, Norris) {
  const std::vector<double> x{0.2, 337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
                              0.6, 775.5, 666.9, 338.0, 447.5, 11.6,  556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
                              0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
  const std::vector<double> y{0.1, 338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
                              0.1, 778.1, 668.8, 339.3, 448.9, 10.8,  557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
                              0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};
  const auto line = value_of(least_squares(x, y));
  const auto certify = [](const char* what, double got, double certified, double least) {
    test::record(what, got, certified);
    EXPECT_GE(digits(got, certified), least) << what;
  };
  certify("intercept", line.intercept, -0.262323073774029, 12);
  certify("intercept_uncertainty", line.intercept_uncertainty, 0.232818234301152, 13);
  certify("slope", line.slope, 1.00211681802045, 14);
  certify("slope_uncertainty", line.slope_uncertainty, 0.429796848199937E-03, 13);
  certify("residual_deviation", line.residual_deviation, 0.884796396144373, 13);
  certify("r_squared", line.r_squared, 0.999993745883712, 14);
  certify("f", line.f, 5436385.54079785, 13);
}

} // namespace
} // namespace wetspell
