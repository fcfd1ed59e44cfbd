#include "quantity/around.hpp"

#include "quantity/vocabulary.hpp"

namespace wetspell {

namespace {

constexpr WordMeaning<Around> before_list[] = {
    {"about", Around::about},
    {"approx", Around::about},
    {"approximately", Around::about},
    {"appr", Around::about},
    {"around", Around::about},
    {"roughly", Around::about},
    {"circa", Around::about},
    {"ca", Around::about},
    {"est", Around::about},
    {"estimate", Around::about},
    {"estimated", Around::about},
    {"maybe", Around::about},
    {"perhaps", Around::about},
    {"probably", Around::about},
    {"nearly", Around::about},
    {"almost", Around::about},
    {"close to", Around::about},
    {"just about", Around::about},
    {"over", Around::over},
    {"above", Around::over},
    {"more than", Around::over},
    {"greater than", Around::over},
    {"deeper than", Around::over},
    {"longer than", Around::over},
    {"larger than", Around::over},
    {"warmer than", Around::over},
    {"at least", Around::over},
    {"not less than", Around::over},
    {"no less than", Around::over},
    {"well over", Around::over},
    {"just over", Around::over},
    {"exceeds", Around::over},
    {"exceeding", Around::over},
    {"under", Around::under},
    {"below", Around::under},
    {"less than", Around::under},
    {"fewer than", Around::under},
    {"smaller than", Around::under},
    {"shallower than", Around::under},
    {"shorter than", Around::under},
    {"colder than", Around::under},
    {"at most", Around::under},
    {"up to", Around::under},
    {"not more than", Around::under},
    {"no more than", Around::under},
    {"just under", Around::under},
    {"well under", Around::under},
    {"not over", Around::under},
    {"between", Around::between},
    {"from", Around::from},
    {"minus", Around::minus},
};
constexpr auto before_words = vocabulary(before_list);

constexpr WordMeaning<Around> after_list[] = {
    {"about", Around::about},        {"approx", Around::about},       {"approximately", Around::about},
    {"appr", Around::about},         {"roughly", Around::about},      {"est", Around::about},
    {"estimate", Around::about},     {"estimated", Around::about},    {"ish", Around::about},
    {"-ish", Around::about},         {"or so", Around::about},        {"or thereabouts", Around::about},
    {"guess", Around::about},        {"more or less", Around::about}, {"or more", Around::over},
    {"or over", Around::over},       {"or above", Around::over},      {"or deeper", Around::over},
    {"or longer", Around::over},     {"or larger", Around::over},     {"or greater", Around::over},
    {"and over", Around::over},      {"and up", Around::over},        {"and more", Around::over},
    {"and above", Around::over},     {"plus", Around::over},          {"or less", Around::under},
    {"or under", Around::under},     {"or below", Around::under},     {"or fewer", Around::under},
    {"or shallower", Around::under}, {"or shorter", Around::under},   {"and under", Around::under},
    {"and below", Around::under},    {"and less", Around::under},
};
constexpr auto after_words = vocabulary(after_list);

} // namespace

std::optional<Around> word_before(std::string_view words) {
  return before_words.find(words);
}

std::optional<Around> word_after(std::string_view words, Kind kind) {
  if (const auto around = after_words.find(words))
    return around;
  const bool again = (kind == Kind::depth && (words == "deep" || words == "of water")) ||
                     (kind == Kind::length && (words == "long" || words == "wide" || words == "across")) ||
                     (kind == Kind::percent && words == "full");
  return again ? std::optional(Around::nothing) : std::nullopt;
}

} // namespace wetspell
