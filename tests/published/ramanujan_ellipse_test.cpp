// Ramanujan (1914): two formulas for the edge of an ellipse, both below the true one by known amounts. The
// true edges and the relative errors of the formulas by mpmath 1.2.1, 30 digits.
#include "measure/ellipse.hpp"

#include "engine/measure/digits.hpp"

#include <numbers>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

struct Row {
  double a; ///< semi-axes
  double b;
  double area;
  double edge;
  double first_error; ///< relative error of the first formula
};

constexpr Row rows[] = {
    {1, 1, 3.1415926535897932, 6.2831853071795865, 0},
    {2, 1, 6.2831853071795865, 9.6884482205476762, -2.8e-6},
    {3, 2, 18.849555921538759, 15.86543958929059, -1.269e-7},
    {5, 3, 47.123889803846899, 25.526998863398128, -4.885e-7},
    {5, 4, 62.831853071795865, 28.361667888974485, -3.69e-9},
    {10, 1, 31.415926535897932, 40.639741801008957, -8.419e-4},
    {10, 5, 157.07963267948966, 48.442241102738381, -2.8e-6},
    {15, 8, 376.99111843077519, 73.939790178712661, -1.61e-6},
    {20, 7.5, 471.23889803846899, 90.917156957921372, -1.877e-5},
    {99, 1, 311.01767270538953, 396.11073942687601, -3.414e-3},
    {1, 0, 0, 4, 3.983379868 / 4 - 1},
};

TEST(RamanujanEllipse, AreaAndEdgeOfTheTable) {
  for (const Row& row : rows) {
    const Measured length{.value = 2 * row.a, .uncertainty = 0};
    const Measured width{.value = 2 * row.b, .uncertainty = 0};
    EXPECT_THAT(value_of(ellipse_area(length, width)).value, agrees(row.area, 1e-15))
        << row.a << " " << row.b;
    EXPECT_THAT(value_of(ellipse_edge(length, width)).value, agrees(row.edge, 2e-15))
        << row.a << " " << row.b;
  }
}

TEST(RamanujanEllipse, FirstFormulaFallsShortByItsKnownError) {
  for (const Row& row : rows) {
    const double a = row.a;
    const double b = row.b;
    const double formula = std::numbers::pi * (3 * (a + b) - std::sqrt((3 * a + b) * (a + 3 * b)));
    const double edge =
        value_of(ellipse_edge({.value = 2 * a, .uncertainty = 0}, {.value = 2 * b, .uncertainty = 0})).value;
    EXPECT_NEAR(formula / edge - 1, row.first_error, 2e-3 * std::abs(row.first_error) + 1e-14)
        << a << " " << b;
  }
}

} // namespace
} // namespace wetspell
