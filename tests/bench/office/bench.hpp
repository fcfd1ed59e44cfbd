// The benchmarks inside Calc: each prints what it measured and adds its figures.
#pragma once

#include "bench/figures.hpp"
#include "driver/document.hpp"
#include "table/table.hpp"

#include <algorithm>
#include <chrono>
#include <filesystem>

namespace wetspell::bench {

/// Where figures go; an empty path: nowhere.
using FigureFile = std::filesystem::path;

/// Checking 100,000 visits, against reading their cells and against a macro on the same rows.
void bench_check(driver::Office& office, const FigureFile& figures);
/// Summarising 10,000 visits to 1,000 pools, against reading their cells.
void bench_summary(driver::Office& office, const FigureFile& figures);
/// Gathering 150 handouts.
void bench_gather(driver::Office& office, const FigureFile& figures);
/// One call in a cell, against the office's own add-in functions; the array function, against formulas.
void bench_calls(driver::Office& office, const FigureFile& figures);
void bench_array(driver::Office& office, const FigureFile& figures);
/// Opening the template in an office with the extension, against an empty spreadsheet in one without.
void bench_opening(const std::filesystem::path& extension, const FigureFile& figures);

/// Seconds that the work takes.
template <class Work> double seconds(Work work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

/// How long it takes to read all cells: with headings of no table, to know that there is none.
double reading_alone(const driver::Document& document, const Table& typed, int runs);

/// The least of some runs: whatever else the machine does only makes them longer.
template <class Work> double best_of(int runs, Work work) {
  double best = seconds(work);
  for (int i = 1; i < runs; ++i)
    best = std::min(best, seconds(work));
  return best;
}

} // namespace wetspell::bench
