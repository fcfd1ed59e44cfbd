// POOL.DEPTHCLASS
#include "function/argument.hpp"

namespace wetspell {

namespace {

constexpr ParameterSpec depth_parameter{.name = "depth",
                                        .takes = Takes::reading,
                                        .kind = Kind::depth,
                                        .help = "The cell with the depth at the deepest point"};
constexpr ParameterSpec classes_parameter{
    .name = "classes",
    .takes = Takes::table,
    .help = "Depth classes of your own, in inches: three columns with label, over, up to",
    .standard = "dry; over 0 to 6; 6 to 12; 12 to 24; 24 to 36; 36 to 48; over 48 in"};

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Unit unit = unit_or(arguments[1], Unit::inch);
  if (option_left_out(arguments[2])) {
    return class_label(depth_parameter, arguments[0], unit, default_depth_classes());
  }
  const auto classes = classes_or(classes_parameter, arguments[2], default_depth_classes());
  if (!classes) {
    return classes.error();
  }
  return class_label(depth_parameter, arguments[0], unit, classes.value());
}

} // namespace

FunctionSpec depth_class_function() {
  return {
      .name = "POOL.DEPTHCLASS",
      .method = "depthClass",
      .category = "Spreadsheet",
      .summary = "Class of a pool's deepest point; a depth on a limit belongs to the shallower class",
      .parameters = {depth_parameter,
                     {.name = "unit",
                      .takes = Takes::unit,
                      .kind = Kind::depth,
                      .help = "Unit of a depth typed without one, such as \"in\" or \"cm\"",
                      .standard = "in"},
                     classes_parameter},
      .blanks = "A blank depth gives a blank, never the class of a dry pool; a depth said to be not known "
                "gives the class for that.",
      .errors = {{ProblemKind::bad_argument,
                  "the depth cannot be read, lies in no class or in several, its cell shows an error, the "
                  "unit is not one of depth, or the class table has gaps or overlaps"}},
      .examples = {{.cells = {{"A1", "25"}},
                    .formula = "POOL.DEPTHCLASS(A1)",
                    .result = "over 24 to 36 in",
                    .shows = "inches"},
                   {.cells = {{"A1", "91.44 cm"}},
                    .formula = "POOL.DEPTHCLASS(A1)",
                    .result = "over 24 to 36 in",
                    .shows = "36 inches, typed in centimetres, lie on a limit"},
                   {.cells = {{"A1", ""}},
                    .formula = "POOL.DEPTHCLASS(A1)",
                    .result = "",
                    .shows = "blank is not dry"},
                   {.cells = {{"A1", "0"}},
                    .formula = "POOL.DEPTHCLASS(A1)",
                    .result = "no standing water",
                    .shows = "zero is dry"},
                   {.cells = {{"A1", "30"},
                              {"D1", "shallow"},
                              {"E1", "0"},
                              {"F1", "20"},
                              {"D2", "deep"},
                              {"E2", "20"},
                              {"F2", ""}},
                    .formula = "POOL.DEPTHCLASS(A1;\"cm\";D1:F2)",
                    .result = "shallow",
                    .shows = "classes of one's own: 30 cm are 11.8 inches"},
                   {.cells = {{"A1", "62 °F"}},
                    .formula = "POOL.DEPTHCLASS(A1)",
                    .result = "Err:502",
                    .shows = "a temperature is no depth"}},
      .see_also = {"POOL.FILLCLASS", "POOL.READ"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
