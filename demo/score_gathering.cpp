// Prints how well a gathering did on the demo's handouts.
//   score_gathering PUT_IN.json TABLES.jsonl
// The second file holds the season before and after, a line each, as 'wetspell-office tables --own' writes
// them. Leaves 0 when all that was put in was found and nothing else was changed, 1 otherwise, 2 for bad
// files.
#include "demo/gather_score.hpp"

#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <fstream>
#include <sstream>

int main(int count, char** words) try {
  if (count != 3) {
    fmt::print(stderr, "score_gathering PUT_IN.json TABLES.jsonl\n");
    return 2;
  }
  std::ostringstream put_in;
  put_in << std::ifstream(words[1], std::ios::binary).rdbuf();
  std::ifstream tables(words[2], std::ios::binary);
  std::string before, after;
  std::getline(tables, before);
  std::getline(tables, after);
  const auto score = wetspell::demo::score_gathering(put_in.str(), before, after);
  if (!score) {
    fmt::print(stderr, "{}\n", score.error().text);
    return 2;
  }
  fmt::print("{}", wetspell::demo::in_words(score.value()));
  return score.value().whole() ? 0 : 1;
} catch (const std::exception& error) { // no memory, or nowhere to print to
  std::fputs(error.what(), stderr);
  return 2;
}
