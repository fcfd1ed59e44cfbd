// POOL.KAPPA
#include "estimate/agreement.hpp"
#include "function/argument.hpp"

namespace wetspell {

namespace {

constexpr ParameterSpec first_parameter{
    .name = "first", .takes = Takes::rows, .help = "The cells with the first person's classes, in words"};
constexpr ParameterSpec second_parameter{
    .name = "second", .takes = Takes::rows, .help = "The second person's, as many cells in the same order"};
constexpr ParameterSpec classes_parameter{
    .name = "classes",
    .takes = Takes::table,
    .help = "Class table (label, from, to) that says the order of the classes",
    .standard = "the usual classes of depth or of fill, whichever know the words"};
constexpr std::string_view words = "quadratic, linear, none";
constexpr ParameterSpec weights_parameter{
    .name = "weights",
    .takes = Takes::word,
    .help = "\"quadratic\" or \"linear\": a class further away counts more; \"none\": it does not",
    .standard = "quadratic"};

Result<KappaWeights> weights_of(const Argument& argument) {
  if (option_left_out(argument)) {
    return KappaWeights::quadratic;
  }
  const Cell& cell = argument.cells.front();
  if (cell.text() == "quadratic") {
    return KappaWeights::quadratic;
  }
  if (cell.text() == "linear") {
    return KappaWeights::linear;
  }
  if (cell.text() == "none") {
    return KappaWeights::none;
  }
  return refusal::not_a_word(weights_parameter, cell, words);
}

/// The classes given, or those of the usual tables that know the first word.
Result<ClassTable> table_for(const Argument& classes, std::span<const Argument> judged) {
  if (option_left_out(classes)) {
    for (const Argument& argument : judged) {
      for (const Cell& cell : argument.cells) {
        const auto fill = class_named(default_fill_classes(), to_text(cell));
        if (fill && fill.value() < default_fill_classes().rows.size()) {
          return default_fill_classes();
        }
      }
    }
  }
  return classes_or(classes_parameter, classes, default_depth_classes());
}

/// The class in a cell; nothing for a blank and for "not known".
Result<std::optional<std::size_t>> class_in(const ParameterSpec& parameter, const ClassTable& table,
                                            const Cell& cell) {
  if (cell.empty()) {
    return std::optional<std::size_t>{};
  }
  if (cell.kind() == CellKind::error) {
    return refusal::error_in_cell(parameter, cell);
  }
  const auto found = class_named(table, to_text(cell));
  if (!found) {
    return found.error();
  }
  return found.value() < table.rows.size() ? std::optional(found.value()) : std::nullopt;
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Argument& first = arguments[0];
  const Argument& second = arguments[1];
  if (first.rows != second.rows || first.columns != second.columns) {
    return refusal::ranges_differ(first_parameter, first, second_parameter, second);
  }
  const auto weights = weights_of(arguments[3]);
  if (!weights) {
    return weights.error();
  }
  const auto table = table_for(arguments[2], arguments.first(2));
  if (!table) {
    return table.error();
  }
  const std::size_t k = table.value().rows.size();
  std::vector<double> counts(k * k);
  for (std::size_t i = 0; i < first.cells.size(); ++i) {
    const auto one = class_in(first_parameter, table.value(), first.cells[i]);
    if (!one) {
      return one.error();
    }
    const auto other = class_in(second_parameter, table.value(), second.cells[i]);
    if (!other) {
      return other.error();
    }
    if (one.value() && other.value()) {
      ++counts[*one.value() * k + *other.value()];
    }
  }
  const auto found = kappa(counts, k, weights.value(), 0.95);
  if (!found) {
    return found.error();
  }
  return number_value(found.value().kappa);
}

} // namespace

FunctionSpec kappa_function() {
  return {
      .name = "POOL.KAPPA",
      .method = "kappa",
      .category = "Statistical",
      .summary = "How far two people agree on classes beyond what chance would give; 1 is full agreement",
      .parameters = {first_parameter, second_parameter, classes_parameter, weights_parameter},
      .blanks = "A pair with a blank or \"not known\" is left out.",
      .errors = {{ProblemKind::bad_argument,
                  "the ranges differ in size, a word is no class of the table, a cell shows an error, or the "
                  "word for the weights is unknown"},
                 {ProblemKind::not_enough, "fewer than two pairs are left"},
                 {ProblemKind::not_a_number, "both always said the same one class"}},
      .examples =
          {{.cells = {{"A1", "50 to 74 %"},
                      {"A2", "75 to 100 %"},
                      {"A3", "25 to 49 %"},
                      {"A4", "0 to 24 %"},
                      {"B1", "50 to 74 %"},
                      {"B2", "50 to 74 %"},
                      {"B3", "25 to 49 %"},
                      {"B4", "0 to 24 %"}},
            .formula = "POOL.KAPPA(A1:A4;B1:B4)",
            .result = "0.875",
            .shows = "one of four judged one class lower"},
           {.cells = {{"A1", "50 to 74 %"},
                      {"A2", "75 to 100 %"},
                      {"A3", "25 to 49 %"},
                      {"A4", "0 to 24 %"},
                      {"B1", "50 to 74 %"},
                      {"B2", "50 to 74 %"},
                      {"B3", "25 to 49 %"},
                      {"B4", "0 to 24 %"}},
            .formula = "POOL.KAPPA(A1:A4;B1:B4;;\"none\")",
            .result = "0.666667",
            .shows = "every other class is as wrong as any"},
           {.cells = {{"A1", "over 6 to 12 in"}, {"A2", ""}, {"B1", "over 6 to 12 in"}, {"B2", "over 48 in"}},
            .formula = "POOL.KAPPA(A1:A2;B1:B2)",
            .result = "#N/A",
            .shows = "one pair is not enough"}},
      .see_also = {"POOL.DEPTHCLASS", "POOL.FILLCLASS"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
