// What a season takes in memory, from its cells to its findings: a program of its own, because what a process
// once held it keeps.
//   bench_memory VISITS [FILE]
#include "bench/big_season.hpp"
#include "bench/figures.hpp"

#include "check/check.hpp"

#include <fmt/format.h>
#include <sys/resource.h>

#include <cstdlib>

namespace {

/// The most this process ever held, in bytes.
double peak() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) * 1024;
}

} // namespace

int main(int count, char** words) {
  using namespace wetspell;
  using namespace wetspell::bench;
  const std::size_t visits = count > 1 ? std::strtoul(words[1], nullptr, 10) : 100'000;
  big_season(100, Writing::units); // libraries and tables of the engine, which every size needs
  const double before = peak();
  BigSeason cells = big_season(visits, Writing::units);
  const double typed = static_cast<double>(cells.typed_cells);
  const double sheets = peak() - before;
  const auto season = read_season(std::move(cells.tables), 46300);
  const double records = peak() - before - sheets;
  const CheckReport report = check(season.value());
  const double all = peak() - before;
  fmt::print("{} visits, {} typed cells, {} findings: {:.0f} bytes a typed cell in cells, {:.0f} in records, "
             "{:.0f} for the check\n",
             grouped(static_cast<double>(visits)), grouped(typed), report.findings.size(), sheets / typed,
             records / typed, (all - sheets - records) / typed);
  if (count > 2)
    add(words[2],
        {fmt::format("memory at its peak, {} visits", grouped(static_cast<double>(visits))),
         "under 200 bytes a typed cell", fmt::format("{:.0f} bytes", all / typed), all / typed < 200});
  return 0;
}
