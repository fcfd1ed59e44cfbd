// Prints how well a check did on the demo season.
//   score_check SPOILED.csv FINDINGS.json
// Leaves 0 when every spoiled cell was found and nothing was raised without cause, 1 otherwise, 2 for bad
// files.
#include "demo/score.hpp"

#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <fstream>
#include <sstream>

namespace {

std::string text_of(const char* path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return std::move(text).str();
}

} // namespace

int main(int count, char** words) try {
  if (count != 3) {
    fmt::print(stderr, "score_check SPOILED.csv FINDINGS.json\n");
    return 2;
  }
  const auto score = wetspell::demo::score(text_of(words[1]), text_of(words[2]));
  if (!score) {
    fmt::print(stderr, "{}\n", score.error().text);
    return 2;
  }
  fmt::print("{}", wetspell::demo::in_words(score.value()));
  return score.value().found == score.value().spoiled && score.value().false_alarms == 0 ? 0 : 1;
} catch (const std::exception& error) { // no memory, or nowhere to print to
  std::fputs(error.what(), stderr);
  return 2;
}
