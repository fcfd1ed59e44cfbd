// POOL.SHAREINTERVAL
#include "estimate/proportion.hpp"
#include "function/argument.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

constexpr ParameterSpec some_parameter{.name = "some",
                                       .takes = Takes::reading,
                                       .kind = Kind::count,
                                       .help = "How many have it, such as pools with egg masses"};
constexpr ParameterSpec all_parameter{.name = "all",
                                      .takes = Takes::reading,
                                      .kind = Kind::count,
                                      .help = "How many there are in all, such as pools that were looked at"};
constexpr ParameterSpec end_parameter{
    .name = "end", .takes = Takes::word, .help = "\"low\" or \"high\"", .standard = "low"};
constexpr ParameterSpec way_parameter{.name = "way",
                                      .takes = Takes::word,
                                      .help =
                                          "\"Wilson\", or \"exact\" for the wider one of Clopper and Pearson",
                                      .standard = "Wilson"};

/// Which of two words an option is; the first when it is left out.
Result<bool> is_other(const ParameterSpec& parameter, const Argument& argument, std::string_view usual,
                      std::string_view other) {
  if (option_left_out(argument)) {
    return false;
  }
  const Cell& cell = argument.cells.front();
  if (cell.text() == usual || cell.text() == other) {
    return cell.text() == other;
  }
  return refusal::not_a_word(parameter, cell, fmt::format("{}, {}", usual, other));
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  const auto some = number_in(some_parameter, arguments[0], Unit::none);
  if (!some) {
    return some.error();
  }
  const auto all = number_in(all_parameter, arguments[1], Unit::none);
  if (!all) {
    return all.error();
  }
  const auto high = is_other(end_parameter, arguments[2], "low", "high");
  if (!high) {
    return high.error();
  }
  const auto exact = is_other(way_parameter, arguments[3], "Wilson", "exact");
  if (!exact) {
    return exact.error();
  }
  if (!some.value() || !all.value()) {
    return Value{};
  }
  const auto interval =
      (exact.value() ? exact_interval : wilson_interval)(some.value()->si, all.value()->si, 0.95);
  if (!interval) {
    return interval.error();
  }
  return number_value(high.value() ? interval.value().high : interval.value().low);
}

} // namespace

FunctionSpec share_interval_function() {
  return {
      .name = "POOL.SHAREINTERVAL",
      .method = "shareInterval",
      .category = "Statistical",
      .summary = "How low or high a share may be that was counted: so many of so many, at 95 per cent",
      .parameters = {some_parameter, all_parameter, end_parameter, way_parameter},
      .blanks = "A blank count gives a blank.",
      .errors = {{ProblemKind::bad_argument,
                  "a count cannot be read as one whole number, some are more than all, or a word is unknown"},
                 {ProblemKind::not_enough, "there are none in all"}},
      .examples = {{.cells = {{"A1", "4"}, {"B1", "20"}},
                    .formula = "POOL.SHAREINTERVAL(A1;B1)",
                    .result = "0.080658",
                    .shows = "4 of 20 pools: 8 per cent at the least"},
                   {.cells = {{"A1", "4"}, {"B1", "20"}},
                    .formula = "POOL.SHAREINTERVAL(A1;B1;\"high\")",
                    .result = "0.416017",
                    .shows = "42 per cent at the most"},
                   {.cells = {{"A1", "0"}, {"B1", "20"}},
                    .formula = "POOL.SHAREINTERVAL(A1;B1;\"high\";\"exact\")",
                    .result = "0.168433",
                    .shows = "none of 20 pools is not yet none of all"},
                   {.cells = {{"A1", "21"}, {"B1", "20"}},
                    .formula = "POOL.SHAREINTERVAL(A1;B1)",
                    .result = "Err:502",
                    .shows = "21 of 20 is no share"}},
      .see_also = {"POOL.TWOCOUNTS"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
