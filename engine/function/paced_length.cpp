// POOL.PACEDLENGTH
#include "function/argument.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

constexpr ParameterSpec walked_parameter{
    .name = "walked",
    .takes = Takes::reading,
    .kind = Kind::length,
    .help = "The cell with the count, such as 12 or \"25 steps\"; a taped length such as \"40 ft\" passes"};
constexpr ParameterSpec pace_parameter{
    .name = "pace",
    .takes = Takes::measure,
    .kind = Kind::length,
    .help = "Length of the person's pace (two steps), as POOL.PACE gives it: a cell, a number or a formula"};
constexpr ParameterSpec counted_parameter{.name = "counted",
                                          .takes = Takes::word,
                                          .help = "What a bare number counts: \"paces\" or \"steps\"",
                                          .standard = "paces"};

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Cell& walked = arguments[0].cells.front();
  const auto counted = counted_as(counted_parameter, arguments[2]);
  if (!counted) {
    return counted.error();
  }
  const Unit unit = unit_or(arguments[3], Unit::foot);
  const Unit result = unit_or(arguments[4], unit);
  if (walked.kind() == CellKind::error) {
    return refusal::error_in_cell(walked_parameter, walked);
  }
  const Quantity line =
      wetspell::read(walked, {.kind = Kind::length,
                              .assume = counted.value() == CountedAs::steps ? Unit::step : Unit::pace});
  if (line.status == Status::blank || line.status == Status::missing) {
    return Value{};
  }
  if (line.has_value()) {
    return number_value(in_unit(line, result));
  }
  if (line.status != Status::paces && line.status != Status::steps) {
    return refusal::not_one_number(walked_parameter, walked, line, Kind::length);
  }
  const auto pace = measure_in(pace_parameter, arguments[1].cells.front(), unit);
  if (!pace) {
    return pace.error();
  }
  if (!pace.value()) {
    return Problem{ProblemKind::not_enough,
                   "\"pace\" is blank, and without the person's pace a count has no length."};
  }
  const auto length =
      paced_length(line.written, line.status == Status::steps ? CountedAs::steps : CountedAs::paces,
                   Measured{.value = pace.value()->si, .uncertainty = 0});
  if (!length) {
    return length.error();
  }
  return number_value(from_si(length.value().value, result));
}

} // namespace

FunctionSpec paced_length_function() {
  return {
      .name = "POOL.PACEDLENGTH",
      .method = "pacedLength",
      .category = "Mathematical",
      .summary = "Length of a line that was paced, from the count and the person's pace",
      .parameters = {walked_parameter,
                     pace_parameter,
                     counted_parameter,
                     {.name = "unit",
                      .takes = Takes::unit,
                      .kind = Kind::length,
                      .help = "Unit of a pace typed as a bare number",
                      .standard = "ft"},
                     {.name = "result unit",
                      .takes = Takes::unit,
                      .kind = Kind::length,
                      .help = "Unit in which the length is given",
                      .standard = "the unit of the pace"}},
      .blanks = "A blank count gives a blank; a blank pace matters only when there is a count.",
      .errors = {{ProblemKind::bad_argument,
                  "the count or the pace cannot be read, is below 0, is a range, or "
                  "its cell shows an error; or a unit is unknown"},
                 {ProblemKind::not_enough, "there is a count but the pace is blank"}},
      .examples = {{.cells = {{"A1", "12"}, {"B1", "5.5"}},
                    .formula = "POOL.PACEDLENGTH(A1;B1)",
                    .result = "66",
                    .shows = "12 paces of 5.5 ft"},
                   {.cells = {{"A1", "25 steps"}, {"B1", "5.5"}},
                    .formula = "POOL.PACEDLENGTH(A1;B1)",
                    .result = "68.75",
                    .shows = "25 single steps are twelve paces and a half"},
                   {.cells = {{"A1", "23 yd"}, {"B1", ""}},
                    .formula = "POOL.PACEDLENGTH(A1;B1)",
                    .result = "69",
                    .shows = "a taped length passes"},
                   {.cells = {{"A1", ""}, {"B1", "5.5"}},
                    .formula = "POOL.PACEDLENGTH(A1;B1)",
                    .result = "",
                    .shows = "not walked yet"},
                   {.cells = {{"A1", "12"}, {"B1", ""}},
                    .formula = "POOL.PACEDLENGTH(A1;B1)",
                    .result = "#N/A",
                    .shows = "no pace is known"}},
      .see_also = {"POOL.PACE", "POOL.ELLIPSEAREA"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
