// The ellipse on a pool's length and width (full axes): area, edge, and the inverse questions.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

namespace wetspell {

/// Area of the ellipse on two full axes in metres. `correlation` between the two lengths' errors: 0 for a
/// tape, towards 1 when one person's paces serve both.
Result<Measured> ellipse_area(const Measured& length, const Measured& width, double correlation = 0);

/// Edge (perimeter) of the same ellipse, by the complete elliptic integral of the second kind.
Result<Measured> ellipse_edge(const Measured& length, const Measured& width, double correlation = 0);

/// The width an ellipse of this area and length has; bad_argument when the area does not fit the length,
/// since width never exceeds length.
Result<Measured> width_for_area(const Measured& area, const Measured& length);

/// The largest area a pool of this length can have: the circle on it.
Result<double> largest_area(double length);

} // namespace wetspell
