// POOL.VOLUME
#include "function/argument.hpp"
#include "measure/basin.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

constexpr ParameterSpec depth_parameter{.name = "depth",
                                        .takes = Takes::reading,
                                        .kind = Kind::depth,
                                        .help = "The cell with the depth at the deepest point"};
constexpr ParameterSpec area_parameter{.name = "area",
                                       .takes = Takes::reading,
                                       .kind = Kind::area,
                                       .help = "The cell with the area of the water on that day"};
constexpr ParameterSpec shape_parameter{.name = "shape",
                                        .takes = Takes::word,
                                        .help =
                                            "How the basin widens upwards: 1 a cone, 2 a bowl, larger a tub",
                                        .standard = "2"};

Result<double> shape_in(const Argument& argument) {
  if (option_left_out(argument)) {
    return 2.0;
  }
  const auto shape = plain_number_in(shape_parameter, argument.cells.front());
  if (!shape) {
    return shape.error();
  }
  return shape.value().value_or(2.0);
}

Unit volume_unit_beside(Unit depth) {
  return depth == Unit::inch || depth == Unit::foot || depth == Unit::yard ? Unit::cubic_foot
                                                                           : Unit::cubic_metre;
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Unit depth_unit = unit_or(arguments[3], Unit::inch);
  const auto depth = number_in(depth_parameter, arguments[0], depth_unit);
  if (!depth) {
    return depth.error();
  }
  const auto area = number_in(area_parameter, arguments[1], unit_or(arguments[4], Unit::square_foot));
  if (!area) {
    return area.error();
  }
  const auto shape = shape_in(arguments[2]);
  if (!shape) {
    return shape.error();
  }
  if (!depth.value() || (!area.value() && depth.value()->si != 0)) {
    return Value{};
  }
  const Measured deep{.value = depth.value()->si, .uncertainty = 0};
  if (deep.value == 0) {
    return number_value(0);
  }
  const auto basin = basin_with_shape({deep, {.value = area.value()->si, .uncertainty = 0}}, shape.value());
  if (!basin) {
    return basin.error();
  }
  const auto volume = volume_at(basin.value(), deep);
  if (!volume) {
    return volume.error();
  }
  return number_value(from_si(volume.value().value, unit_or(arguments[5], volume_unit_beside(depth_unit))));
}

} // namespace

FunctionSpec volume_function() {
  return {
      .name = "POOL.VOLUME",
      .method = "volume",
      .category = "Mathematical",
      .summary = "Water in a pool from its depth and area, by the shape of its basin",
      .parameters = {depth_parameter,
                     area_parameter,
                     shape_parameter,
                     {.name = "depth unit",
                      .takes = Takes::unit,
                      .kind = Kind::depth,
                      .help = "Unit of a depth typed without one",
                      .standard = "in"},
                     {.name = "area unit",
                      .takes = Takes::unit,
                      .kind = Kind::area,
                      .help = "Unit of an area typed without one",
                      .standard = "sq ft"},
                     {.name = "result unit",
                      .takes = Takes::unit,
                      .kind = Kind::volume,
                      .help = "Unit in which the volume is given",
                      .standard = "cu ft, or cu m beside metric depths"}},
      .blanks =
          "A blank depth or area gives a blank; a depth of 0 is a dry pool and holds 0, whatever its area.",
      .errors =
          {{ProblemKind::bad_argument,
            "depth or area cannot be read as one number, is below 0, or its cell shows an error; an area "
            "of 0 has a depth; the shape is not over 0; or a unit is unknown"},
           {ProblemKind::not_a_number, "the result is too large to be a number"}},
      .examples = {{.cells = {{"A1", "24"}, {"B1", "1000"}},
                    .formula = "POOL.VOLUME(A1;B1)",
                    .result = "1000",
                    .shows = "a bowl holds half of area times depth: 1000 sq ft by 2 ft"},
                   {.cells = {{"A1", "0.6 m"}, {"B1", "157.08 m²"}},
                    .formula = "POOL.VOLUME(A1;B1;1;\"m\";\"m2\")",
                    .result = "31.416",
                    .shows = "a cone holds a third; cubic metres"},
                   {.cells = {{"A1", "dry"}, {"B1", ""}},
                    .formula = "POOL.VOLUME(A1;B1)",
                    .result = "0",
                    .shows = "a dry pool"},
                   {.cells = {{"A1", "24"}, {"B1", ""}},
                    .formula = "POOL.VOLUME(A1;B1)",
                    .result = "",
                    .shows = "the area is not there yet"},
                   {.cells = {{"A1", "24"}, {"B1", "0"}},
                    .formula = "POOL.VOLUME(A1;B1)",
                    .result = "Err:502",
                    .shows = "water without an area"}},
      .see_also = {"POOL.ELLIPSEAREA", "POOL.READ"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
