// GeographicLib, tests: the quarter meridian of the WGS 84 ellipsoid, a quarter of its meridian ellipse's
// edge; areas and lengths on it.
#include "measure/ellipse.hpp"
#include "measure/walk.hpp"

#include "engine/measure/digits.hpp"

#include <cmath>
#include <numbers>
#include <vector>

namespace wetspell {
namespace {

TEST(GeographicLib, QuarterMeridianOfWgs84) {
  const double equatorial = 6378137;
  const double polar = equatorial * (1 - 1 / 298.257223563);
  const auto edge = test::value_of(
      ellipse_edge({.value = 2 * equatorial, .uncertainty = 0}, {.value = 2 * polar, .uncertainty = 0}));
  test::record("quarter", edge.value / 4, 10001965.7293127228128889202);
  EXPECT_THAT(edge.value / 4, test::agrees(10001965.7293127228128889202, 1e-15));
}

// tests/polygontest.cpp, Planimeter15: 18454562325.45119 m². Perimeter: Planimeter 2.1.2, `Planimeter -p 6`.
TEST(GeographicLib, Planimeter15) {
  const auto walk = test::value_of(walk_around(std::vector<Position>{{2, 1}, {1, 2}, {3, 3}}));
  test::record("area", walk.area.value, 18454562325.45119);
  EXPECT_THAT(walk.area.value, test::agrees(18454562325.45119, 1e-7));
  EXPECT_NEAR(walk.edge, 652827.202163, 1e-5);
}

// GeodSolve 2.1.2, `GeodSolve -i`.
TEST(GeographicLib, Geodesics) {
  EXPECT_NEAR(distance({0, 0}, {0, 1}), 111319.4908, 0.5e-4);
  EXPECT_NEAR(distance({42, -72}, {42, -71.99}), 828.5076, 0.5e-4);
  EXPECT_NEAR(distance({41.5, -72}, {42.5, -72}), 111073.2868, 0.5e-4);
  EXPECT_NEAR(distance({44.5, 0}, {45.5, 0}), 111131.7777, 0.5e-4);
  EXPECT_NEAR(distance({45, 0}, {45, 1}), 78846.3347, 0.5e-4); // shorter than along the parallel, 78846.8351
}

struct Ring {
  double latitude, longitude, size;
  int points;
  double area, edge;
};

// Pools of 3 to 100 m: rings that the test makes, through GeographicLib's PolygonArea (2.1.2, WGS84()).
TEST(GeographicLib, PoolsOfEverySize) {
  for (const Ring& ring : {Ring{44.5123, -71.2034, 10, 40, 533.80798676, 86.378232},
                           Ring{44.5123, -71.2034, 3, 12, 46.06661125, 25.645143},
                           Ring{-33, 151, 100, 100, 53425.76311887, 863.614417},
                           Ring{70, 20, 10, 40, 536.62670214, 86.562600}}) {
    std::vector<Position> points;
    for (int i = 0; i < ring.points; ++i) {
      const double angle = -2 * std::numbers::pi * i / ring.points;
      const double east = 1.7 * ring.size * std::cos(angle) / 111111;
      points.push_back({ring.latitude + ring.size * std::sin(angle) / 111111,
                        ring.longitude + east / std::cos(ring.latitude * std::numbers::pi / 180)});
    }
    const auto walk = test::value_of(walk_around(points));
    test::record("area", walk.area.value, ring.area);
    EXPECT_THAT(walk.area.value, test::agrees(ring.area, 1e-5)) << ring.size;
    EXPECT_NEAR(walk.edge, ring.edge, 1e-4) << ring.size;
  }
}

} // namespace
} // namespace wetspell
