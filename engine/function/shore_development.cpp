// POOL.SHOREDEVELOPMENT
#include "function/ellipse.hpp"
#include "measure/shore.hpp"

namespace wetspell {

namespace {

Result<Value> evaluate(std::span<const Argument> arguments) {
  const auto both = axes(arguments, unit_or(arguments[2], Unit::foot));
  if (!both) {
    return both.error();
  }
  if (!both.value() || both.value()->length.value == 0) {
    return Value{};
  }
  const auto development = ellipse_development(both.value()->length, both.value()->width);
  if (!development) {
    return development.error();
  }
  return number_value(development.value().value);
}

/// Length, width and their unit: the result has none.
std::vector<ParameterSpec> parameters() {
  auto all = axes_parameters({});
  all.pop_back();
  return all;
}

} // namespace

FunctionSpec shore_development_function() {
  return {
      .name = "POOL.SHOREDEVELOPMENT",
      .method = "shoreDevelopment",
      .category = "Mathematical",
      .summary = "Edge of the ellipse on length and width over that of the circle of the same area",
      .parameters = parameters(),
      .blanks =
          "A blank length or width gives a blank; so does a length of 0, since a dry pool has no shape.",
      .errors = axes_errors(),
      .examples = {{.cells = {{"A1", "20"}, {"B1", "20"}},
                    .formula = "POOL.SHOREDEVELOPMENT(A1;B1)",
                    .result = "1",
                    .shows = "a circle"},
                   {.cells = {{"A1", "40 ft"}, {"B1", "20 ft"}},
                    .formula = "POOL.SHOREDEVELOPMENT(A1;B1)",
                    .result = "1.0903",
                    .shows = "twice as long as wide"},
                   {.cells = {{"A1", "0"}, {"B1", ""}},
                    .formula = "POOL.SHOREDEVELOPMENT(A1;B1)",
                    .result = "",
                    .shows = "a dry pool"},
                   {.cells = {{"A1", "20"}, {"B1", "wide"}},
                    .formula = "POOL.SHOREDEVELOPMENT(A1;B1)",
                    .result = "Err:502",
                    .shows = "no width"}},
      .see_also = {"POOL.ELLIPSEEDGE", "POOL.ELLIPSEAREA"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
