#include "commands/season_in_office.hpp"

#include "driver/files.hpp"
#include "season/settings.hpp"

#include <chrono>
#include <fstream>

namespace wetspell::host {

namespace {

Cell words(const char* text) {
  return Cell::of_text(text);
}
Cell number(double value) {
  return Cell::of_number(value);
}
Cell clock(int hours, int minutes) {
  return Cell::of_date((hours * 60 + minutes) / 1440.0);
}

} // namespace

double day(unsigned month, unsigned day) {
  using namespace std::chrono;
  return static_cast<double>(
      (sys_days{year{2026} / month / day} - sys_days{year{1899} / December / 30}).count());
}

TypedRow goodVisit(const std::string& pool, double date, const std::string& person) {
  return {{Field::visit_pool, Cell::of_text(pool)},
          {Field::visit_date, Cell::of_date(date)},
          {Field::visit_start, clock(9, 40)},
          {Field::visit_end, clock(10, 25)},
          {Field::visit_person, Cell::of_text(person)},
          {Field::visit_water, words("standing water")},
          {Field::visit_temperature_1, number(52.5)},
          {Field::visit_temperature_2, number(51.5)},
          {Field::visit_temperature_3, number(53)},
          {Field::visit_depth, number(25)},
          {Field::visit_depth_tool, words("stick")},
          {Field::visit_fill, number(80)},
          {Field::visit_length, number(62)},
          {Field::visit_width, number(31)},
          {Field::visit_size_tool, words("tape")}};
}

workbook::FilledTable filled(TableKind table, const std::vector<TypedRow>& rows) {
  workbook::FilledTable result{table, {}, {}};
  for (const FieldSpec& each : fields(table))
    if (each.role == Role::typed)
      result.fields.push_back(each.field);
  for (const TypedRow& row : rows) {
    std::vector<Cell>& line = result.rows.emplace_back();
    for (const Field field : result.fields) {
      const auto found = row.find(field);
      line.push_back(found == row.end() ? Cell{} : found->second);
    }
  }
  return result;
}

workbook::WorkbookContent smallSeason(const std::vector<TypedRow>& more) {
  std::vector<TypedRow> pools, people, visits, life;
  for (const char* code : {"B01", "B07", "B12"})
    pools.push_back({{Field::pool_code, words(code)},
                     {Field::pool_longest, number(70)},
                     {Field::pool_widest, number(40)},
                     {Field::pool_deepest, number(40)}});
  for (const char* code : {"RW", "KLUG"})
    people.push_back({{Field::person_code, words(code)}});

  visits.push_back(goodVisit("B01", day(4, 18), "RW"));
  TypedRow swapped = goodVisit("B07", day(4, 19), "RW"); // wider-than-long
  swapped[Field::visit_length] = number(31);
  swapped[Field::visit_width] = number(62);
  visits.push_back(swapped);
  visits.push_back(goodVisit("B12", day(4, 20) - 365, "KLUG")); // wrong-year
  TypedRow clocks = goodVisit("B01", day(5, 9), "KLUG");        // end-before-start
  clocks[Field::visit_start] = clock(10, 25);
  clocks[Field::visit_end] = clock(9, 40);
  visits.push_back(clocks);
  TypedRow slipped = goodVisit("B07", day(5, 10), "RW"); // temperature-decimal-slipped
  slipped[Field::visit_temperature_2] = number(515);
  visits.push_back(slipped);
  visits.push_back(goodVisit("B12", day(5, 11), "KLUUG")); // unknown-person
  visits.insert(visits.end(), more.begin(), more.end());

  life.push_back({{Field::life_pool, words("B01")}, // both-over-either
                  {Field::life_date, Cell::of_date(day(4, 18))},
                  {Field::life_person, words("RW")},
                  {Field::life_second_person, words("KLUG")},
                  {Field::life_species, words("wood frog")},
                  {Field::life_seen_as, words("egg masses")},
                  {Field::life_by_first, number(10)},
                  {Field::life_by_second, number(8)},
                  {Field::life_by_both, number(9)}});

  workbook::WorkbookContent content;
  content.settings = {{Setting::season_year, number(2026)},
                      {Setting::first_day, Cell::of_date(day(3, 15))},
                      {Setting::last_day, Cell::of_date(day(8, 31))},
                      {Setting::today, Cell::of_date(day(6, 30))}};
  content.tables = {filled(TableKind::pools, pools), filled(TableKind::people, people),
                    filled(TableKind::visits, visits), filled(TableKind::life, life)};
  return content;
}

driver::Document opened(const workbook::WorkbookContent& content, driver::Office& in,
                        const driver::OpenOptions& options) {
  const driver::TemporaryFolder folder("wetspell-test-");
  const auto file = folder.path() / "season.fods";
  std::ofstream(file, std::ios::binary) << workbook::season_workbook(content);
  return driver::Document::open(in, file, options);
}

void typeForeignSeason(const driver::Document& document) {
  const std::vector<std::vector<std::string>> rows{{"Site", "Visit date", "Length (ft)", "Width (ft)"},
                                                   {"Long Marsh", "2026-04-18", "31", "62"}};
  for (std::size_t r = 0; r < rows.size(); ++r)
    for (std::size_t c = 0; c < rows[r].size(); ++c)
      document.type(column_letters(c) + std::to_string(r + 1), rows[r][c]);
}

} // namespace wetspell::host
