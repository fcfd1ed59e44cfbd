// POOL.ELLIPSEEDGE
#include "function/ellipse.hpp"

namespace wetspell {

namespace {

Result<Value> evaluate(std::span<const Argument> arguments) {
  return of_axes(arguments, ellipse_edge, [](Unit unit) { return unit; });
}

} // namespace

FunctionSpec ellipse_edge_function() {
  return {
      .name = "POOL.ELLIPSEEDGE",
      .method = "ellipseEdge",
      .category = "Mathematical",
      .summary = "Length of a pool's edge, taken as the ellipse on its length and width",
      .parameters = axes_parameters({.name = "result unit",
                                     .takes = Takes::unit,
                                     .kind = Kind::length,
                                     .help = "Unit in which the edge is given",
                                     .standard = "the unit of length and width"}),
      .blanks = axes_blanks(),
      .errors = axes_errors(),
      .examples = {{.cells = {{"A1", "20"}, {"B1", "10"}},
                    .formula = "POOL.ELLIPSEEDGE(A1;B1)",
                    .result = "48.4422",
                    .shows = "in feet"},
                   {.cells = {{"A1", "10 m"}, {"B1", "6 m"}},
                    .formula = "POOL.ELLIPSEEDGE(A1;B1;\"ft\";\"m\")",
                    .result = "25.5270",
                    .shows = "in metres"},
                   {.cells = {{"A1", ""}, {"B1", ""}},
                    .formula = "POOL.ELLIPSEEDGE(A1;B1)",
                    .result = "",
                    .shows = "nothing typed yet"},
                   {.cells = {{"A1", "20"}, {"B1", "-10"}},
                    .formula = "POOL.ELLIPSEEDGE(A1;B1)",
                    .result = "Err:502",
                    .shows = "no width is below 0"}},
      .see_also = {"POOL.ELLIPSEAREA"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
