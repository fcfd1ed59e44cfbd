// POOL.SPREAD
#include "function/three_readings.hpp"

namespace wetspell {

namespace {

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Unit unit = unit_or(arguments[1], Unit::fahrenheit);
  const Unit result = unit_or(arguments[2], unit);
  const auto readings = three_readings(arguments[0], unit);
  if (!readings) {
    return readings.error();
  }
  if (!readings.value()) {
    return Value{};
  }
  if (readings.value()->read < 2) {
    return Problem{ProblemKind::not_enough, "a spread needs two readings, and only one was taken."};
  }
  return number_value(difference_from_si(readings.value()->spread, result));
}

std::vector<ErrorSpec> errors() {
  auto all = three_readings_errors();
  all.push_back({ProblemKind::not_enough, "only one reading was taken"});
  return all;
}

} // namespace

FunctionSpec spread_function() {
  return {
      .name = "POOL.SPREAD",
      .method = "spread",
      .category = "Statistical",
      .summary = "Largest minus smallest of a visit's three water temperatures",
      .parameters = {three_readings_parameter(),
                     {.name = "unit",
                      .takes = Takes::unit,
                      .kind = Kind::temperature,
                      .help = "Unit of temperatures typed as bare numbers, such as \"°F\" or \"°C\"",
                      .standard = "°F"},
                     {.name = "result unit",
                      .takes = Takes::unit,
                      .kind = Kind::temperature,
                      .help = "Unit in which the difference is given",
                      .standard = "the unit of the readings"}},
      .blanks = "Blank readings and those said to be not measured are left out; when all are, the result is "
                "blank.",
      .errors = errors(),
      .examples = {{.cells = {{"A1", "62.5"}, {"B1", "63"}, {"C1", "64"}},
                    .formula = "POOL.SPREAD(A1:C1)",
                    .result = "1.5",
                    .shows = "in °F"},
                   {.cells = {{"A1", "62"}, {"B1", ""}, {"C1", "65.6"}},
                    .formula = "POOL.SPREAD(A1:C1;\"°F\";\"°C\")",
                    .result = "2",
                    .shows = "a difference in °C from readings in °F"},
                   {.cells = {{"A1", "62.5"}, {"B1", "not measured"}, {"C1", ""}},
                    .formula = "POOL.SPREAD(A1:C1)",
                    .result = "#N/A",
                    .shows = "one reading has no spread"}},
      .see_also = {"POOL.MEANOFTHREE"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
