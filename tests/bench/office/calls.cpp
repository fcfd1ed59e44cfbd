// What one call costs in a cell: all functions take their turns in the same sheet, so that whatever else the
// machine does falls on all alike.
#include "bench/office/bench.hpp"
#include "bench/office/sheets.hpp"

#include <fmt/format.h>

#include <array>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::bench {

namespace {

constexpr std::size_t rows = 20'000;
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
  // The same three numbers in every row: some functions take longer for larger ones.
  Table numbers(Place{"Calls", 1, 0}, rows, 3);
  for (std::size_t row = 0; row < rows; ++row)
    for (std::size_t column = 0; column < 3; ++column)
      numbers.at(row, column) = Cell::of_number(std::array{12.0, 7.0, 9.0}[column]);
  std::vector<Table> tables;
  tables.push_back(std::move(numbers));
  const driver::Document document = document_of(office, tables);
  const std::string last = std::to_string(rows);

  std::map<std::string_view, double> best;
  for (int round = 0; round < rounds; ++round)
    for (const Formula& formula : formulas) {
      fill_down(document, "Calls.D1:D" + last, std::string(formula.text));
      const double cost = seconds([&] { document.recalculate(); }) / static_cast<double>(rows) * 1e6;
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
