// The ellipse on a pool's length and width (full axes): area, edge, and the inverse questions.
//
// All lengths in metres, areas in square metres. Refusals: what is not finite, or grows out of range, is
// not_a_number; a value or an uncertainty below 0, or a correlation outside -1 to 1, is bad_argument. A
// length or width of 0 is a dry pool and gives 0 area. The two axes may come in either order. Where the
// uncertainty of an input is not known (0), that of the result is not known either (0).
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

namespace wetspell {

/// Area of the ellipse on two full axes: pi / 4 * length * width. `correlation` between the two lengths'
/// errors: 0 for a tape, towards 1 when one person's paces serve both (GUM 5.2.2).
Result<Measured> ellipse_area(const Measured& length, const Measured& width, double correlation = 0);

/// Edge (perimeter) of the same ellipse, by the complete elliptic integral of the second kind (DLMF 19.30).
Result<Measured> ellipse_edge(const Measured& length, const Measured& width, double correlation = 0);

/// The width an ellipse of this area and length has; bad_argument when the area does not fit the length,
/// since width never exceeds length. Errors of area and length are taken as independent.
Result<Measured> width_for_area(const Measured& area, const Measured& length);

/// The largest area a pool of this length can have: the circle on it.
Result<double> largest_area(double length);

} // namespace wetspell
