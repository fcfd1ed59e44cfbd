// POOL.DERIVE
#include "season/derive.hpp"
#include "function/rows.hpp"

#include <algorithm>

namespace wetspell {

namespace {

Result<Value> evaluate(std::span<const Argument> arguments) {
  const auto season = season_of(arguments);
  if (!season) {
    return season.error();
  }
  std::vector<Field> derived;
  for (const FieldSpec& field : fields(TableKind::visits)) {
    if (field.role == Role::derived) {
      derived.push_back(field.field);
    }
  }
  Value value(arguments[1].rows, derived.size());
  for (const Visit& visit : season.value()->visits) {
    const DerivedVisit one = wetspell::derive(*season.value(), visit);
    for (std::size_t column = 0; column < derived.size(); ++column) {
      value.cells[(visit.row - 1) * derived.size() + column] =
          derived_cell(*season.value(), one, derived[column]);
    }
  }
  return value;
}

} // namespace

FunctionSpec derive_function() {
  return {
      .name = "POOL.DERIVE",
      .method = "derive",
      .category = "Matrix",
      .summary =
          "All derived columns for rows of visits: mean, spread, depth, classes, length, width, area, edge",
      .parameters = {headings_parameter(), rows_parameter(), tables_parameter()},
      .blanks = "A blank row gives a row of blanks; what a reading is missing for stays blank.",
      .errors = rows_errors(),
      .examples = {{.cells = {{"A1", "Pool"},
                              {"B1", "Date"},
                              {"C1", "Temperature 1"},
                              {"D1", "Temperature 2"},
                              {"E1", "Temperature 3"},
                              {"F1", "Depth"},
                              {"G1", "Length"},
                              {"H1", "Width"},
                              {"A2", "B07"},
                              {"B2", "2026-04-18"},
                              {"C2", "62"},
                              {"D2", "63"},
                              {"E2", "64"},
                              {"F2", "25"},
                              {"G2", "20"},
                              {"H2", "10"}},
                    .formula = "POOL.DERIVE(A1:H1;A2:H3)",
                    .result = "63 | 2 | 25 | over 24 to 36 in |  | 20 | 10 | 157 | 48.44 // "
                              " |  |  |  |  |  |  |  | ",
                    .shows = "one visit and a blank row"}},
      .see_also = {"POOL.DOUBTS", "POOL.MEANOFTHREE", "POOL.DEPTHCLASS"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
