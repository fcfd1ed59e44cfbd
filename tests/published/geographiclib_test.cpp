// GeographicLib, tests: the quarter meridian of the WGS 84 ellipsoid, a quarter of its meridian ellipse's
// edge.
#include "measure/ellipse.hpp"

#include "engine/measure/digits.hpp"

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

} // namespace
} // namespace wetspell
