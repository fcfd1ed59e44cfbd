// Gathering 150 filled handouts of eight visits each into an empty season, and once more with nothing new.
#include "base/text.hpp"
#include "bench/office/bench.hpp"
#include "driver/files.hpp"
#include "sheet/read_sheets.hpp"
#include "templates/handout.hpp"
#include "templates/workbook.hpp"

#include <com/sun/star/frame/XModel.hpp>
#include <fmt/format.h>

#include <fstream>
#include <map>

namespace wetspell::bench {

namespace {

namespace fs = std::filesystem;
using css::uno::Any;
using css::uno::Reference;
using driver::Document;

constexpr std::size_t people = 150, pools_each = 2, visits_each = 8;

std::string person_code(std::size_t person) {
  return fmt::format("V{:03}", person + 1);
}
std::string pool_code(std::size_t person, std::size_t visit) {
  return fmt::format("P{:03}", person * pools_each + visit % pools_each + 1);
}

std::string empty_season() {
  workbook::FilledTable pools{TableKind::pools, {Field::pool_code}, {}};
  workbook::FilledTable volunteers{TableKind::people, {Field::person_code, Field::person_name}, {}};
  for (std::size_t i = 0; i < people; ++i) {
    volunteers.rows.push_back(
        {Cell::of_text(person_code(i)), Cell::of_text(fmt::format("Volunteer {}", i + 1))});
    for (std::size_t pool = 0; pool < pools_each; ++pool)
      pools.rows.push_back({Cell::of_text(pool_code(i, pool))});
  }
  workbook::WorkbookContent content;
  content.settings = {{Setting::season_year, Cell::of_number(2026)}};
  content.tables = {pools, volunteers};
  return workbook::season_workbook(content);
}

Document opened(driver::Office& office, const fs::path& file, const std::string& bytes) {
  std::ofstream(file, std::ios::binary) << bytes;
  return Document::open(office, file);
}

/// The column letters of a handout's visits by their headings, units aside.
std::map<std::string, std::string> columns_of(const Document& handout, std::size_t row) {
  std::map<std::string, std::string> columns;
  for (std::size_t column = 0; column < 60; ++column) {
    const std::string letters = column_letters(column);
    const std::string heading = handout.read(fmt::format("Visits.{}{}", letters, row)).text;
    columns[heading.substr(0, heading.find(" ("))] = letters;
  }
  return columns;
}

void fill(const Document& handout, std::size_t person) {
  constexpr std::size_t headings = 3;
  const auto columns = columns_of(handout, headings);
  for (std::size_t visit = 0; visit < visits_each; ++visit) {
    const auto cell = [&](const char* heading) {
      return fmt::format("Visits.{}{}", columns.at(heading), headings + 1 + visit);
    };
    handout.setText(cell("Pool"), pool_code(person, visit));
    handout.type(cell("Date"), fmt::format("2026-04-{:02}", 1 + visit * 3));
    handout.setText(cell("Water"), "standing water");
    for (const char* heading : {"Temperature 1", "Temperature 2", "Temperature 3"})
      handout.setValue(cell(heading), 50.5);
    handout.setValue(cell("Depth"), 24 - static_cast<double>(visit));
    handout.setText(cell("Notes"), "frogs calling");
  }
}

} // namespace

void bench_gather(driver::Office& office, const FigureFile& figures) {
  const driver::TemporaryFolder work("wetspell-bench-"), folder("wetspell-bench-");
  const Document document = opened(office, work.path() / "season.fods", empty_season());
  const auto season = read_season(addin::tablesOf(document.model()), 46200);
  const double written = seconds([&] {
    for (std::size_t person = 0; person < people; ++person) {
      const Document handout = opened(office, work.path() / "handout.fods",
                                      workbook::handout_workbook(season.value(), person, {}));
      fill(handout, person);
      handout.store(folder.path() / (person_code(person) + (person % 2 == 0 ? ".ods" : ".xlsx")));
    }
  });
  const Any model(Reference<css::frame::XModel>(document.model(), css::uno::UNO_QUERY_THROW));
  const auto desk = office.service("org.wetspell.SeasonDesk");
  const Any from(driver::urlOf(folder.path()));
  const auto gather = [&] { office.call(desk, "gather", {model, from}); };
  const double first = seconds(gather);
  const double again = seconds(gather);
  constexpr double asked = 60;
  add(figures, {"gathering 150 handouts, 1,200 visits, the office started once", "under 60 s",
                fmt::format("{:.1f} s; again with nothing new {:.1f} s", first, again), first < asked});
  fmt::print("Gathering {} handouts of {} visits (half .ods, half .xlsx): {:.1f} s, again {:.1f} s; "
             "to write and fill them {:.1f} s.\n",
             people, visits_each, first, again, written);
}

} // namespace wetspell::bench
