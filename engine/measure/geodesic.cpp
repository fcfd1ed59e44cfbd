#include "measure/geodesic.hpp"

#include <boost/geometry/algorithms/append.hpp>
#include <boost/geometry/algorithms/area.hpp>
#include <boost/geometry/algorithms/distance.hpp>
#include <boost/geometry/core/cs.hpp>
#include <boost/geometry/geometries/point.hpp>
#include <boost/geometry/geometries/ring.hpp>
#include <boost/geometry/srs/spheroid.hpp>
#include <boost/geometry/strategies/geographic/distance_vincenty.hpp>
#include <boost/geometry/strategies/strategies.hpp>
#include <boost/geometry/strategy/geographic/area.hpp>

#include <cmath>

namespace wetspell {

namespace {

namespace geometry = boost::geometry;

using Point = geometry::model::point<double, 2, geometry::cs::geographic<geometry::degree>>;
using Ring = geometry::model::ring<Point, true, false>; // clockwise, open
using Spheroid = geometry::srs::spheroid<double>;

const Spheroid wgs84(wgs84_equatorial, wgs84_equatorial*(1 - wgs84_flattening));

Point point(const Position& at) {
  return {at.longitude, at.latitude};
}

} // namespace

double distance(const Position& from, const Position& to) {
  return geometry::distance(point(from), point(to), geometry::strategy::distance::vincenty<Spheroid>(wgs84));
}

double enclosed_area(std::span<const Position> outline) {
  // Thomas's formulas, since the others lose small areas as differences of large ones (vincenty 0.8 %,
  // andoyer 0.2 % on pools of 3 to 100 m), and Karney's turn a negative number into an unsigned one, which
  // means what it should on some machines only.
  constexpr std::size_t order = 6;
  Ring ring;
  ring.reserve(outline.size());
  for (const Position& each : outline) {
    geometry::append(ring, point(each));
  }
  return std::abs(geometry::area(
      ring, geometry::strategy::area::geographic<geometry::strategy::thomas, order, Spheroid>(wgs84)));
}

} // namespace wetspell
