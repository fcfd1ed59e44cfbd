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
  const SeasonView view(season.value());
  Value value(arguments[1].rows, 1);
  for (std::uint32_t i = 0; i < season.value().visits.size(); ++i) {
    value.cells[season.value().visits[i].row - 1] = Cell::of_text(doubts_in_words(view, i));
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
      .errors =
          {{ProblemKind::bad_argument,
            "headings and rows differ in width, there is more than one row of headings, a further table "
            "shows an error, or a word is not a unit system"},
           {ProblemKind::not_enough, "the headings are not those of a table of visits"}},
      .examples = {},
      .see_also = {"POOL.DERIVE", "POOL.WHY"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
