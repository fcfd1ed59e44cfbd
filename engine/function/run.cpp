// The one way through which every call goes: arity, kinds and units are checked here, ranges are walked here.
#include "function/argument.hpp"
#include "function/function.hpp"

#include <boost/container/small_vector.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

bool repeats(const ParameterSpec& parameter) {
  return parameter.takes == Takes::tables || parameter.takes == Takes::values;
}

/// Which parameter an argument belongs to: the last one may take many.
const ParameterSpec& parameter_of(const FunctionSpec& function, std::size_t index) {
  return function.parameters[std::min(index, function.parameters.size() - 1)];
}

/// The error of an option's cell. Readings with errors are the functions' own affair.
const Cell* error_among(const Argument& argument) {
  const auto found = std::find_if(argument.cells.begin(), argument.cells.end(),
                                  [](const Cell& cell) { return cell.kind() == CellKind::error; });
  return found == argument.cells.end() ? nullptr : &*found;
}

std::optional<Problem> wrong_option(const ParameterSpec& parameter, const Argument& argument) {
  if (const Cell* error = error_among(argument)) {
    return refusal::error_in_cell(parameter, *error);
  }
  if (option_left_out(argument)) {
    return std::nullopt;
  }
  if (parameter.takes == Takes::table) {
    return argument.single() ? std::optional{refusal::not_a_table(parameter)} : std::nullopt;
  }
  if (!argument.single()) {
    return refusal::one_cell_expected(parameter, argument);
  }
  if (parameter.takes == Takes::unit) {
    const Cell& cell = argument.cells.front();
    const auto unit = cell.kind() == CellKind::text ? unit_named(cell.text()) : std::nullopt;
    if (!unit || !fits(*unit, parameter.kind) || *unit == Unit::pace || *unit == Unit::step) {
      return refusal::not_a_unit(parameter, cell);
    }
  }
  return std::nullopt;
}

std::optional<Problem> wrong(const ParameterSpec& parameter, const Argument& argument) {
  switch (parameter.takes) {
  case Takes::unit:
  case Takes::word:
  case Takes::table:
    return wrong_option(parameter, argument);
  case Takes::tables:
    if (const Cell* error = error_among(argument)) {
      return refusal::error_in_cell(parameter, *error);
    }
    return std::nullopt;
  case Takes::formula:
    return argument.single() ? std::nullopt : std::optional{refusal::one_cell_expected(parameter, argument)};
  case Takes::reading:
  case Takes::readings:
  case Takes::measure:
  case Takes::rows:
  case Takes::values:
    break;
  }
  return std::nullopt;
}

/// Over ranges of these a function is evaluated cell by cell.
bool walked_over(const ParameterSpec& parameter) {
  return parameter.takes == Takes::reading || parameter.takes == Takes::measure;
}

/// The size of the rectangle over which a function is evaluated cell by cell: that of its readings.
struct Extent {
  const ParameterSpec* parameter = nullptr;
  const Argument* argument = nullptr;
};

Result<Extent> extent_of(const FunctionSpec& function, std::span<const Argument> arguments) {
  Extent extent;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    const ParameterSpec& parameter = parameter_of(function, i);
    const Argument& argument = arguments[i];
    if (!walked_over(parameter) || !argument.given || argument.single()) {
      continue;
    }
    if (extent.argument &&
        (argument.rows != extent.argument->rows || argument.columns != extent.argument->columns)) {
      return refusal::ranges_differ(*extent.parameter, *extent.argument, parameter, argument);
    }
    extent = {&parameter, &argument};
  }
  return extent;
}

Result<Value> over_range(const FunctionSpec& function, std::span<const Argument> arguments,
                         const Argument& extent) {
  std::vector<Argument> one(arguments.begin(), arguments.end());
  std::vector<std::size_t> walked;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    if (walked_over(parameter_of(function, i)) && arguments[i].given && !arguments[i].single()) {
      walked.push_back(i);
      one[i] = Argument::of({});
    }
  }
  Value all(extent.rows, extent.columns);
  for (std::size_t k = 0; k < all.cells.size(); ++k) {
    for (const std::size_t i : walked) {
      one[i].cells.front() = arguments[i].cells[k];
    }
    const auto value = function.evaluate(one);
    all.cells[k] =
        value ? value.value().cells.front() : Cell::of_error(std::string(error_value(value.error().kind)));
  }
  return all;
}

Result<Value> checked(const FunctionSpec& function, std::span<const Argument> arguments) {
  const auto& parameters = function.parameters;
  if (arguments.size() > parameters.size() && (parameters.empty() || !repeats(parameters.back()))) {
    return refusal::too_many(parameters.size(), arguments.size());
  }
  for (std::size_t i = 0; i < parameters.size(); ++i) {
    if (!parameters[i].optional() && (i >= arguments.size() || !arguments[i].given)) {
      return refusal::needed(parameters[i]);
    }
  }
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    if (arguments[i].given) {
      if (auto problem = wrong(parameter_of(function, i), arguments[i])) {
        return *std::move(problem);
      }
    }
  }
  const auto extent = extent_of(function, arguments);
  if (!extent) {
    return extent.error();
  }
  if (extent.value().argument) {
    return over_range(function, arguments, *extent.value().argument);
  }
  return function.evaluate(arguments);
}

} // namespace

Result<Value> run(const FunctionSpec& function, std::span<const Argument> arguments) {
  // Functions find every parameter at its place, but for one that may be there any number of times.
  const std::size_t least = function.parameters.size() -
                            (!function.parameters.empty() && repeats(function.parameters.back()) ? 1 : 0);
  std::vector<Argument> padded;
  if (arguments.size() < least) {
    padded.assign(arguments.begin(), arguments.end());
    padded.resize(least);
    arguments = padded;
  }
  auto result = checked(function, arguments);
  if (!result) {
    Problem problem = result.error();
    problem.text = fmt::format("{}: {}", function.name, problem.text);
    return problem;
  }
  return result;
}

std::string_view error_value(ProblemKind kind) {
  switch (kind) {
  case ProblemKind::bad_argument:
    return "Err:502";
  case ProblemKind::not_enough:
    return "#N/A";
  case ProblemKind::not_a_number:
    return "#NUM!";
  case ProblemKind::no_convergence:
    return "Err:523";
  }
  return "Err:502";
}

} // namespace wetspell
