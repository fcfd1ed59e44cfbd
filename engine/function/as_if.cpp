// POOL.ASIF
#include "function/argument.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

constexpr ParameterSpec function_parameter{.name = "function",
                                           .takes = Takes::word,
                                           .help =
                                               "Name of a POOL function in quotes, such as \"DEPTHCLASS\""};

bool takes_values(Takes takes) {
  return takes == Takes::reading || takes == Takes::readings || takes == Takes::measure ||
         takes == Takes::unit || takes == Takes::word || takes == Takes::table;
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Cell& word = arguments[0].cells.front();
  const std::string given_name = to_text(word);
  const FunctionSpec* function = function_named(given_name);
  const bool serves =
      function && !function->parameters.empty() &&
      std::all_of(function->parameters.begin(), function->parameters.end(),
                  [](const ParameterSpec& parameter) { return takes_values(parameter.takes); });
  if (!serves) {
    return refusal::not_a_word(function_parameter, word, "the POOL functions that work on typed values");
  }
  const std::span<const Argument> values = arguments.subspan(1);
  for (std::size_t i = 0; i < std::min(values.size(), function->parameters.size()); ++i) {
    const ParameterSpec& parameter = function->parameters[i];
    const bool reading = parameter.takes == Takes::reading || parameter.takes == Takes::readings;
    if (reading && values[i].single() && values[i].cells.front() == Cell::of_number(0)) {
      return Problem{ProblemKind::bad_argument,
                     fmt::format("\"{}\" is a bare 0, and a blank cell looks the same here; write the zero "
                                 "with its unit in quotes, such as \"0 in\", or point {} to the cell.",
                                 parameter.name, function->name)};
    }
  }
  return run(*function, values);
}

} // namespace

FunctionSpec as_if_function() {
  return {
      .name = "POOL.ASIF",
      .method = "asIf",
      .category = "Logical",
      .summary = "What a POOL function would give for values written into the formula",
      .parameters = {function_parameter,
                     {.name = "values",
                      .takes = Takes::values,
                      .help = "What the function takes, in its order: numbers, texts in quotes, ranges",
                      .standard = "nothing"}},
      .blanks = "A bare 0 for a reading is refused, because a blank cell would look the same; \"0 in\" is "
                "understood. A blank text gives a blank.",
      .errors =
          {{ProblemKind::bad_argument,
            "no such function, a function that works on rows of a sheet, a bare 0 for a reading, or what "
            "the function itself refuses"},
           {ProblemKind::not_enough, "the function itself finds something missing"}},
      .examples = {{.cells = {},
                    .formula = "POOL.ASIF(\"DEPTHCLASS\";25)",
                    .result = "over 24 to 36 in",
                    .shows = "a number in the formula"},
                   {.cells = {},
                    .formula = "POOL.ASIF(\"READ\";\"64 cm\";\"depth\")",
                    .result = "25.1969",
                    .shows = "a text in the formula"},
                   {.cells = {},
                    .formula = "POOL.ASIF(\"ELLIPSEAREA\";20;10)",
                    .result = "157.0796",
                    .shows = "two numbers"},
                   {.cells = {},
                    .formula = "POOL.ASIF(\"DEPTHCLASS\";0)",
                    .result = "Err:502",
                    .shows = "zero, or a blank cell?"},
                   {.cells = {},
                    .formula = "POOL.ASIF(\"DEPTHCLASS\";\"0 in\")",
                    .result = "no standing water",
                    .shows = "surely zero"}},
      .see_also = {"POOL.WHY", "POOL.READ"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
