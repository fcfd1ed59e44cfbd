// The summary over 10,000 visits to 1,000 pools: the sheets written for the first time, and again.
#include "bench/big_season.hpp"
#include "bench/office/bench.hpp"
#include "bench/office/sheets.hpp"

#include <com/sun/star/frame/XModel.hpp>
#include <fmt/format.h>

namespace wetspell::bench {

void bench_summary(driver::Office& office, const FigureFile& figures) {
  using css::uno::Any;
  constexpr std::size_t visits = 10'000, to_each_pool = 10;
  constexpr int runs = 3;
  const BigSeason season = big_season(visits, Writing::mixed, to_each_pool);
  const driver::Document document = document_of(office, season.tables);
  const Any model(css::uno::Reference<css::frame::XModel>(document.model(), css::uno::UNO_QUERY_THROW));
  const auto desk = office.service("org.wetspell.SeasonDesk");
  const auto summarise = [&] { office.call(desk, "summarise", {model}); };

  const double first = seconds(summarise);
  const double again = best_of(runs, summarise);
  const double unwritten = best_of(runs, [&] {
    office.call(desk, "summary", {model, Any(rtl::OUString("json")), Any(rtl::OUString("bench"))});
  });
  const double undo = seconds([&] { document.undo(); });
  const double reading = reading_alone(document, season.tables.front(), runs);

  const double beyond = std::max(first, again) - reading;
  add(figures,
      {"summary command in Calc beyond reading, 10,000 visits, 1,000 pools", "at most 3 s",
       fmt::format("{:.2f} s first, {:.2f} s again; reading alone {:.2f} s; without writing {:.2f} s; undo "
                   "{:.2f} s",
                   first - reading, again - reading, reading, unwritten - reading, undo),
       beyond <= 3});
  fmt::print(
      "Summary of {} visits to {} pools in Calc: {:.2f} s first, {:.2f} s again, {:.2f} s without writing, "
      "{:.2f} s to read the cells, {:.2f} s to undo.\n",
      visits, visits / to_each_pool, first, again, unwritten, reading, undo);
}

} // namespace wetspell::bench
