// What POOL.ELLIPSEAREA and POOL.ELLIPSEEDGE have in common: the two axes.
#pragma once

#include "function/argument.hpp"
#include "measure/ellipse.hpp"

namespace wetspell {

std::vector<ParameterSpec> axes_parameters(ParameterSpec result_unit);
std::vector<ErrorSpec> axes_errors();

struct Axes {
  Measured length;
  Measured width;
};
/// Nothing when length or width is blank or was not measured.
Result<std::optional<Axes>> axes(std::span<const Argument> arguments, Unit assume);

} // namespace wetspell
