// bench_office EXTENSION [FILE [PART...]]: the benchmarks inside Calc, figures to FILE.
// Parts: calls, array, check, summary, gather, opening; all without any.
#include "bench/office/bench.hpp"

#include <fmt/format.h>

#include <set>
#include <string_view>

int main(int count, char** words) {
  using namespace wetspell;
  if (count < 2) {
    fmt::print(stderr,
               "bench_office EXTENSION [FILE [calls] [array] [check] [summary] [gather] [opening]]\n");
    return 2;
  }
  const bench::FigureFile figures = count > 2 ? words[2] : "";
  const std::set<std::string_view> named(words + std::min(count, 3), words + count);
  const auto wanted = [&](std::string_view part) { return named.empty() || named.count(part) > 0; };
  try {
    {
      driver::OfficeOptions options;
      options.extensions = {words[1]};
      driver::Office office(options);
      if (wanted("calls"))
        bench::bench_calls(office, figures);
      if (wanted("array"))
        bench::bench_array(office, figures);
      if (wanted("check"))
        bench::bench_check(office, figures);
      if (wanted("summary"))
        bench::bench_summary(office, figures);
      if (wanted("gather"))
        bench::bench_gather(office, figures);
    }
    if (wanted("opening"))
      bench::bench_opening(words[1], figures);
  } catch (const std::exception& error) {
    fmt::print(stderr, "bench_office: {}\n", error.what());
    return 1;
  }
  return 0;
}
