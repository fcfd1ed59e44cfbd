// POOL.DOUBTS
#include "check/check.hpp"
#include "function/rows.hpp"

namespace wetspell {

namespace {

Result<Value> evaluate(std::span<const Argument> arguments) {
  const auto season = season_of(arguments);
  if (!season) {
    return season.error();
  }
  const SeasonView view(*season.value());
  Value value(arguments[1].rows, 1);
  for (std::uint32_t i = 0; i < view.season.visits.size(); ++i) {
    value.cells[view.visit(i).row - 1] = Cell::of_text(doubts_in_words(view, i));
  }
  return value;
}

} // namespace

FunctionSpec doubts_function() {
  return {
      .name = "POOL.DOUBTS",
      .method = "doubts",
      .category = "Information",
      .summary = "What is doubtful about a visit, in words, from the visit alone",
      .parameters = {headings_parameter(),
                     {.name = "rows",
                      .takes = Takes::rows,
                      .kind = Kind::date,
                      .help =
                          "The row to look at, as wide as the headings; several rows give several answers"},
                     tables_parameter()},
      .blanks = "A blank row gives a blank, and so does a row about which there is no doubt.",
      .errors = rows_errors(),
      .examples = {{.cells = {{"A1", "Pool"},
                              {"B1", "Date"},
                              {"C1", "Length"},
                              {"D1", "Width"},
                              {"A2", "B07"},
                              {"B2", "2026-04-18"},
                              {"C2", "10"},
                              {"D2", "20"}},
                    .formula = "POOL.DOUBTS(A1:D1;A2:D2)",
                    .result =
                        "The width 20 ft is more than the length 10 ft, but the length is the longest line.",
                    .shows = "length and width changed places"},
                   {.cells = {{"A1", "Pool"},
                              {"B1", "Date"},
                              {"C1", "Length"},
                              {"D1", "Width"},
                              {"A2", "B07"},
                              {"B2", "2026-04-18"},
                              {"C2", "20"},
                              {"D2", "10"}},
                    .formula = "POOL.DOUBTS(A1:D1;A2:D2)",
                    .result = "",
                    .shows = "no doubt"}},
      .see_also = {"POOL.DERIVE", "POOL.WHY"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
