// POOL.ELLIPSEEDGE
#include "function/ellipse.hpp"

namespace wetspell {

namespace {

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Unit unit = unit_or(arguments[2], Unit::foot);
  const auto both = axes(arguments, unit);
  if (!both) {
    return both.error();
  }
  if (!both.value()) {
    return Value{};
  }
  const auto edge = ellipse_edge(both.value()->length, both.value()->width);
  if (!edge) {
    return edge.error();
  }
  return number_value(from_si(edge.value().value, unit_or(arguments[3], unit)));
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
      .blanks = "A blank length gives a blank. So does a blank width, and a width of 0, which Calc cannot "
                "tell from it; "
                "but a length of 0 is a dry pool, whatever its width.",
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
