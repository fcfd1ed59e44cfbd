// What one call costs in a cell: all functions take their turns in the same sheet, so that whatever else the
// machine does falls on all alike.
#include "bench/office/bench.hpp"
#include "bench/office/sheets.hpp"

#include <fmt/format.h>

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::bench {

namespace {

constexpr int rows = 20'000;
constexpr int rounds = 5;

struct Formula {
  std::string_view text;
  bool ours;
};

constexpr Formula formulas[] = {
    {"=QUOTIENT(A1;B1)", false},        {"=DELTA(A1;B1)", false},
    {"=MULTINOMIAL(A1;B1)", false},     {"=POOL.DEPTHCLASS(A1)", true},
    {"=POOL.FILLCLASS(A1)", true},      {"=POOL.MEANOFTHREE(A1:C1)", true},
    {"=POOL.SPREAD(A1:C1)", true},      {"=POOL.ELLIPSEAREA(A1;B1)", true},
    {"=POOL.ELLIPSEEDGE(A1;B1)", true}, {"=POOL.READ(A1;\"depth\")", true},
};

} // namespace

void bench_calls(driver::Office& office, const FigureFile& figures) {
  const driver::Document document = driver::Document::create(office);
  document.setValue("A1", 12);
  document.setValue("B1", 7);
  document.setValue("C1", 9);
  const std::string last = std::to_string(rows);
  for (const char* column : {"A", "B", "C"})
    fill_down(document, fmt::format("{0}1:{0}{1}", column, last),
              document.read(std::string(column) + "1").formula);

  std::map<std::string_view, double> best;
  for (int round = 0; round < rounds; ++round)
    for (const Formula& formula : formulas) {
      fill_down(document, "D1:D" + last, std::string(formula.text));
      const double cost = seconds([&] { document.recalculate(); }) / rows * 1e6;
      const auto [place, fresh] = best.try_emplace(formula.text, cost);
      place->second = std::min(place->second, cost);
    }

  std::string_view theirs = formulas[0].text;
  for (const Formula& formula : formulas)
    if (!formula.ours && best.at(formula.text) > best.at(theirs))
      theirs = formula.text;
  double dearest = 0;
  for (const Formula& formula : formulas) {
    const double ratio = best.at(formula.text) / best.at(theirs);
    fmt::print("{:<28} {:6.2f} us a call, {:.2f} x {}\n", formula.text, best.at(formula.text), ratio, theirs);
    if (formula.ours) {
      add(figures, {fmt::format("a call of {}", formula.text.substr(1)), "at most 1.2 x the office's dearest",
                    fmt::format("{:.2f} x {}", ratio, theirs.substr(1)), ratio <= 1.2});
      dearest = std::max(dearest, ratio);
    }
  }
  fmt::print("The dearest of ours: {:.2f}\n", dearest);
}

} // namespace wetspell::bench
