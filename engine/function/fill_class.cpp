// POOL.FILLCLASS
#include "function/argument.hpp"

namespace wetspell {

namespace {

constexpr ParameterSpec fill_parameter{.name = "fill",
                                       .takes = Takes::reading,
                                       .kind = Kind::percent,
                                       .help =
                                           "The cell with the share of the basin that is full, in per cent"};
constexpr ParameterSpec classes_parameter{
    .name = "classes",
    .takes = Takes::table,
    .help = "Fill classes of your own, in per cent: three columns with label, from, to",
    .standard = "0 to 24, 25 to 49, 50 to 74, 75 to 100 %"};

Result<Value> evaluate(std::span<const Argument> arguments) {
  if (option_left_out(arguments[1])) {
    return class_label(fill_parameter, arguments[0], Unit::percent, default_fill_classes());
  }
  const auto classes = classes_or(classes_parameter, arguments[1], default_fill_classes());
  if (!classes) {
    return classes.error();
  }
  return class_label(fill_parameter, arguments[0], Unit::percent, classes.value());
}

} // namespace

FunctionSpec fill_class_function() {
  return {
      .name = "POOL.FILLCLASS",
      .method = "fillClass",
      .category = "Spreadsheet",
      .summary = "Class of how full a pool is; a class begins at its lower limit",
      .parameters = {fill_parameter, classes_parameter},
      .blanks = "A blank gives a blank, never the class of an empty basin.",
      .errors = {{ProblemKind::bad_argument,
                  "the share cannot be read, is over 100 or below 0 per cent, lies in several classes, its "
                  "cell shows an error, or the class table has gaps or overlaps"}},
      .examples = {{.cells = {{"A1", "80"}},
                    .formula = "POOL.FILLCLASS(A1)",
                    .result = "75 to 100 %",
                    .shows = "per cent"},
                   {.cells = {{"A1", "74.6"}},
                    .formula = "POOL.FILLCLASS(A1)",
                    .result = "50 to 74 %",
                    .shows = "in between, a class begins at its lower limit"},
                   {.cells = {{"A1", ""}}, .formula = "POOL.FILLCLASS(A1)", .result = "", .shows = "blank"},
                   {.cells = {{"A1", "120"}},
                    .formula = "POOL.FILLCLASS(A1)",
                    .result = "Err:502",
                    .shows = "more than full"}},
      .see_also = {"POOL.DEPTHCLASS"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
