// What POOL.MEANOFTHREE and POOL.SPREAD have in common: the three readings.
#pragma once

#include "function/argument.hpp"
#include "measure/three_readings.hpp"

namespace wetspell {

ParameterSpec three_readings_parameter();
std::vector<ErrorSpec> three_readings_errors();

/// The readings taken together; nothing when none was taken.
Result<std::optional<ReadingsMean>> three_readings(const Argument& argument, Unit assume);

} // namespace wetspell
