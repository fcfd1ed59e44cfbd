// POOL.DRYDATE
#include "function/argument.hpp"
#include "measure/fall.hpp"
#include "season/derive.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

constexpr ParameterSpec dates_parameter{.name = "dates",
                                        .takes = Takes::readings,
                                        .kind = Kind::date,
                                        .help = "The cells with the dates of a pool's visits, in any order"};
constexpr ParameterSpec depths_parameter{.name = "depths",
                                         .takes = Takes::readings,
                                         .kind = Kind::depth,
                                         .help = "As many cells with the depths of those visits"};
constexpr ParameterSpec which_parameter{
    .name = "which",
    .takes = Takes::word,
    .help = "\"expected\", or one end of the interval of 95 %: \"earliest\" or \"latest\"",
    .standard = "expected"};

enum class Which : std::uint8_t { expected, earliest, latest };

Result<Which> which_in(const Argument& argument) {
  if (option_left_out(argument)) {
    return Which::expected;
  }
  const std::string word = to_text(argument.cells.front());
  if (word == "expected") {
    return Which::expected;
  }
  if (word == "earliest") {
    return Which::earliest;
  }
  if (word == "latest") {
    return Which::latest;
  }
  return refusal::not_a_word(which_parameter, argument.cells.front(), "expected, earliest, latest");
}

/// Visits with both a date and a depth, in the order of days.
Result<std::vector<DepthReading>> visits_in(const Argument& dates, const Argument& depths, Unit unit) {
  if (dates.cells.size() != depths.cells.size()) {
    return refusal::ranges_differ(dates_parameter, dates, depths_parameter, depths);
  }
  std::vector<DepthReading> visits;
  for (std::size_t i = 0; i < dates.cells.size(); ++i) {
    const auto day = day_in(dates_parameter, dates.cells[i]);
    if (!day) {
      return day.error();
    }
    const auto depth = number_in(depths_parameter, depths.cells[i], unit);
    if (!depth) {
      return depth.error();
    }
    if (day.value() && depth.value()) {
      visits.push_back({*day.value(), depth_by_stick(*depth.value())});
    }
  }
  std::ranges::stable_sort(visits, {}, &DepthReading::day);
  return visits;
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const auto which = which_in(arguments[3]);
  if (!which) {
    return which.error();
  }
  const auto read = visits_in(arguments[0], arguments[1], unit_or(arguments[2], Unit::inch));
  if (!read) {
    return read.error();
  }
  const std::vector<DepthReading>& visits = read.value();
  if (visits.empty()) {
    return Value{};
  }
  constexpr double level = 0.95;
  const auto found = drying(std::span(visits).subspan(last_high_water(visits)), level);
  if (!found) {
    return Problem{ProblemKind::not_enough, found.error().text};
  }
  const Crossing& dry = found.value().dry;
  const double last = visits.back().day;
  if (dry.x < last) {
    return Problem{ProblemKind::not_enough,
                   "The line would have the pool dry before the last visit, when it still held water."};
  }
  if (which.value() == Which::expected) {
    return number_value(std::round(dry.x));
  }
  if (which.value() == Which::earliest) {
    return number_value(std::round(std::max(dry.low.value_or(last), last)));
  }
  if (!dry.high) {
    return Problem{ProblemKind::not_enough, "The fall is not sure enough to say by when at the latest."};
  }
  return number_value(std::round(*dry.high));
}

} // namespace

FunctionSpec dry_date_function() {
  return {
      .name = "POOL.DRYDATE",
      .method = "dryDate",
      .category = "Date&Time",
      .summary = "Day on which a pool will be dry if it goes on falling as since its last high water",
      .parameters = {dates_parameter,
                     depths_parameter,
                     {.name = "unit",
                      .takes = Takes::unit,
                      .kind = Kind::depth,
                      .help = "Unit of depths typed without one",
                      .standard = "in"},
                     which_parameter},
      .blanks =
          "Visits without a date or a depth are left out; when all are, the result is blank. The result is "
          "the number of a day: give its cell a date format.",
      .errors =
          {{ProblemKind::bad_argument,
            "a date or a depth cannot be read or its cell shows an error, the ranges differ in size, or a "
            "unit or word is unknown"},
           {ProblemKind::not_enough,
            "there are fewer than three visits since the last high water, the pool does not fall or is "
            "dry, or the fall is not sure enough for a latest day"}},
      .examples = {{.cells = {{"A1", "2026-04-11"},
                              {"B1", "30"},
                              {"A2", "2026-04-18"},
                              {"B2", "27"},
                              {"A3", "2026-04-25"},
                              {"B3", "24"},
                              {"A4", "2026-05-02"},
                              {"B4", "21"}},
                    .formula = "POOL.DRYDATE(A1:A4;B1:B4)",
                    .result = "46193",
                    .shows = "3 in a week from 30 in: ten weeks after 11 April, 2026-06-20"},
                   {.cells = {{"A1", "2026-04-11"}, {"B1", "30"}, {"A2", "2026-04-18"}, {"B2", "27"}},
                    .formula = "POOL.DRYDATE(A1:A2;B1:B2)",
                    .result = "#N/A",
                    .shows = "two visits show no scatter"},
                   {.cells = {{"A1", ""}, {"B1", ""}},
                    .formula = "POOL.DRYDATE(A1:A2;B1:B2)",
                    .result = "",
                    .shows = "nothing typed yet"},
                   {.cells = {{"A1", "3/4/2026"}, {"B1", "30"}},
                    .formula = "POOL.DRYDATE(A1:A1;B1:B1)",
                    .result = "Err:502",
                    .shows = "a date that may be two"}},
      .see_also = {"POOL.SENSLOPE", "POOL.READ"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
