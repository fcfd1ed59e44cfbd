// NIST Statistical Reference Datasets, linear regression through the origin: NoInt1 and NoInt2.
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

} // namespace
} // namespace wetspell
