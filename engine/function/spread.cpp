// POOL.SPREAD
#include "function/three_readings.hpp"

namespace wetspell {

namespace {

Result<double> difference(const ReadingsMean& readings, Unit result) {
  if (readings.read < 2) {
    return Problem{ProblemKind::not_enough, "a spread needs two readings, and only one was taken."};
  }
  return difference_from_si(readings.spread, result);
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  return of_three_readings(arguments, difference);
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
      .parameters = three_readings_parameters("Unit in which the difference is given"),
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
