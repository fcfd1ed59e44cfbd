#include "function/ellipse.hpp"

namespace wetspell {

namespace {

constexpr ParameterSpec length_parameter{.name = "length",
                                         .takes = Takes::reading,
                                         .kind = Kind::length,
                                         .help = "The cell with the pool's length along its longest line"};
constexpr ParameterSpec width_parameter{.name = "width",
                                        .takes = Takes::measure,
                                        .kind = Kind::length,
                                        .help =
                                            "Greatest width across that line: a cell, a number or a formula"};

} // namespace

std::vector<ParameterSpec> axes_parameters(ParameterSpec result_unit) {
  return {length_parameter,
          width_parameter,
          {.name = "unit",
           .takes = Takes::unit,
           .kind = Kind::length,
           .help = "Unit of a length or width typed without one",
           .standard = "ft"},
          result_unit};
}

std::vector<ErrorSpec> axes_errors() {
  return {
      {ProblemKind::bad_argument,
       "length or width cannot be read as one length, is below 0, is a count of paces, or its cell shows an "
       "error; or a unit is unknown"},
      {ProblemKind::not_a_number, "the result is too large to be a number"}};
}

Result<std::optional<Axes>> axes(std::span<const Argument> arguments, Unit assume) {
  const auto length = number_in(length_parameter, arguments[0], assume);
  if (!length) {
    return length.error();
  }
  const auto width = measure_in(width_parameter, arguments[1].cells.front(), assume);
  if (!width) {
    return width.error();
  }
  const bool dry = length.value() && length.value()->si == 0;
  if (!length.value() || (!width.value() && !dry)) {
    return std::optional<Axes>{};
  }
  return std::optional{Axes{{.value = length.value()->si, .uncertainty = 0},
                            {.value = dry ? 0 : width.value()->si, .uncertainty = 0}}};
}

Result<Value> of_axes(std::span<const Argument> arguments,
                      Result<Measured> (*measure)(const Measured&, const Measured&, double),
                      Unit (*beside)(Unit)) {
  const Unit unit = unit_or(arguments[2], Unit::foot);
  const auto both = axes(arguments, unit);
  if (!both) {
    return both.error();
  }
  if (!both.value()) {
    return Value{};
  }
  const auto measured = measure(both.value()->length, both.value()->width, 0);
  if (!measured) {
    return measured.error();
  }
  return number_value(from_si(measured.value().value, unit_or(arguments[3], beside(unit))));
}

std::string_view axes_blanks() {
  return "A blank length gives a blank. So does a blank width, and a width of 0, which Calc cannot tell from "
         "it; "
         "but a length of 0 is a dry pool, whatever its width.";
}

} // namespace wetspell
