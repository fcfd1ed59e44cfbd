// The array function, per value it gives, against formulas that give the same columns in as many cells.
#include "bench/office/bench.hpp"
#include "bench/office/sheets.hpp"

#include "base/text.hpp"

#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <fmt/format.h>

#include <array>

namespace wetspell::bench {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

constexpr std::size_t rows = 10'000;
constexpr int runs = 5;

constexpr std::array<std::string_view, 8> headings{"Pool",          "Date",  "Temperature 1", "Temperature 2",
                                                   "Temperature 3", "Depth", "Length",        "Width"};

/// What POOL.DERIVE gives, as the office's own functions would have to work it out.
constexpr std::array<std::string_view, 9> built_in{
    "=AVERAGE(C2:E2)",
    "=MAX(C2:E2)-MIN(C2:E2)",
    "=IF(F2=\"\";\"\";F2)",
    "=LOOKUP(F2;{0;6;12;24;36;48};{\"a\";\"b\";\"c\";\"d\";\"e\";\"f\"})",
    "=IF(F2=\"\";\"\";ROUND(F2;0))",
    "=IF(G2=\"\";\"\";G2)",
    "=IF(H2=\"\";\"\";H2)",
    "=PI()/4*G2*H2",
    "=PI()*SQRT((G2^2+H2^2)/8)"};

Table visits() {
  Table table(Place{"Visits", 1, 0}, rows + 1, headings.size());
  for (std::size_t column = 0; column < headings.size(); ++column)
    table.at(0, column) = Cell::of_text(std::string(headings[column]));
  for (std::size_t row = 1; row <= rows; ++row) {
    const double by = static_cast<double>(row % 20);
    table.at(row, 0) = Cell::of_text(fmt::format("P{}", row % 100));
    table.at(row, 1) = Cell::of_date(46100 + static_cast<double>(row / 100));
    for (std::size_t column = 2; column < 5; ++column)
      table.at(row, column) = Cell::of_number(50 + by / 4 + static_cast<double>(column) / 2);
    table.at(row, 5) = Cell::of_number(10 + by);
    table.at(row, 6) = Cell::of_number(60 + by);
    table.at(row, 7) = Cell::of_number(30 + by);
  }
  return table;
}

} // namespace

void bench_array(driver::Office& office, const FigureFile& figures) {
  std::vector<Table> tables;
  tables.push_back(visits());
  const std::string last = std::to_string(rows + 1);
  constexpr double values = static_cast<double>(rows * built_in.size());

  const driver::Document ours = document_of(office, tables);
  Reference<css::sheet::XArrayFormulaRange>(ours.range("Visits.J2:R" + last), UNO_QUERY_THROW)
      ->setArrayFormula(addin::toOffice("=POOL.DERIVE(A1:H1;A2:H" + last + ")"));
  const double array = best_of(runs, [&] { ours.recalculate(); }) / values * 1e6;

  const driver::Document theirs = document_of(office, tables);
  for (std::size_t i = 0; i < built_in.size(); ++i) {
    const std::string column = column_letters(9 + i);
    fill_down(theirs, fmt::format("Visits.{0}2:{0}{1}", column, last), std::string(built_in[i]));
  }
  const double formulas = best_of(runs, [&] { theirs.recalculate(); }) / values * 1e6;

  fmt::print(
      "POOL.DERIVE over {} visits: {:.2f} us a value (first value {}); built-in formulas {:.2f} us a value\n",
      grouped(static_cast<double>(rows)), array, ours.read("Visits.J2").text, formulas);
  add(figures,
      {"POOL.DERIVE, per value it gives", "at most 3 x a built-in formula",
       fmt::format("{:.2f} x the formulas that give such columns", array / formulas), array / formulas <= 3});
}

} // namespace wetspell::bench
