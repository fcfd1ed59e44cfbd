// Hayashi and van der Kamp (2000), Simple equations to represent the volume-area-depth relations of shallow
// wetlands in small topographic depressions, Journal of Hydrology 237, 74-85: closed forms that follow from
// the two equations, and an independent implementation (R package CRHMr).
#include "measure/basin.hpp"
#include "measure/ellipse.hpp"

#include "engine/measure/digits.hpp"

#include <numbers>
#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

Measured plain(double value) {
  return {.value = value, .uncertainty = 0};
}

/// A basin of this area at a depth of 1 m.
Basin basin_of(double scale, double shape) {
  return value_of(basin_with_shape({plain(1), plain(scale)}, shape));
}

struct Case {
  double shape, depth, area, volume;
};

TEST(HayashiBasin, AreaAndVolumeInClosedForm) {
  for (const Case& c :
       {Case{0.5, 0.5, 12.5, 1.25}, Case{0.5, 1, 200, 40},
        Case{0.91, 0.5, 43.5938885523723, 6.81622656059429}, Case{0.91, 1, 200, 62.5429553264605},
        Case{1, 0.5, 50, 8.33333333333333}, Case{1, 1, 200, 66.6666666666667},
        Case{1.4, 0.5, 74.2997144568474, 15.2970000352333}, Case{1.4, 1, 200, 82.3529411764706},
        Case{1.72, 0.5, 89.3295439858008, 20.6514537171475}, Case{1.72, 1, 200, 92.4731182795699},
        Case{2, 0.5, 100, 25}, Case{2, 1, 200, 100}, Case{4, 0.5, 141.42135623731, 47.1404520791032},
        Case{4, 1, 200, 133.333333333333}}) {
    const Basin basin = basin_of(200, c.shape);
    EXPECT_THAT(value_of(area_at(basin, plain(c.depth))).value, agrees(c.area, 1e-13)) << c.shape;
    EXPECT_THAT(value_of(volume_at(basin, plain(c.depth))).value, agrees(c.volume, 1e-13)) << c.shape;
    test::record("volume", value_of(volume_at(basin, plain(c.depth))).value, c.volume);
  }
}

// A pool of 20 m by 10 m, 0.6 m deep: cone A h / 3, paraboloid A h / 2, cylinder A h.
TEST(HayashiBasin, ConeBowlAndTub) {
  const double area = value_of(ellipse_area(plain(20), plain(10))).value;
  EXPECT_THAT(area, agrees(157.07963267949, 1e-13));
  const auto volume = [&](double shape) {
    return value_of(volume_at(value_of(basin_with_shape({plain(0.6), plain(area)}, shape)), plain(0.6)))
        .value;
  };
  EXPECT_THAT(volume(1), agrees(31.4159265358979, 1e-13));
  EXPECT_THAT(volume(2), agrees(47.1238898038469, 1e-13));
  EXPECT_THAT(volume(1e13), agrees(94.2477796076938, 1e-12));
}

// CRHMr: wetland_pond_area(1, 1.72, 25) 25; wetland_pond_depth(100, 1.72, 100) 1.42856226492132;
// wetland_h_s(5000, 500, 1.72, max_error = 1e-13) h 21.6279069767442, s 14.0161123693731.
TEST(HayashiBasin, CallsOfAnIndependentImplementation) {
  EXPECT_THAT(value_of(area_at(basin_of(25, 1.72), plain(1))).value, agrees(25, 1e-14));
  EXPECT_THAT(value_of(volume_at(basin_of(100, 1.72), plain(1.42856226492132))).value, agrees(100, 1e-13));
  const Basin basin = value_of(basin_with_shape({plain(21.6279069767442), plain(500)}, 1.72));
  EXPECT_THAT(basin.scale().value, agrees(14.0161123693731, 1e-12));
  EXPECT_THAT(value_of(volume_at(basin, plain(21.6279069767442))).value, agrees(5000, 1e-13));
}

// Two visits: 50 m² at 0.2 m and 120 m² at 0.5 m; the volume by R 4.2.2, integrate() of the area over depth.
TEST(HayashiBasin, FromTwoVisits) {
  const Basin basin = value_of(
      basin_from_readings(std::vector<BasinReading>{{plain(0.2), plain(50)}, {plain(0.5), plain(120)}}));
  EXPECT_THAT(basin.exponent, agrees(0.95544864408182, 1e-13));
  EXPECT_THAT(basin.shape().value, agrees(2.0932574580416, 1e-13));
  EXPECT_THAT(basin.scale().value, agrees(232.701909611271, 1e-13));
  EXPECT_THAT(value_of(volume_at(basin, plain(0.5))).value, agrees(30.6834956681631, 1e-13));
  test::record("shape", basin.shape().value, 2.0932574580416);
}

// Half the depth: p = 1 holds 12.5 % of the volume on 25 % of the area; 1.72: 22.332, 44.665; 2: 25, 50.
TEST(HayashiBasin, HalfTheDepthIsNotHalfTheVolume) {
  struct Half {
    double shape, volume, area;
  };
  for (const Half& half : {Half{1, 12.5, 25}, Half{1.72, 22.332, 44.665}, Half{2, 25, 50}}) {
    const Basin basin = basin_of(200, half.shape);
    EXPECT_NEAR(100 * value_of(fill_from_depth(basin, plain(0.4), plain(0.8))).value, half.volume, 0.0005);
    EXPECT_NEAR(100 * value_of(area_at(basin, plain(0.4))).value / value_of(area_at(basin, plain(0.8))).value,
                half.area, 0.0005);
  }
}

} // namespace
} // namespace wetspell
