// POOL.PACE
#include "function/argument.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

constexpr ParameterSpec course_parameter{
    .name = "course",
    .takes = Takes::measure,
    .kind = Kind::length,
    .help = "Taped length of the course: a cell or a number, or a range with one cell for each walk"};
constexpr ParameterSpec counts_parameter{
    .name = "counts",
    .takes = Takes::readings,
    .kind = Kind::count,
    .help = "The cells with the counts of one or more walks over the course"};
constexpr ParameterSpec counted_parameter{
    .name = "counted",
    .takes = Takes::word,
    .help = "\"paces\" when every second step was counted, \"steps\" when every step was",
    .standard = "paces"};

/// A count as the season reads it: it may end in a half, and may say itself whether it is paces or steps.
Result<std::optional<double>> count_in(const Cell& cell, CountedAs counted) {
  if (cell.kind() == CellKind::error) {
    return refusal::error_in_cell(counts_parameter, cell);
  }
  const bool steps = counted == CountedAs::steps;
  const Quantity count =
      wetspell::read(cell, {.kind = Kind::length, .assume = steps ? Unit::step : Unit::pace});
  if (count.status == Status::blank || count.status == Status::missing) {
    return std::optional<double>{};
  }
  if (count.status == Status::paces) {
    return std::optional{steps ? count.written * 2 : count.written};
  }
  if (count.status == Status::steps) {
    return std::optional{steps ? count.written : count.written / 2};
  }
  // What is no count is refused with the reason that a count would give.
  return refusal::not_one_number(counts_parameter, cell, wetspell::read(cell, {.kind = Kind::count}),
                                 Kind::count);
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Argument& courses = arguments[0];
  const Argument& counts = arguments[1];
  const auto counted = counted_as(counted_parameter, arguments[2]);
  if (!counted) {
    return counted.error();
  }
  const Unit unit = unit_or(arguments[3], Unit::foot);
  if (!courses.single() && courses.cells.size() != counts.cells.size()) {
    return refusal::ranges_differ(course_parameter, courses, counts_parameter, counts);
  }
  std::vector<CalibrationRun> runs;
  for (std::size_t i = 0; i < counts.cells.size(); ++i) {
    const auto count = count_in(counts.cells[i], counted.value());
    if (!count) {
      return count.error();
    }
    if (!count.value()) {
      continue;
    }
    const auto course = measure_in(course_parameter, courses.cells[courses.single() ? 0 : i], unit);
    if (!course) {
      return course.error();
    }
    if (!course.value()) {
      return Problem{ProblemKind::not_enough,
                     fmt::format("walk {} has a count but no length of its course.", i + 1)};
    }
    runs.push_back({course.value()->si, *count.value()});
  }
  if (runs.empty()) {
    return Value{};
  }
  const auto pace = pace_from_runs(runs, counted.value());
  if (!pace) {
    return pace.error();
  }
  return number_value(from_si(pace.value().pace.value, unit_or(arguments[4], unit)));
}

} // namespace

FunctionSpec pace_function() {
  return {
      .name = "POOL.PACE",
      .method = "pace",
      .category = "Mathematical",
      .summary = "Length of a person's pace, which is two steps, from walks over a taped course",
      .parameters = {course_parameter,
                     counts_parameter,
                     counted_parameter,
                     {.name = "unit",
                      .takes = Takes::unit,
                      .kind = Kind::length,
                      .help = "Unit of a course typed without one",
                      .standard = "ft"},
                     {.name = "result unit",
                      .takes = Takes::unit,
                      .kind = Kind::length,
                      .help = "Unit in which the pace is given",
                      .standard = "the unit of the course"}},
      .blanks = "Walks without a count are left out; when none has one, the result is blank.",
      .errors = {{ProblemKind::bad_argument, "a course or count cannot be read, is not over 0, or its cell "
                                             "shows an error; or there are not as many courses as counts"},
                 {ProblemKind::not_enough, "a walk has a count but its course is blank"}},
      .examples = {{.cells = {{"A1", "66"}, {"B1", "12"}},
                    .formula = "POOL.PACE(A1;B1)",
                    .result = "5.5",
                    .shows = "12 paces over 66 ft"},
                   {.cells = {{"A1", "100"}, {"B1", "20"}, {"C1", "19"}, {"D1", ""}},
                    .formula = "POOL.PACE(A1;B1:D1)",
                    .result = "5.128",
                    .shows = "two walks of three: 200 ft in 39 paces"},
                   {.cells = {{"A1", "100"}, {"B1", "19.5"}, {"C1", "20"}},
                    .formula = "POOL.PACE(A1;B1:C1)",
                    .result = "5.0633",
                    .shows = "a count may end in a half: 200 ft in 39.5 paces"},
                   {.cells = {{"A1", "20 m"}, {"B1", "26"}},
                    .formula = "POOL.PACE(A1;B1;\"steps\";\"ft\";\"m\")",
                    .result = "1.5385",
                    .shows = "26 single steps over 20 m are 13 paces"},
                   {.cells = {{"A1", ""}, {"B1", ""}},
                    .formula = "POOL.PACE(A1;B1)",
                    .result = "",
                    .shows = "not walked yet"},
                   {.cells = {{"A1", ""}, {"B1", "12"}},
                    .formula = "POOL.PACE(A1;B1)",
                    .result = "#N/A",
                    .shows = "the course is missing"}},
      .see_also = {"POOL.PACEDLENGTH"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
