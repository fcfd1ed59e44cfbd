// The check command over 100,000 visits. What it takes beyond reading the cells is what remains when the time
// in which the same cells are read and then refused, because no headings are known, is taken off.
#include "bench/big_season.hpp"
#include "bench/office/bench.hpp"
#include "bench/office/macro.hpp"
#include "bench/office/sheets.hpp"

#include "base/text.hpp"

#include <com/sun/star/frame/XModel.hpp>
#include <fmt/format.h>

namespace wetspell::bench {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

constexpr std::size_t visits = 100'000;
constexpr int runs = 3;

/// Five conditions as a coordinator might write them, on columns that are read at once.
constexpr const char* five_conditions = R"(
Function Column(document As Object, heading As String, last As Long)
  Dim sheet As Object, i As Long
  sheet = document.Sheets.getByName("Visits")
  For i = 0 To 60
    If sheet.getCellByPosition(i, 0).String = heading Then
      Column = sheet.getCellRangeByPosition(i, 1, i, last).getDataArray()
      Exit Function
    End If
  Next i
End Function

Function Doubtful(document As Object, last As Long) As Long
  Dim dates, starts, ends, fills, probes, isolated, inlets, i As Long, found As Long
  dates = Column(document, "@date@", last)
  starts = Column(document, "@start@", last)
  ends = Column(document, "@end@", last)
  fills = Column(document, "@fill@", last)
  probes = Column(document, "@probe@", last)
  isolated = Column(document, "@isolated@", last)
  inlets = Column(document, "@inlet@", last)
  For i = 0 To UBound(dates)
    If dates(i)(0) < 46000 Then found = found + 1
    If ends(i)(0) < starts(i)(0) Then found = found + 1
    If fills(i)(0) > 100 Then found = found + 1
    If probes(i)(0) > 12 Then found = found + 1
    If isolated(i)(0) = "yes" And inlets(i)(0) = "flowing" Then found = found + 1
  Next i
  Doubtful = found
End Function
)";

std::string macro_source() {
  std::string source = five_conditions;
  for (const auto& [mark, field] : {std::pair{"@date@", Field::visit_date},
                                    {"@start@", Field::visit_start},
                                    {"@end@", Field::visit_end},
                                    {"@fill@", Field::visit_fill},
                                    {"@probe@", Field::visit_probe_depth},
                                    {"@isolated@", Field::visit_isolated},
                                    {"@inlet@", Field::visit_inlet}})
    source.replace(source.find(mark), std::string_view(mark).size(), spec(field).heading);
  return source;
}

/// Headings of no table, or the real ones again.
void head(const driver::Document& document, const Table& table, bool known) {
  Table headings(Place{table.sheet(), 1, 0}, 1, table.columns());
  for (std::size_t column = 0; column < table.columns(); ++column)
    headings.at(0, column) =
        known ? table.at(0, column) : Cell::of_text(fmt::format("unnamed {}", column + 1));
  fill(document, headings);
}

} // namespace

double reading_alone(const driver::Document& document, const Table& typed, int runs) {
  const Any model(Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW));
  const auto desk = document.office().service("org.wetspell.SeasonDesk");
  head(document, typed, false);
  const double reading = best_of(runs, [&] {
    try {
      document.office().call(desk, "report", {model, Any(rtl::OUString("csv")), Any(rtl::OUString("bench"))});
      throw std::logic_error("a season without headings was checked");
    } catch (const driver::Failure&) { // "No table of visits was found": all cells were read to know it
    }
  });
  head(document, typed, true);
  return reading;
}

void bench_check(driver::Office& office, const FigureFile& figures) {
  const BigSeason season = big_season(visits, Writing::mixed);
  const Table& typed = season.tables.front();
  const driver::Document document = document_of(office, season.tables);
  const Any model(Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW));
  const auto desk = office.service("org.wetspell.SeasonDesk");
  const Macro macro(office, macro_source());

  std::size_t length = 0;
  const double check = best_of(runs, [&] {
    rtl::OUString report;
    office.call(desk, "check", {model}) >>= report;
    length = static_cast<std::size_t>(report.getLength());
  });
  const double reading = reading_alone(document, typed, runs);
  sal_Int32 found = 0;
  const double by_macro = best_of(runs, [&] {
    macro.call("Doubtful", {model, Any(static_cast<sal_Int32>(visits))}) >>= found;
  });

  const double beyond = check - reading;
  const double row = 1e6 / static_cast<double>(visits);
  fmt::print("Check of {} visits in Calc: {:.2f} s, of which {:.2f} s to read the cells; report of {} "
             "characters. Macro with five conditions: {:.2f} s ({:.1f} us a row), {} rows doubtful.\n",
             grouped(static_cast<double>(visits)), check, reading, grouped(static_cast<double>(length)),
             by_macro, by_macro * row, found);
  add(figures, {"check command in Calc beyond reading, 100,000 visits", "at most 2 s",
                fmt::format("{:.2f} s; reading alone {:.2f} s", beyond, reading), beyond <= 2});
  add(figures, {"all rules against a macro with five conditions", "less a row than the macro",
                fmt::format("{:.1f} us a row, macro {:.1f} us; ratio {:.2f}", beyond * row, by_macro * row,
                            beyond / by_macro),
                beyond < by_macro});
}

} // namespace wetspell::bench
