// JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM).
#include "measure/ellipse.hpp"
#include "measure/line.hpp"
#include "measure/pacing.hpp"
#include "measure/statistics.hpp"
#include "measure/three_readings.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

constexpr double foot = 0.3048;

// The twenty readings are quoted from memory; they give the three numbers that the clause prints.
TEST(Gum, Clause4_4_3Table1TwentyTemperatures) {
  const std::vector<double> readings{96.90,  98.18,  98.25,  98.61,  99.03,  99.49,  99.56,
                                     99.74,  99.89,  100.07, 100.33, 100.42, 100.68, 100.95,
                                     101.11, 101.20, 101.57, 101.84, 102.36, 102.72};
  const auto found = value_of(moments(readings));
  EXPECT_NEAR(found.mean, 100.145, 0.0005);
  EXPECT_NEAR(found.deviation, 1.489, 0.0005);
  EXPECT_NEAR(found.mean_uncertainty, 0.333, 0.0005);
  // R 4.2.2.
  EXPECT_THAT(found.deviation, agrees(1.48884448306, 1e-11));
  EXPECT_THAT(found.mean_uncertainty, agrees(0.332915747205, 1e-11));
}

TEST(Gum, Clause4_3_7RectangularThermometer) {
  // Half-width a = 0.5 °C, u = a / sqrt(3): 0.29 °C.
  EXPECT_NEAR(thermometer_uncertainty(), 0.29, 0.005);
  EXPECT_THAT(thermometer_uncertainty() * thermometer_uncertainty(), agrees(0.25 / 3, 1e-15));
}

// Equation 10 on twelve paces of 3.3003 ft, the count rectangular within half a pace; in numbers by R 4.2.2.
TEST(Gum, Clause5_1_2PacedLength) {
  const Measured pace{.value = 3.3003300330033 * foot, .uncertainty = 0.014522904435658 * foot};
  const auto length = value_of(paced_length(12, CountedAs::paces, pace));
  EXPECT_THAT(length.value / foot, agrees(39.60396039604, 1e-12));
  EXPECT_THAT(length.uncertainty / foot, agrees(0.96853149236162, 1e-12));
  EXPECT_THAT(length.value, agrees(12.071287128713, 1e-12));
  EXPECT_THAT(length.uncertainty, agrees(0.29520839887182, 1e-12));
}

// Equation 12, relative uncertainties of a product in quadrature; in numbers by R 4.2.2.
TEST(Gum, Clause5_1_6AreaOfAnEllipse) {
  const auto area =
      value_of(ellipse_area({.value = 20, .uncertainty = 0.5}, {.value = 12, .uncertainty = 0.4}));
  EXPECT_THAT(area.value, agrees(188.49555921539, 1e-12));
  EXPECT_THAT(area.uncertainty, agrees(7.8539816339745, 1e-12));
}

// Equation 16 with r = 1: the relative uncertainties add up.
TEST(Gum, Clause5_2_2FullyCorrelatedAxes) {
  const auto area =
      value_of(ellipse_area({.value = 20, .uncertainty = 0.5}, {.value = 12, .uncertainty = 0.4}, 1));
  EXPECT_THAT(area.uncertainty / area.value, agrees(0.5 / 20 + 0.4 / 12, 1e-14));
}

// Clause H.3, table H.6: a thermometer's correction by a line, against 20 °C. Printed: -0.1712 (0.0029),
// 0.002 18 (0.000 67), r -0.930, at 30 °C -0.1494 (0.0041). In numbers by R 4.2.2, lm().
TEST(Gum, ClauseH3CalibrationOfAThermometer) {
  const std::vector<double> at{21.521, 22.012, 22.512, 23.003, 23.507, 23.999,
                               24.513, 25.002, 25.503, 26.010, 26.511};
  const std::vector<double> correction{-0.171, -0.169, -0.166, -0.159, -0.164, -0.165,
                                       -0.156, -0.157, -0.159, -0.161, -0.160};
  std::vector<double> above;
  for (const double t : at) {
    above.push_back(t - 20);
  }
  const auto line = value_of(least_squares(above, correction));
  EXPECT_NEAR(line.intercept, -0.1712, 0.00005);
  EXPECT_NEAR(line.intercept_uncertainty, 0.0029, 0.00005);
  EXPECT_NEAR(line.slope, 0.00218, 0.000005);
  EXPECT_NEAR(line.slope_uncertainty, 0.00067, 0.000005);
  EXPECT_NEAR(line.correlation, -0.930, 0.0005);
  EXPECT_NEAR(line.at(10), -0.1494, 0.00005);
  EXPECT_NEAR(line.uncertainty_at(10, false), 0.0041, 0.00005);
  EXPECT_EQ(line.freedom(), 9);
  EXPECT_THAT(line.intercept, agrees(-0.17120379013135, 1e-12));
  EXPECT_THAT(line.intercept_uncertainty, agrees(0.002877597835160, 1e-12));
  EXPECT_THAT(line.slope, agrees(0.00218269773988728, 1e-12));
  EXPECT_THAT(line.slope_uncertainty, agrees(0.000667938773227833, 1e-12));
  EXPECT_THAT(line.correlation, agrees(-0.930429603093446, 1e-12));
  EXPECT_THAT(line.at(10), agrees(-0.149376812732477, 1e-12));
  EXPECT_THAT(line.uncertainty_at(10, false), agrees(0.00413859575285495, 1e-12));
  EXPECT_THAT(line.residual_deviation, agrees(0.00349756396350529, 1e-12));
  test::record("slope", line.slope, 0.00218269773988728);
}

} // namespace
} // namespace wetspell
