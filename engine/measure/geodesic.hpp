// Lines and areas on the WGS 84 ellipsoid.
#pragma once

#include <span>

namespace wetspell {

/// Degrees north and east.
struct Position {
  double latitude = 0, longitude = 0;
};

inline constexpr double wgs84_equatorial = 6378137; ///< m
inline constexpr double wgs84_flattening = 1 / 298.257223563;
inline constexpr double wgs84_e2 = wgs84_flattening * (2 - wgs84_flattening); ///< squared eccentricity

/// Metres along the ellipsoid between two positions (Vincenty 1975).
double distance(const Position& from, const Position& to);

/// Square metres inside the outline through these positions, first to last and back to the first, either way
/// round; within 0.001 m² for what can be walked round. It does not cross itself and goes round no pole.
double enclosed_area(std::span<const Position> outline);

} // namespace wetspell
