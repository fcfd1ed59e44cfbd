// The edge of a pool as somebody walked it: area, edge and size from positions on the WGS 84 ellipsoid.
#pragma once

#include "base/result.hpp"
#include "measure/geodesic.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <span>

namespace wetspell {

struct Walk {
  std::size_t points = 0; ///< of the outline, repeated ones left out
  Measured area;          ///< m²
  double edge = 0;        ///< m, from the last point back to the first
  double gap = 0;         ///< m between the last point and the first, closed by a straight line
  double length = 0;      ///< m, longest line between two points
  double width = 0;       ///< m, widest across that line
};

/// The outline through these points, first to last and back to the first, along the ellipsoid. Uncertainty of
/// the area from that of a position (standard, m in each direction, points independent of each other; an
/// error common to all moves the outline and not its area); 0: not known.
///
/// Refuses fewer than three different points (not_enough); positions beyond ±90 or ±180 degrees, more than
/// outline_most points, outlines larger than 500 km or around a pole, and an outline that crosses itself,
/// with the two stretches in words (bad_argument).
Result<Walk> walk_around(std::span<const Position> points, double position_uncertainty = 0);

inline constexpr std::size_t outline_most = 5000;

} // namespace wetspell
