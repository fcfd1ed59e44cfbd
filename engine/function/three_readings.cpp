#include "function/three_readings.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

constexpr std::size_t most = 3;

constexpr ParameterSpec readings_parameter{
    .name = "readings",
    .takes = Takes::readings,
    .kind = Kind::temperature,
    .help = "The cells of up to three readings, side by side or one below the other"};

/// The readings taken together; nothing when none was taken.
Result<std::optional<ReadingsMean>> three_readings(const Argument& argument, Unit assume) {
  if (argument.cells.size() > most) {
    return Problem{ProblemKind::bad_argument, fmt::format("\"readings\" takes up to {} cells, got {} by {}.",
                                                          most, argument.rows, argument.columns)};
  }
  std::array<Quantity, most> readings;
  bool any = false;
  for (std::size_t i = 0; i < argument.cells.size(); ++i) {
    const auto reading = number_in(readings_parameter, argument.cells[i], assume);
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

} // namespace

std::vector<ParameterSpec> three_readings_parameters(std::string_view help_on_result) {
  return {readings_parameter,
          {.name = "unit",
           .takes = Takes::unit,
           .kind = Kind::temperature,
           .help = "Unit of readings typed without one, such as \"°F\" or \"°C\"",
           .standard = "°F"},
          {.name = "result unit",
           .takes = Takes::unit,
           .kind = Kind::temperature,
           .help = help_on_result,
           .standard = "the unit of the readings"}};
}

std::vector<ErrorSpec> three_readings_errors() {
  return {
      {ProblemKind::bad_argument,
       "a reading cannot be read as one temperature, its cell shows an error, a unit is unknown, or there "
       "are more than three cells"}};
}

Result<Value> of_three_readings(std::span<const Argument> arguments,
                                Result<double> (*figure)(const ReadingsMean& readings, Unit result)) {
  const Unit unit = unit_or(arguments[1], Unit::fahrenheit);
  const auto readings = three_readings(arguments[0], unit);
  if (!readings) {
    return readings.error();
  }
  if (!readings.value()) {
    return Value{};
  }
  const auto found = figure(*readings.value(), unit_or(arguments[2], unit));
  if (!found) {
    return found.error();
  }
  return number_value(found.value());
}

} // namespace wetspell
