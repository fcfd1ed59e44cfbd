#include "measure/ellipse.hpp"

#include "engine/measure/digits.hpp"

#include <limits>
#include <numbers>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;
using testing::HasSubstr;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();

Measured exactly(double value) {
  return {.value = value, .uncertainty = 0};
}

TEST(EllipseArea, IsOfFullAxesNotOfHalves) {
  EXPECT_NEAR(value_of(ellipse_area(exactly(20), exactly(10))).value, 157.0796, 5e-5);
}

TEST(EllipseArea, CarriesTheUncertaintyOfBothLengths) {
  const Measured length{.value = 20, .uncertainty = 0.5};
  const Measured width{.value = 12, .uncertainty = 0.4};
  // Worked out with mpmath 1.2.1 from GUM equation 13.
  EXPECT_THAT(value_of(ellipse_area(length, width)).uncertainty, agrees(7.85398163397448, 1e-13));
  EXPECT_THAT(value_of(ellipse_area(length, width, 1)).uncertainty, agrees(10.9955742875643, 1e-13));
}

TEST(EllipseEdge, CarriesTheUncertaintyOfBothLengths) {
  const Measured length{.value = 20, .uncertainty = 0.5};
  const Measured width{.value = 12, .uncertainty = 0.4};
  // Slopes by numerical differentiation of 4 a E(m) in 30 digits, mpmath 1.2.1.
  EXPECT_THAT(value_of(ellipse_edge(length, width)).value, agrees(51.0539977267962569, 1e-14));
  EXPECT_THAT(value_of(ellipse_edge(length, width)).uncertainty, agrees(1.02519753546642198, 1e-13));
  EXPECT_THAT(value_of(ellipse_edge(length, width, 1)).uncertainty, agrees(1.41115359963768573, 1e-13));
  EXPECT_THAT(value_of(ellipse_edge(length, width, 0.5)).uncertainty, agrees(1.23336622065322175, 1e-13));
  EXPECT_THAT(value_of(ellipse_edge(width, length)).uncertainty, agrees(1.02519753546642198, 1e-13));
  const Measured long_one{.value = 30, .uncertainty = 1};
  const Measured sliver{.value = 0.01, .uncertainty = 0.005};
  EXPECT_THAT(value_of(ellipse_edge(long_one, sliver)).value, agrees(60.0000296422075833, 1e-14));
  EXPECT_THAT(value_of(ellipse_edge(long_one, sliver)).uncertainty, agrees(1.99999912323311051, 1e-12));
}

TEST(EllipseEdge, OfACircleIsPiTimesItsLength) {
  const Measured length{.value = 7, .uncertainty = 0.1};
  const auto edge = value_of(ellipse_edge(length, length, 1));
  EXPECT_THAT(edge.value, agrees(7 * std::numbers::pi, 1e-15));
  EXPECT_THAT(edge.uncertainty, agrees(0.1 * std::numbers::pi, 1e-14));
}

TEST(EllipseEdge, OfAFlatPoolIsThereAndBack) {
  const auto edge =
      value_of(ellipse_edge({.value = 9, .uncertainty = 0.2}, {.value = 0, .uncertainty = 0.1}));
  EXPECT_THAT(edge.value, agrees(18, 1e-15));
  EXPECT_THAT(edge.uncertainty, agrees(0.4, 1e-15));
}

TEST(Ellipse, ScalesWithItsAxesAndDoesNotMindTheirOrder) {
  for (const double scale : {1e-3, 0.3048, 40.0, 1e6}) {
    for (const double ratio : {1.0, 0.999999, 0.6, 0.01}) {
      const Measured length{.value = scale, .uncertainty = 0.01 * scale};
      const Measured width{.value = ratio * scale, .uncertainty = 0.02 * scale};
      const Measured one{.value = 1, .uncertainty = 0.01};
      const Measured one_width{.value = ratio, .uncertainty = 0.02};
      const auto area = value_of(ellipse_area(length, width));
      const auto edge = value_of(ellipse_edge(length, width));
      EXPECT_THAT(area.value, agrees(value_of(ellipse_area(one, one_width)).value * scale * scale, 1e-14));
      EXPECT_THAT(edge.value, agrees(value_of(ellipse_edge(one, one_width)).value * scale, 1e-14));
      EXPECT_THAT(edge.uncertainty, agrees(value_of(ellipse_edge(one, one_width)).uncertainty * scale, 1e-9));
      EXPECT_EQ(value_of(ellipse_area(width, length)).value, area.value);
      EXPECT_EQ(value_of(ellipse_edge(width, length)).value, edge.value);
      // No closed line around an area is shorter than the circle's.
      EXPECT_GE(edge.value * edge.value, 4 * std::numbers::pi * area.value * (1 - 1e-14));
    }
  }
}

