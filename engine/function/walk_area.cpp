// POOL.WALKAREA
#include "function/argument.hpp"
#include "measure/walk.hpp"
#include "quantity/degrees.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

constexpr ParameterSpec latitudes_parameter{.name = "latitudes",
                                            .takes = Takes::readings,
                                            .kind = Kind::count,
                                            .help =
                                                "Cells with the points' degrees north, in the order walked"};
constexpr ParameterSpec longitudes_parameter{.name = "longitudes",
                                             .takes = Takes::readings,
                                             .kind = Kind::count,
                                             .help =
                                                 "As many cells with their degrees east; west is negative"};

Result<std::optional<double>> degrees_in(const ParameterSpec& parameter, const Cell& cell, Axis axis) {
  if (cell.empty()) {
    return std::optional<double>{};
  }
  if (cell.kind() == CellKind::error) {
    return refusal::error_in_cell(parameter, cell);
  }
  const auto degrees = cell.kind() == CellKind::date ? std::nullopt : read_degrees(to_text(cell), axis);
  if (!degrees) {
    return refusal::no_plain_number(parameter, cell);
  }
  return degrees;
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const Argument& north = arguments[0];
  const Argument& east = arguments[1];
  if (north.cells.size() != east.cells.size()) {
    return refusal::ranges_differ(latitudes_parameter, north, longitudes_parameter, east);
  }
  std::vector<Position> points;
  for (std::size_t i = 0; i < north.cells.size(); ++i) {
    const auto latitude = degrees_in(latitudes_parameter, north.cells[i], Axis::latitude);
    if (!latitude) {
      return latitude.error();
    }
    const auto longitude = degrees_in(longitudes_parameter, east.cells[i], Axis::longitude);
    if (!longitude) {
      return longitude.error();
    }
    if (latitude.value().has_value() != longitude.value().has_value()) {
      return Problem{ProblemKind::bad_argument,
                     fmt::format("point {} has only one of its two numbers.", i + 1)};
    }
    if (latitude.value()) {
      points.push_back({*latitude.value(), *longitude.value()});
    }
  }
  if (points.empty()) {
    return Value{};
  }
  const auto walk = walk_around(points);
  if (!walk) {
    return walk.error();
  }
  return number_value(from_si(walk.value().area.value, unit_or(arguments[2], Unit::square_foot)));
}

} // namespace

FunctionSpec walk_area_function() {
  return {
      .name = "POOL.WALKAREA",
      .method = "walkArea",
      .category = "Mathematical",
      .summary = "Area inside the edge of a pool that somebody walked with a receiver",
      .parameters = {latitudes_parameter,
                     longitudes_parameter,
                     {.name = "result unit",
                      .takes = Takes::unit,
                      .kind = Kind::area,
                      .help = "Unit in which the area is given",
                      .standard = "sq ft"}},
      .blanks = "Rows in which both cells are blank are passed over; when all are, the result is blank.",
      .errors =
          {{ProblemKind::bad_argument,
            "a cell is not degrees with a decimal point, or shows an error; a point has one number only; the "
            "ranges differ in size; the outline crosses itself; or the unit is unknown"},
           {ProblemKind::not_enough, "there are fewer than three different points"}},
      .examples = {{.cells = {{"A1", "44.50000"},
                              {"B1", "-71.20000"},
                              {"A2", "44.50000"},
                              {"B2", "-71.19975"},
                              {"A3", "44.50009"},
                              {"B3", "-71.19975"},
                              {"A4", "44.50009"},
                              {"B4", "-71.20000"}},
                    .formula = "POOL.WALKAREA(A1:A4;B1:B4;\"m2\")",
                    .result = "198.8",
                    .shows = "about 20 m by 10 m, in square metres"},
                   {.cells = {{"A1", ""}, {"B1", ""}},
                    .formula = "POOL.WALKAREA(A1:A2;B1:B2)",
                    .result = "",
                    .shows = "nothing typed yet"},
                   {.cells = {{"A1", "44.5"}, {"B1", "-71.2"}, {"A2", "44.6"}, {"B2", "-71.2"}},
                    .formula = "POOL.WALKAREA(A1:A2;B1:B2)",
                    .result = "#N/A",
                    .shows = "two points go round nothing"},
                   {.cells = {{"A1", "44.5"}, {"B1", "-71.2"}, {"A2", "44° 30'"}, {"B2", "-71.2"}},
                    .formula = "POOL.WALKAREA(A1:A2;B1:B2)",
                    .result = "Err:502",
                    .shows = "degrees and minutes are not read"}},
      .see_also = {"POOL.ELLIPSEAREA"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
