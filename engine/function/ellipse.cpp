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

} // namespace wetspell
