// POOL.WHY
#include "function/argument.hpp"
#include "function/formula.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

/// What a call gave, for somebody who asked why it refused when it did not.
std::string gave(const FunctionSpec& function, const Value& value) {
  if (value.cells.size() > 1) {
    std::size_t refused = 0;
    for (const Cell& cell : value.cells) {
      refused += cell.kind() == CellKind::error ? 1 : 0;
    }
    return refused == 0
               ? fmt::format("{} did not refuse: it gives {} values.", function.name, value.cells.size())
               : fmt::format("{} refused {} of {} cells; ask about one of them.", function.name, refused,
                             value.cells.size());
  }
  if (value.cells.empty() || value.cells.front().empty()) {
    return fmt::format("{} did not refuse: it gives a blank, because there was nothing to work with.",
                       function.name);
  }
  return fmt::format("{} did not refuse: it gives {}.", function.name, to_text(value.cells.front()));
}

/// One call in words, and whether it is the reason for an error in the cell.
struct Verdict {
  std::string words;
  bool refused = false;
};

Verdict verdict(const WrittenCall& call, const CellSource& source) {
  auto arguments = arguments_of(call, source);
  if (!arguments) {
    return {arguments.error().problem.text, !arguments.error().unseen};
  }
  const auto value = run(*call.function, arguments.value());
  if (!value) {
    return {value.error().text, true};
  }
  return {gave(*call.function, value.value()), false};
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Argument& asked = arguments[0];
  if (asked.formula.empty()) {
    return Value{asked.blank() ? Cell{} : Cell::of_text("There is no formula in that cell.")};
  }
  const auto calls = calls_in(asked.formula);
  if (calls.empty()) {
    return Value{Cell::of_text(fmt::format("No POOL function stands in that cell: {}", asked.formula))};
  }
  // The first call that refuses is the reason; failing that, the outermost call speaks.
  std::optional<Verdict> outermost;
  for (const WrittenCall& call : calls) {
    Verdict one = verdict(call, *asked.source);
    if (one.refused) {
      return Value{Cell::of_text(std::move(one.words))};
    }
    if (!outermost) {
      outermost = std::move(one);
    }
  }
  return Value{Cell::of_text(outermost->words)};
}

} // namespace

FunctionSpec why_function() {
  return {
      .name = "POOL.WHY",
      .method = "why",
      .category = "Information",
      .summary = "Why a POOL function in another cell refused, in words",
      .parameters = {{.name = "cell",
                      .takes = Takes::formula,
                      .help = "The cell with the formula in question"}},
      .blanks = "A blank cell gives a blank.",
      .errors = {{ProblemKind::bad_argument, "more than one cell was given"}},
      .examples =
          {{.cells = {{"A1", "62 °F"}, {"B1", "=POOL.DEPTHCLASS(A1)"}},
            .formula = "POOL.WHY(B1)",
            .result = "POOL.DEPTHCLASS: \"depth\" reads \"62 °F\", which is no depth: a temperature where a "
                      "depth is expected.",
            .shows = "a refusal"},
           {.cells = {{"A1", "12"}, {"A2", ""}, {"B1", "=POOL.PACEDLENGTH(A1;A2)"}},
            .formula = "POOL.WHY(B1)",
            .result =
                "POOL.PACEDLENGTH: \"pace\" is blank, and without the person's pace a count has no length.",
            .shows = "what is missing"},
           {.cells = {{"A1", "25"}, {"B1", "=POOL.DEPTHCLASS(A1)"}},
            .formula = "POOL.WHY(B1)",
            .result = "POOL.DEPTHCLASS did not refuse: it gives over 24 to 36 in.",
            .shows = "nothing to explain"},
           {.cells = {{"B1", "7"}},
            .formula = "POOL.WHY(B1)",
            .result = "There is no formula in that cell.",
            .shows = "a typed number"},
           {.cells = {{"B1", ""}}, .formula = "POOL.WHY(B1)", .result = "", .shows = "a blank cell"}},
      .see_also = {"POOL.ASIF", "POOL.DOUBTS"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
