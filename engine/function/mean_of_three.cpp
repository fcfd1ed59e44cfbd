// POOL.MEANOFTHREE
#include "function/three_readings.hpp"

namespace wetspell {

namespace {

Result<double> mean(const ReadingsMean& readings, Unit result) {
  return from_si(readings.mean, result);
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  return of_three_readings(arguments, mean);
}

} // namespace

FunctionSpec mean_of_three_function() {
  return {
      .name = "POOL.MEANOFTHREE",
      .method = "meanOfThree",
      .category = "Statistical",
      .summary = "Mean water temperature of a visit from its three readings",
      .parameters = three_readings_parameters("Unit in which the mean is given"),
      .blanks =
          "Blank readings and those said to be not measured are left out of the mean; when all are, the "
          "result is blank.",
      .errors = three_readings_errors(),
      .examples = {{.cells = {{"A1", "62.5"}, {"B1", "63"}, {"C1", "64"}},
                    .formula = "POOL.MEANOFTHREE(A1:C1)",
                    .result = "63.1667",
                    .shows = "three readings in °F"},
                   {.cells = {{"A1", "62.6"}, {"B1", ""}, {"C1", "19 °C"}},
                    .formula = "POOL.MEANOFTHREE(A1:C1;\"°F\";\"°C\")",
                    .result = "18",
                    .shows = "one reading left out, one in another unit"},
                   {.cells = {{"A1", ""}, {"A2", ""}, {"A3", ""}},
                    .formula = "POOL.MEANOFTHREE(A1:A3)",
                    .result = "",
                    .shows = "nothing typed yet"},
                   {.cells = {{"A1", "17.2"}, {"B1", "17.8"}, {"C1", "3 ft"}},
                    .formula = "POOL.MEANOFTHREE(A1:C1;\"°C\")",
                    .result = "Err:502",
                    .shows = "a length among the temperatures"}},
      .see_also = {"POOL.SPREAD", "POOL.READ"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
