// bench_office EXTENSION [FILE]: the benchmarks inside Calc, figures to FILE.
#include "bench/office/bench.hpp"

#include <fmt/format.h>

int main(int count, char** words) {
  using namespace wetspell;
  if (count < 2) {
    fmt::print(stderr, "bench_office EXTENSION [FILE]\n");
    return 2;
  }
  const bench::FigureFile figures = count > 2 ? words[2] : "";
  try {
    {
      driver::OfficeOptions options;
      options.extensions = {words[1]};
      driver::Office office(options);
      bench::bench_calls(office, figures);
      bench::bench_array(office, figures);
      bench::bench_check(office, figures);
    }
    bench::bench_opening(words[1], figures);
  } catch (const std::exception& error) {
    fmt::print(stderr, "bench_office: {}\n", error.what());
    return 1;
  }
  return 0;
}
