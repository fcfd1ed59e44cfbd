// From starting the office to a document that is there: an empty spreadsheet in an office as it comes, the
// template in an office with the extension.
#include "bench/office/bench.hpp"

#include "driver/files.hpp"
#include "templates/workbook.hpp"

#include <fmt/format.h>

#include <fstream>

namespace wetspell::bench {

namespace {

constexpr int runs = 3;

} // namespace

void bench_opening(const std::filesystem::path& extension, const FigureFile& figures) {
  driver::Office plain;
  const double empty = best_of(runs, [&] {
    plain.restart();
    driver::Document::create(plain);
  });

  driver::OfficeOptions options;
  options.extensions = {extension};
  driver::Office ours(options);
  const driver::TemporaryFolder folder("wetspell-bench-");
  const auto flat = folder.path() / "season.fods";
  const auto file = folder.path() / "season.ots";
  std::ofstream(flat, std::ios::binary) << workbook::season_workbook();
  driver::Document::open(ours, flat).store(file);
  const double with_template = best_of(runs, [&] {
    ours.restart();
    driver::Document::open(ours, file);
  });
  const double again = best_of(runs, [&] { driver::Document::open(ours, file); });

  fmt::print(
      "Start and empty spreadsheet {:.2f} s; start with the extension and template {:.2f} s; the template "
      "once more {:.2f} s\n",
      empty, with_template, again);
  const double beyond = with_template - empty;
  add(figures, {"opening the template", "under 3 s beyond the office's start",
                fmt::format("{:.2f} s beyond {:.2f} s; ratio {:.2f}", beyond, empty, with_template / empty),
                beyond < 3});
}

} // namespace wetspell::bench
