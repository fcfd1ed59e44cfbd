// POOL.ELLIPSEAREA
#include "function/ellipse.hpp"

namespace wetspell {

namespace {

/// Square metres for metric lengths, square feet for the others.
Unit area_unit_beside(Unit length) {
  switch (length) {
  case Unit::millimetre:
  case Unit::centimetre:
  case Unit::metre:
    return Unit::square_metre;
  default:
    return Unit::square_foot;
  }
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  return of_axes(arguments, ellipse_area, area_unit_beside);
}

} // namespace

FunctionSpec ellipse_area_function() {
  return {
      .name = "POOL.ELLIPSEAREA",
      .method = "ellipseArea",
      .category = "Mathematical",
      .summary = "Area of a pool, taken as the ellipse on its length and width",
      .parameters = axes_parameters({.name = "result unit",
                                     .takes = Takes::unit,
                                     .kind = Kind::area,
                                     .help = "Unit in which the area is given",
                                     .standard = "sq ft, or sq m beside metric lengths"}),
      .blanks = axes_blanks(),
      .errors = axes_errors(),
      .examples = {{.cells = {{"A1", "20"}, {"B1", "10"}},
                    .formula = "POOL.ELLIPSEAREA(A1;B1)",
                    .result = "157.0796",
                    .shows = "length and width are whole axes, not half ones"},
                   {.cells = {{"A1", "20 m"}, {"B1", "12 m"}},
                    .formula = "POOL.ELLIPSEAREA(A1;B1;\"m\")",
                    .result = "188.4956",
                    .shows = "square metres"},
                   {.cells = {{"A1", "20"}, {"B1", ""}},
                    .formula = "POOL.ELLIPSEAREA(A1;B1)",
                    .result = "",
                    .shows = "the width is not there yet"},
                   {.cells = {{"A1", "20"}, {"B1", "12 paces"}},
                    .formula = "POOL.ELLIPSEAREA(A1;B1)",
                    .result = "Err:502",
                    .shows = "paces must become a length first"}},
      .see_also = {"POOL.ELLIPSEEDGE", "POOL.PACEDLENGTH"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
