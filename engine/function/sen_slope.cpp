// POOL.SENSLOPE
#include "function/argument.hpp"
#include "measure/sen_line.hpp"

namespace wetspell {

namespace {

constexpr ParameterSpec times_parameter{.name = "times",
                                        .takes = Takes::readings,
                                        .kind = Kind::count,
                                        .help = "The cells with the years, or dates, in any order"};
constexpr ParameterSpec values_parameter{.name = "values",
                                         .takes = Takes::readings,
                                         .kind = Kind::count,
                                         .help =
                                             "As many cells with the numbers of those years, in one unit"};

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Argument& times = arguments[0];
  const Argument& values = arguments[1];
  if (times.cells.size() != values.cells.size()) {
    return refusal::ranges_differ(times_parameter, times, values_parameter, values);
  }
  std::vector<double> x;
  std::vector<double> y;
  for (std::size_t i = 0; i < times.cells.size(); ++i) {
    const auto time = plain_number_in(times_parameter, times.cells[i]);
    if (!time) {
      return time.error();
    }
    const auto value = plain_number_in(values_parameter, values.cells[i]);
    if (!value) {
      return value.error();
    }
    if (time.value() && value.value()) {
      x.push_back(*time.value());
      y.push_back(*value.value());
    }
  }
  if (x.empty()) {
    return Value{};
  }
  constexpr double level = 0.95;
  const auto line = theil_sen(x, y, level);
  if (!line) {
    return line.error();
  }
  return number_value(line.value().slope);
}

} // namespace

FunctionSpec sen_slope_function() {
  return {
      .name = "POOL.SENSLOPE",
      .method = "senSlope",
      .category = "Statistical",
      .summary = "Change a year (or a day) by the median of the slopes between all pairs of values",
      .parameters = {times_parameter, values_parameter},
      .blanks = "Pairs with a blank are left out; when all are, the result is blank.",
      .errors = {{ProblemKind::bad_argument,
                  "a cell is not a number or shows an error, or the ranges differ in size"},
                 {ProblemKind::not_enough, "all values are of one time"}},
      .examples = {{.cells = {{"A1", "2021"},
                              {"B1", "40"},
                              {"A2", "2022"},
                              {"B2", "38"},
                              {"A3", "2023"},
                              {"B3", "90"},
                              {"A4", "2024"},
                              {"B4", "34"},
                              {"A5", "2025"},
                              {"B5", "32"}},
                    .formula = "POOL.SENSLOPE(A1:A5;B1:B5)",
                    .result = "-2",
                    .shows = "one wild year does not move it"},
                   {.cells = {{"A1", "2021"}, {"B1", "40"}},
                    .formula = "POOL.SENSLOPE(A1:A1;B1:B1)",
                    .result = "#N/A",
                    .shows = "one year has no slope"},
                   {.cells = {{"A1", ""}, {"B1", ""}},
                    .formula = "POOL.SENSLOPE(A1:A2;B1:B2)",
                    .result = "",
                    .shows = "nothing typed yet"},
                   {.cells = {{"A1", "2021"}, {"B1", "40 in"}, {"A2", "2022"}, {"B2", "38"}},
                    .formula = "POOL.SENSLOPE(A1:A2;B1:B2)",
                    .result = "Err:502",
                    .shows = "numbers alone, all in one unit"}},
      .see_also = {"POOL.DRYDATE"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
