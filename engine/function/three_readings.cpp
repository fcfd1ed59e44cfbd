#include "function/three_readings.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

constexpr std::size_t most = 3;

} // namespace

ParameterSpec three_readings_parameter() {
  return {.name = "readings",
          .takes = Takes::readings,
          .kind = Kind::temperature,
          .help = "The cells of up to three readings, side by side or one below the other"};
}

std::vector<ErrorSpec> three_readings_errors() {
  return {
      {ProblemKind::bad_argument,
       "a reading cannot be read as one temperature, its cell shows an error, a unit is unknown, or there "
       "are more than three cells"}};
}

Result<std::optional<ReadingsMean>> three_readings(const Argument& argument, Unit assume) {
  if (argument.cells.size() > most) {
    return Problem{ProblemKind::bad_argument, fmt::format("\"readings\" takes up to {} cells, got {} by {}.",
                                                          most, argument.rows, argument.columns)};
  }
  std::array<Quantity, most> readings;
  bool any = false;
  for (std::size_t i = 0; i < argument.cells.size(); ++i) {
    const auto reading = number_in(three_readings_parameter(), argument.cells[i], assume);
    if (!reading) {
      return reading.error();
    }
    readings[i] = reading.value().value_or(Quantity{});
    any |= readings[i].has_value();
  }
  if (!any) {
    return std::optional<ReadingsMean>{};
  }
  const auto mean = mean_of_readings({readings.data(), argument.cells.size()});
  if (!mean) {
    return mean.error();
  }
  return std::optional{mean.value()};
}

} // namespace wetspell
