// POOL.TWOCOUNTS
#include "estimate/two_counts.hpp"
#include "function/argument.hpp"

#include <array>
#include <cmath>

namespace wetspell {

namespace {

constexpr double level = 0.95;

constexpr ParameterSpec first_parameter{
    .name = "first", .takes = Takes::reading, .kind = Kind::count, .help = "The first person's count"};
constexpr ParameterSpec second_parameter{.name = "second",
                                         .takes = Takes::reading,
                                         .kind = Kind::count,
                                         .help =
                                             "The second person's count, made without help from the first"};
constexpr ParameterSpec both_parameter{
    .name = "both",
    .takes = Takes::reading,
    .kind = Kind::count,
    .help = "How many of these both had counted, when the two counts were matched on the spot"};
constexpr std::string_view words = "number, low, high, error, seen, first finds, second finds";
constexpr ParameterSpec give_parameter{.name = "give",
                                       .takes = Takes::word,
                                       .help = "\"number\", its \"low\" or \"high\" end, its \"error\"; "
                                               "\"seen\"; \"first finds\" or \"second finds\"",
                                       .standard = "number"};

Problem nothing_in_common() {
  return {ProblemKind::not_enough, "nothing was seen by both, so there is no upper end."};
}

Result<Value> share(const std::optional<FoundOfOther>& found) {
  if (!found) {
    return Problem{ProblemKind::not_enough, "the other person saw none, so nothing can be said of finding."};
  }
  return number_value(found->share);
}

Result<Value> given(const TwoCounts& counts, double both, const Cell& word) {
  const std::string_view what = word.text();
  if (what == "seen") {
    return number_value(counts.seen);
  }
  if (what == "first finds") {
    return share(counts.first_finds);
  }
  if (what == "second finds") {
    return share(counts.second_finds);
  }
  if (what == "low") {
    return number_value(counts.interval.low);
  }
  if (what != "high" && what != "number" && what != "error") {
    return refusal::not_a_word(give_parameter, word, words);
  }
  if (both == 0) {
    return nothing_in_common();
  }
  return number_value(what == "high"    ? counts.interval.high
                      : what == "error" ? counts.error
                                        : counts.estimate);
}

Result<Value> evaluate(std::span<const Argument> arguments) {
  std::array<double, 3> counts{};
  const std::array parameters{first_parameter, second_parameter, both_parameter};
  bool blank = false;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    const auto count = number_in(parameters.at(i), arguments[i], Unit::none);
    if (!count) {
      return count.error();
    }
    blank = blank || !count.value();
    counts.at(i) = count.value() ? count.value()->si : 0;
  }
  if (blank) {
    return Value{};
  }
  const auto found = two_counts(counts[0], counts[1], counts[2], level);
  if (!found) {
    return found.error();
  }
  const Cell word = option_left_out(arguments[3]) ? Cell::of_text("number") : arguments[3].cells.front();
  return given(found.value(), counts[2], word);
}

} // namespace

FunctionSpec two_counts_function() {
  return {
      .name = "POOL.TWOCOUNTS",
      .method = "twoCounts",
      .category = "Statistical",
      .summary = "How many there were, from two people's counts and what both of them saw",
      .parameters = {first_parameter, second_parameter, both_parameter, give_parameter},
      .blanks = "A blank count gives a blank: without the number that both saw, two counts give no estimate.",
      .errors =
          {{ProblemKind::bad_argument,
            "a count cannot be read as one whole number, both is more than first or second, or the word "
            "is unknown"},
           {ProblemKind::not_enough,
            "nothing was seen by both, so that the number has no estimate; or the other person saw none, "
            "so that nothing is known of finding"}},
      .examples = {{.cells = {{"A1", "54"}, {"B1", "50"}, {"C1", "44"}},
                    .formula = "POOL.TWOCOUNTS(A1;B1;C1)",
                    .result = "61.3333",
                    .shows = "60 were seen by one or both, and one or two by neither"},
                   {.cells = {{"A1", "54"}, {"B1", "50"}, {"C1", "44"}},
                    .formula = "POOL.TWOCOUNTS(A1;B1;C1;\"high\")",
                    .result = "64",
                    .shows = "the upper end of the 95 per cent interval"},
                   {.cells = {{"A1", "54"}, {"B1", "50"}, {"C1", "44"}},
                    .formula = "POOL.TWOCOUNTS(A1;B1;C1;\"first finds\")",
                    .result = "0.88",
                    .shows = "the share of the second person's 50 that the first saw too"},
                   {.cells = {{"A1", "54"}, {"B1", "50"}, {"C1", ""}},
                    .formula = "POOL.TWOCOUNTS(A1;B1;C1)",
                    .result = "",
                    .shows = "the counts were not matched"},
                   {.cells = {{"A1", "8"}, {"B1", "10"}, {"C1", "0"}},
                    .formula = "POOL.TWOCOUNTS(A1;B1;C1)",
                    .result = "#N/A",
                    .shows = "nothing was seen by both"}},
      .see_also = {"POOL.SHAREINTERVAL"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
