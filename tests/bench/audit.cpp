// The audit of a long CSV file by the engine alone: time, and memory at its peak. A
// program of its own, because what a process once held it keeps.
//   bench_audit plain|written ROWS [FILE [CSV]]
// written: readings bear their units, as in most old sheets. With FILE the figure is added to it; with CSV
// the file stays, so that other programs can read the same.
#include "bench/figures.hpp"

#include "audit/audit.hpp"
#include "exchange/csv.hpp"

#include <fmt/format.h>
#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <iterator>

namespace {

double peak_megabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

/// Processor time, the system's part included: what else the machine does plays no part.
double of_processors() {
  return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

double by_the_clock() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

/// Twenty columns: fourteen of ours under headings of other words, six that are not. The units stand in the
/// headings and the readings are plain numbers, or `written`: the units stand behind the readings, as people
/// write them.
std::string old_file(std::size_t rows, bool written) {
  std::string text =
      written
          ? "Site,Dt,Obs,Water,Wtr temp 1,Wtr temp 2,Wtr temp 3,Max depth,Pct full,Length,Width,Inlet,Outlet,"
            "Remarks,pH,Conductivity,Oxygen,Air temp,Wind,Crew code\n"
          : "Site,Dt,Obs,Water,Wtr temp 1 (C),Wtr temp 2 (C),Wtr temp 3 (C),Max depth (cm),Pct full,Length "
            "(m),"
            "Width (m),Inlet,Outlet,Remarks,pH,Conductivity,Oxygen,Air temp,Wind,Crew code\n";
  const std::string degrees = written ? " C" : "", deep = written ? " cm" : "", full = written ? " %" : "",
                    wide = written ? " m" : "";
  for (std::size_t row = 0; row < rows; ++row) {
    const std::size_t pool = row / 100;
    const std::size_t visit = row % 100;
    text += fmt::format("P{:05},2019-{:02}-{:02},RW{},standing "
                        "water,{:.1f}{},{:.1f}{},{:.1f}{},{}{},{}{},{}{},{}{},none,none,,"
                        "{:.1f},{},{:.1f},{:.1f},{},{}\n",
                        pool, 3 + visit / 25, 1 + visit % 25, pool / 5, 6 + 0.1 * static_cast<double>(visit),
                        degrees, 6.2 + 0.1 * static_cast<double>(visit), degrees,
                        6.4 + 0.1 * static_cast<double>(visit), degrees, 100 - visit / 2, deep,
                        95 - visit / 2, full, 30 - visit / 10, wide, 15 - visit / 20, wide, 6.1, 40 + visit,
                        8.5, 12.5, visit % 9, visit % 4);
  }
  return text;
}

} // namespace

int main(int count, char** words) {
  using namespace wetspell;
  using namespace wetspell::bench;
  if (count < 3) {
    fmt::print(stderr, "bench_audit plain|written ROWS [FILE [CSV]]\n");
    return 2;
  }
  const std::string kind = words[1];
  const std::size_t rows = std::strtoul(words[2], nullptr, 10);
  const std::string file = count > 4 ? words[4] : "bench-audit.csv";
  std::ofstream(file, std::ios::binary) << old_file(rows, kind == "written");

  const double before = peak_megabytes();
  const double start = by_the_clock();
  const double start_of_processors = of_processors();
  std::ifstream in(file, std::ios::binary);
  in.seekg(0, std::ios::end);
  std::string bytes(static_cast<std::size_t>(in.tellg()), '\0');
  in.seekg(0);
  in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  auto table = table_from_any_text(std::move(bytes), "old");
  const double read = by_the_clock() - start;
  std::vector<Table> sheets;
  sheets.push_back(std::move(table).value());
  const Audit audited = audit(file, std::move(sheets), {nullptr, 46280});
  const double all = by_the_clock() - start;
  const double all_of_processors = of_processors() - start_of_processors;
  if (count <= 4)
    std::remove(file.c_str());
  const double most = std::max(peak_megabytes(), before);
  const std::string what =
      fmt::format("audit of a CSV of {} rows, 20 columns, {}", grouped(static_cast<double>(rows)), kind);
  fmt::print(
      "{}: read in {:.2f} s, audited in {:.2f} s in all (of processors {:.2f} s); {:.0f} MB at the peak; {} "
      "usable, {} after answers, {} not, {} findings\n",
      what, read, all, all_of_processors, most, audited.rows.usable, audited.rows.after_answers,
      audited.rows.unusable, audited.findings.size());
  if (count > 3)
    add(words[3], {what, "under 2 GB", fmt::format("{:.2f} s, {:.0f} MB", all, most), most < 2048});
  return 0;
}
