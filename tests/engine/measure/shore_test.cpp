// Shore development and eccentricity.
#include "measure/ellipse.hpp"
#include "measure/shore.hpp"

#include "engine/measure/digits.hpp"

#include <numbers>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(Shore, ACircleIsOne) {
  const Measured across{20, 0.2};
  EXPECT_THAT(value_of(ellipse_development(across, across)).value, agrees(1, 1e-15));
  EXPECT_EQ(value_of(eccentricity(across, across)).value, 0);
  const double pi = std::numbers::pi;
  EXPECT_THAT(value_of(shore_development({20 * pi, 0}, {100 * pi, 0})).value, agrees(1, 1e-15));
}

TEST(Shore, TheEllipsesIsItsEdgeOverThatOfTheCircle) {
  const Measured length{20, 0.5};
  const Measured width{8, 0.3};
  const auto direct = value_of(ellipse_development(length, width));
  const auto by_edge = value_of(
      shore_development(value_of(ellipse_edge(length, width)), value_of(ellipse_area(length, width))));
  EXPECT_THAT(direct.value, agrees(by_edge.value, 1e-14));
  // Edge and area share their errors, which partly cancel.
  EXPECT_LT(direct.uncertainty, by_edge.uncertainty);
  EXPECT_THAT(value_of(eccentricity(length, width)).value, agrees(std::sqrt(1 - 0.16), 1e-14));
}

TEST(Shore, UncertaintyIsTheChangeWithEachAxis) {
  const Measured length{20, 0.5};
  const Measured width{8, 0.3};
  constexpr double step = 1e-5;
  const auto development = [](double l, double w) {
    return value_of(ellipse_development({l, 0}, {w, 0})).value;
  };
  const auto roundness = [](double l, double w) { return value_of(eccentricity({l, 0}, {w, 0})).value; };
  const auto expected = [&](auto of) {
    const double by_length = (of(20 + step, 8.0) - of(20 - step, 8.0)) / (2 * step);
    const double by_width = (of(20.0, 8 + step) - of(20.0, 8 - step)) / (2 * step);
    return std::hypot(by_length * 0.5, by_width * 0.3);
  };
  EXPECT_THAT(value_of(ellipse_development(length, width)).uncertainty, agrees(expected(development), 1e-7));
  EXPECT_THAT(value_of(eccentricity(length, width)).uncertainty, agrees(expected(roundness), 1e-7));
  // Paces that are all too long make the pool larger and not rounder.
  EXPECT_NEAR(value_of(ellipse_development({20, 0.5}, {8, 0.2}, 1)).uncertainty, 0, 1e-15);
}

TEST(Shore, Refuses) {
  EXPECT_EQ(
      shore_development({30, 0}, {100, 0}).error().text,
      "An edge of 30 m is too short to go round 100 m²: the circle of that area has an edge of 35.449077 "
      "m.");
  EXPECT_EQ(ellipse_development({0, 0}, {0, 0}).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(eccentricity({10, 0}, {NAN, 0}).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(eccentricity({10, 0}, {5, 0}, 2).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
