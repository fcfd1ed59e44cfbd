// How far a pool's outline is from a circle.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

namespace wetspell {

/// Shore development: the edge over that of the circle of the same area; 1 for a circle, more for all else.
/// Errors of edge and area are taken as independent. Refuses sizes that are not over 0, and an edge too short
/// to go round the area (bad_argument); what is not finite (not_a_number).
Result<Measured> shore_development(const Measured& edge, const Measured& area);

/// The same for the ellipse on two full axes, in which edge and area share their errors and size plays no
/// part. `correlation` as in ellipse_area(). Refuses as ellipse_area() does, and an axis of 0.
Result<Measured> ellipse_development(const Measured& length, const Measured& width, double correlation = 0);

/// Eccentricity of that ellipse: 0 for a circle, towards 1 for a line. At a circle its error is not
/// proportional to the axes' and is not known (0).
Result<Measured> eccentricity(const Measured& length, const Measured& width, double correlation = 0);

} // namespace wetspell
