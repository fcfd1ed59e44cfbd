// What POOL.MEANOFTHREE and POOL.SPREAD have in common: the three readings.
#pragma once

#include "function/argument.hpp"
#include "measure/three_readings.hpp"

namespace wetspell {

/// The readings, the unit of those typed without one, and the unit of the result.
std::vector<ParameterSpec> three_readings_parameters(std::string_view help_on_result);
std::vector<ErrorSpec> three_readings_errors();

/// What `figure` makes of the readings taken together, in the unit asked for; a blank when none was taken.
Result<Value> of_three_readings(std::span<const Argument> arguments,
                                Result<double> (*figure)(const ReadingsMean& readings, Unit result));

} // namespace wetspell
