#include "function/catalogue_text.hpp"

#include "function/function.hpp"

#include <boost/algorithm/string/replace.hpp>
#include <fmt/format.h>

namespace wetspell {

namespace {

constexpr std::string_view introduction =
    R"(# Cell functions

What each function of Wetspell takes and gives. In formulas, arguments are separated as your Calc does it; here
by semicolons. Arguments in brackets may be left out.

A reading is given by pointing to its cell (`A1`) and in no other way: Calc hands a blank cell to a formula's
numbers as zero, and a depth of zero is a dry pool. To try a function on a number written into the formula, use
`POOL.ASIF`. Cells may hold bare numbers, or text with a unit such as `2' 1"`, `64 cm` or `17.8 °C`; what is
understood is told in the guide. A range of cells where one cell is asked for gives one answer for each cell;
enter such a formula as an array formula.

What cannot be worked out is never a wrong number but one of Calc's error values. `POOL.WHY` says the reason in
words.

| Value | Meaning |
|---|---|
| `Err:502` | an argument cannot be meant |
| `#N/A` | something needed is missing |
| `#NUM!` | the result is not a finite number |
| `Err:504` | a number or an expression stands where a cell must be given, or there are too many arguments |
| `#NAME?` | Wetspell is not installed |

)";

/// Inside a table a bar would end the cell.
std::string in_table(std::string_view text) {
  return boost::replace_all_copy(std::string(text), "|", "\\|");
}

std::string signature(const FunctionSpec& function) {
  std::string parameters;
  for (const ParameterSpec& parameter : function.parameters) {
    parameters += parameters.empty() ? "" : "; ";
    parameters += parameter.optional() ? fmt::format("[{}]", parameter.name) : std::string(parameter.name);
  }
  return fmt::format("{}({})", function.name, parameters);
}

std::string parameters_table(const FunctionSpec& function) {
  if (function.parameters.empty()) {
    return {};
  }
  std::string text = "| Argument | What to give | When left out |\n|---|---|---|\n";
  for (const ParameterSpec& parameter : function.parameters) {
    text += fmt::format("| {} | {} | {} |\n", parameter.name, in_table(parameter.help),
                        parameter.optional() ? in_table(parameter.standard) : "(needed)");
  }
  return text + "\n";
}

std::string errors_list(const FunctionSpec& function) {
  std::string text;
  for (const ErrorSpec& error : function.errors) {
    text += fmt::format("- `{}`: {}\n", error_value(error.kind), error.when);
  }
  return text.empty() ? text : text + "\n";
}

std::string cells_in_words(const Example& example) {
  std::string text;
  for (const ExampleCell& cell : example.cells) {
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", cell.address,
                        cell.content.empty() ? "blank" : fmt::format("`{}`", in_table(cell.content)));
  }
  return text;
}

std::string result_in_words(const Example& example) {
  return example.result.empty() ? "(blank)" : fmt::format("`{}`", in_table(example.result));
}

std::string examples_table(const FunctionSpec& function) {
  std::string text = "| Example | Cells | Formula | Result |\n|---|---|---|---|\n";
  for (const Example& example : function.examples) {
    text += fmt::format("| {} | {} | `={}` | {} |\n", in_table(example.shows), cells_in_words(example),
                        in_table(example.formula), result_in_words(example));
  }
  return text + "\n";
}

std::string see_also(const FunctionSpec& function) {
  std::string text;
  for (const std::string_view other : function.see_also) {
    text += fmt::format("{}{}", text.empty() ? "See also " : ", ", other);
  }
  return text + "\n";
}

} // namespace

std::string functions_markdown() {
  std::string text(introduction);
  for (const FunctionSpec& function : functions()) {
    text += fmt::format("## {}\n\n{}.\n\n`{}` (category {})\n\n", function.name, function.summary,
                        signature(function), function.category);
    text += parameters_table(function);
    text += fmt::format("{}\n\n", function.blanks);
    text += errors_list(function);
    text += examples_table(function);
    text += see_also(function) + "\n";
  }
  text.pop_back();
  return text;
}

} // namespace wetspell