TEST(Ellipse, DoesNotClaimAnUncertaintyItCannotKnow) {
  const Measured known{.value = 20, .uncertainty = 0.5};
  EXPECT_EQ(value_of(ellipse_area(known, exactly(10))).uncertainty, 0);
  EXPECT_EQ(value_of(ellipse_edge(exactly(20), known)).uncertainty, 0);
}

TEST(Ellipse, OfADryPoolIsNothing) {
  EXPECT_EQ(value_of(ellipse_area(exactly(0), exactly(0))).value, 0);
  EXPECT_EQ(value_of(ellipse_edge(exactly(0), exactly(0))).value, 0);
}

TEST(Ellipse, RefusesInWords) {
  const auto negative = ellipse_area(exactly(-3), exactly(2));
  ASSERT_FALSE(negative);
  EXPECT_EQ(negative.error().kind, ProblemKind::bad_argument);
  EXPECT_THAT(negative.error().text, HasSubstr("length reads -3 m"));
  EXPECT_THAT(ellipse_edge(exactly(3), exactly(-2)).error().text, HasSubstr("width reads -2 m"));
  EXPECT_EQ(ellipse_area(exactly(3), {.value = 2, .uncertainty = -1}).error().kind,
            ProblemKind::bad_argument);
  for (const double bad : {nan, inf}) {
    EXPECT_EQ(ellipse_area(exactly(bad), exactly(2)).error().kind, ProblemKind::not_a_number);
    EXPECT_EQ(ellipse_edge(exactly(2), exactly(bad)).error().kind, ProblemKind::not_a_number);
    EXPECT_EQ(largest_area(bad).error().kind, ProblemKind::not_a_number);
  }
  for (const double bad : {-1.1, 1.1, nan}) {
    EXPECT_EQ(ellipse_area(exactly(3), exactly(2), bad).error().kind, ProblemKind::bad_argument);
    EXPECT_EQ(ellipse_edge(exactly(3), exactly(2), bad).error().kind, ProblemKind::bad_argument);
  }
  EXPECT_EQ(ellipse_area(exactly(1e200), exactly(1e200)).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(largest_area(1e200).error().kind, ProblemKind::not_a_number);
}

TEST(WidthForArea, UndoesTheArea) {
  for (const double width : {20.0, 19.999, 12.0, 0.5, 0.0}) {
    const auto area = value_of(ellipse_area(exactly(20), exactly(width)));
    EXPECT_NEAR(value_of(width_for_area(area, exactly(20))).value, width, 1e-13);
  }
  const auto found =
      value_of(width_for_area({.value = 150, .uncertainty = 6}, {.value = 20, .uncertainty = 0.4}));
  // Quotient of independent lengths: relative uncertainties in quadrature (GUM 5.1.6).
  EXPECT_THAT(found.uncertainty, agrees(found.value * std::hypot(6.0 / 150, 0.4 / 20), 1e-14));
}

TEST(WidthForArea, RefusesAnAreaThatDoesNotFit) {
  const double circle = value_of(largest_area(20));
  EXPECT_THAT(circle, agrees(100 * std::numbers::pi, 1e-15));
  EXPECT_TRUE(width_for_area(exactly(circle), exactly(20)));
  const auto refused = width_for_area(exactly(400), exactly(20));
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, ProblemKind::bad_argument);
  EXPECT_THAT(refused.error().text, HasSubstr("400 m² does not fit a length of 20 m"));
  EXPECT_THAT(refused.error().text, HasSubstr("314.15927"));
  EXPECT_EQ(width_for_area(exactly(1), exactly(0)).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(width_for_area(exactly(-1), exactly(2)).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
