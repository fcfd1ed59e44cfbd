// POOL.READ
#include "function/argument.hpp"
#include "season/settings.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

constexpr ParameterSpec kind_parameter{.name = "kind",
                                       .takes = Takes::word,
                                       .help = "What the cell is about: temperature, depth, length, area, "
                                               "volume, percent, count, date, time or truth"};

/// The units of US fieldwork, in which bare numbers are read unless said otherwise.
const Settings in_the_field;

/// The unit an option names; which ones fit depends on the kind, so the runner could not check it.
Result<Unit> unit_of(const ParameterSpec& parameter, const Argument& argument, Kind kind, Unit standard) {
  if (option_left_out(argument)) {
    return standard;
  }
  const Cell& cell = argument.cells.front();
  const auto unit = unit_named(to_text(cell));
  if (!unit || !fits(*unit, kind) || *unit == Unit::pace || *unit == Unit::step) {
    ParameterSpec expected = parameter;
    expected.kind = kind;
    return refusal::not_a_unit(expected, cell);
  }
  return *unit;
}

constexpr ParameterSpec unit_parameter{.name = "unit",
                                       .takes = Takes::word,
                                       .help = "Unit of a bare number",
                                       .standard = "°F, in, ft, sq ft, cu ft or %, whichever suits the kind"};
constexpr ParameterSpec result_unit_parameter{.name = "result unit",
                                              .takes = Takes::word,
                                              .help = "Unit in which the number is given",
                                              .standard = "the unit of bare numbers"};

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Cell& word = arguments[1].cells.front();
  const auto kind = kind_named(to_text(word));
  if (!kind) {
    return refusal::not_a_word(kind_parameter, word,
                               "temperature, depth, length, area, volume, percent, count, date, time, truth");
  }
  const auto unit = unit_of(unit_parameter, arguments[2], *kind, in_the_field.unit_of(*kind));
  if (!unit) {
    return unit.error();
  }
  const auto result = unit_of(result_unit_parameter, arguments[3], *kind, unit.value());
  if (!result) {
    return result.error();
  }
  const ParameterSpec typed{.name = "typed", .takes = Takes::reading, .kind = *kind, .help = {}};
  const auto quantity = number_in(typed, arguments[0], unit.value());
  if (!quantity) {
    return quantity.error();
  }
  if (!quantity.value()) {
    return Value{};
  }
  if (result.value() == Unit::none) {
    return number_value(quantity.value()->si);
  }
  return number_value(in_unit(*quantity.value(), result.value()));
}

} // namespace

FunctionSpec read_function() {
  return {
      .name = "POOL.READ",
      .method = "read",
      .category = "Text",
      .summary = "The number that a typed quantity stands for, in the unit asked for",
      .parameters = {{.name = "typed",
                      .takes = Takes::reading,
                      .help = "The cell as somebody typed it: a bare number, or words with a unit"},
                     kind_parameter,
                     unit_parameter,
                     result_unit_parameter},
      .blanks = "A blank cell and words for \"not measured\" give a blank.",
      .errors = {{ProblemKind::bad_argument,
                  "the cell cannot be read as that kind, says more or less than a number, or two numbers, "
                  "or shows an error; or the kind or a unit is unknown"}},
      .examples = {{.cells = {{"A1", "2' 1 1/2\""}},
                    .formula = "POOL.READ(A1;\"depth\")",
                    .result = "25.5",
                    .shows = "feet and inches, given in inches"},
                   {.cells = {{"A1", "17.5 °C"}},
                    .formula = "POOL.READ(A1;\"temperature\")",
                    .result = "63.5",
                    .shows = "given in °F"},
                   {.cells = {{"A1", "25"}},
                    .formula = "POOL.READ(A1;\"depth\";\"in\";\"cm\")",
                    .result = "63.5",
                    .shows = "a bare number of inches, given in centimetres"},
                   {.cells = {{"A1", "about 40 ft"}},
                    .formula = "POOL.READ(A1;\"length\";\"ft\";\"m\")",
                    .result = "12.192",
                    .shows = "an approximate length"},
                   {.cells = {{"A1", "not measured"}},
                    .formula = "POOL.READ(A1;\"depth\")",
                    .result = "",
                    .shows = "no reading"},
                   {.cells = {{"A1", "over 48 in"}},
                    .formula = "POOL.READ(A1;\"depth\")",
                    .result = "Err:502",
                    .shows = "no single number"}},
      .see_also = {"POOL.WHY", "POOL.PACEDLENGTH"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
