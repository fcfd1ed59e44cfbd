// What POOL.ELLIPSEAREA and POOL.ELLIPSEEDGE have in common: the two axes.
#pragma once

#include "function/argument.hpp"
#include "measure/ellipse.hpp"

namespace wetspell {

/// Length, width and the unit they are typed in, then the unit of the result.
std::vector<ParameterSpec> axes_parameters(ParameterSpec result_unit);
std::vector<ErrorSpec> axes_errors();

struct Axes {
  Measured length;
  Measured width;
};
/// Nothing when length or width is blank or was not measured.
Result<std::optional<Axes>> axes(std::span<const Argument> arguments, Unit assume);

/// What `measure` makes of the two axes, in the result unit, or `beside` the unit of the axes when that is
/// left out; a blank for blank axes.
Result<Value> of_axes(std::span<const Argument> arguments,
                      Result<Measured> (*measure)(const Measured&, const Measured&, double),
                      Unit (*beside)(Unit));
/// How blanks are taken, in words.
std::string_view axes_blanks();

} // namespace wetspell
