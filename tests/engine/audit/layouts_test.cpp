// Thirty-odd layouts of our own invention, each with known truth: fields, units, rows and values must come
// out.
#include "engine/audit/write_sheets.hpp"

#include "quantity/print.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell::testing {
namespace {

using F = Field;
using Columns = std::vector<std::pair<Field, std::string>>;

const Columns usual{{F::visit_pool, "Pool"},
                    {F::visit_date, "Date"},
                    {F::visit_person, "Observer"},
                    {F::visit_water, "Water"},
                    {F::visit_temperature_1, "Temp 1"},
                    {F::visit_temperature_2, "Temp 2"},
                    {F::visit_temperature_3, "Temp 3"},
                    {F::visit_depth, "Depth"},
                    {F::visit_fill, "Full"},
                    {F::visit_length, "Length"},
                    {F::visit_width, "Width"},
                    {F::visit_notes, "Notes"}};
const Columns other_order{{F::visit_notes, "Comments"},   {F::visit_depth, "Max depth"},
                          {F::visit_width, "Pool width"}, {F::visit_length, "Pool length"},
                          {F::visit_date, "Survey date"}, {F::visit_temperature_mean, "Water temp"},
                          {F::visit_person, "Volunteer"}, {F::visit_pool, "Site ID"}};
const Columns shortened{{F::visit_pool, "Site no."},    {F::visit_date, "Dt"},
                        {F::visit_person, "Obs"},       {F::visit_temperature_1, "T1"},
                        {F::visit_temperature_2, "T2"}, {F::visit_temperature_3, "T3"},
                        {F::visit_depth, "Dep"},        {F::visit_length, "Len"},
                        {F::visit_width, "Wid"},        {F::visit_fill, "Pct full"}};
const Columns misspelt{{F::visit_pool, "Pond nummber"}, {F::visit_date, "Daate"},
                       {F::visit_person, "Obsever"},    {F::visit_temperature_mean, "Water temprature"},
                       {F::visit_depth, "Dpeth"},       {F::visit_length, "Lenght"},
                       {F::visit_width, "Widht"},       {F::visit_notes, "Coments"}};
const Columns run_together{{F::visit_pool, "PoolID"},
                           {F::visit_date, "VisitDate"},
                           {F::visit_person, "observer_name"},
                           {F::visit_temperature_1, "WaterTemp1"},
                           {F::visit_temperature_2, "WaterTemp2"},
                           {F::visit_temperature_3, "WaterTemp3"},
                           {F::visit_depth, "max_depth"},
                           {F::visit_length, "poolLength"},
                           {F::visit_width, "poolWidth"}};
const Columns three_temps{{F::visit_pool, "Pond"},          {F::visit_date, "Date of visit"},
                          {F::visit_temperature_1, "Temp"}, {F::visit_temperature_2, "Temp"},
                          {F::visit_temperature_3, "Temp"}, {F::visit_depth, "Water depth"},
                          {F::visit_notes, "Remarks"}};
const Columns grouped{
    {F::visit_pool, "Pool"},       {F::visit_date, "Date"},       {F::visit_temperature_1, "1"},
    {F::visit_temperature_2, "2"}, {F::visit_temperature_3, "3"}, {F::visit_length, "Length"},
    {F::visit_width, "Width"},     {F::visit_depth, "Depth"},     {F::visit_notes, "Notes"}};
const std::map<Field, std::string> groups{{F::visit_temperature_1, "Water temperature"},
                                          {F::visit_length, "Size of the water"}};

Columns without(Columns columns, Field field) {
  std::erase_if(columns, [&](const auto& column) { return column.first == field; });
  return columns;
}

Style make(
    std::string name, const Columns& columns, void (*change)(Style&) = [](Style&) {}) {
  Style style;
  style.name = std::move(name);
  style.columns = columns;
  change(style);
  return style;
}

std::vector<Style> all_styles() {
  return {
      make("plain", usual),
      make("us_units_in_brackets", usual, [](Style& s) { s.metric = false; }),
      make("units_after_comma", usual, [](Style& s) { s.units = UnitsAt::comma; }),
      make("units_run_on", shortened,
           [](Style& s) {
             s.units = UnitsAt::behind;
             s.dates = Dates::iso;
           }),
      make("units_row", usual, [](Style& s) { s.units = UnitsAt::row; }),
      make("units_row_us", shortened,
           [](Style& s) {
             s.units = UnitsAt::row;
             s.metric = false;
             s.dates = Dates::iso;
           }),
      make("units_in_cells", usual, [](Style& s) { s.units = UnitsAt::cells; }),
      make("units_in_cells_us", other_order,
           [](Style& s) {
             s.units = UnitsAt::cells;
             s.metric = false;
           }),
      make("units_nowhere", usual, [](Style& s) { s.units = UnitsAt::nowhere; }),
      make("units_nowhere_us", usual,
           [](Style& s) {
             s.units = UnitsAt::nowhere;
             s.metric = false;
           }),
      make("other_order", other_order),
      make("shortened", shortened),
      make("misspelt", misspelt),
      make("run_together", run_together, [](Style& s) { s.dates = Dates::iso; }),
      make("titles_above", usual,
           [](Style& s) {
             s.titles = {"Survey of the north woods", "Spring 2019", ""};
           }),
      make("pushed_right", usual,
           [](Style& s) {
             s.shift = 2;
             s.titles = {"", ""};
           }),
      make("day_first", usual, [](Style& s) { s.dates = Dates::day_first; }),
      make("month_first", usual, [](Style& s) { s.dates = Dates::month_first; }),
      make("two_digit_years", usual, [](Style& s) { s.dates = Dates::two_digit_years; }),
      make("month_words", other_order, [](Style& s) { s.dates = Dates::month_words; }),
      make("dates_with_dots", usual, [](Style& s) { s.dates = Dates::dots; }),
      make("date_numbers", usual, [](Style& s) { s.dates = Dates::serials; }),
      make("date_numbers_1904", usual,
           [](Style& s) {
             s.dates = Dates::serials_1904;
             s.titles = {"Season of 2019"};
           }),
      make("date_digits_joined", usual, [](Style& s) { s.dates = Dates::joined; }),
      make("date_in_three_columns", usual, [](Style& s) { s.dates = Dates::parts; }),
      make("dates_without_year", usual,
           [](Style& s) {
             s.dates = Dates::without_year;
             s.titles = {"Pools, 2019"};
           }),
      make("three_temperatures_alike", three_temps),
      make("three_temperatures_no_units", three_temps,
           [](Style& s) {
             s.units = UnitsAt::nowhere;
             s.metric = false;
           }),
      make("headings_in_two_rows", grouped, [](Style& s) { s.groups = groups; }),
      make("two_rows_and_units", grouped,
           [](Style& s) {
             s.groups = groups;
             s.units = UnitsAt::row;
             s.metric = false;
           }),
      make("sums_below", usual, [](Style& s) { s.sums = true; }),
      make("blank_rows_between_pools", usual,
           [](Style& s) {
             s.dividers = true;
             s.sums = true;
           }),
      make("headings_repeated", usual, [](Style& s) { s.repeated_headings = true; }),
      make("footnote", usual, [](Style& s) { s.footnote = true; }),
      make("pool_written_once", usual, [](Style& s) { s.pool_once = true; }),
      make("ditto_marks", usual, [](Style& s) { s.ditto = true; }),
      make("numbers_as_text", usual,
           [](Style& s) {
             s.numbers_as_text = true;
             s.dates = Dates::iso;
           }),
      make("notes_in_numbers", usual, [](Style& s) { s.notes_in_numbers = true; }),
      make("foreign_columns", usual,
           [](Style& s) {
             s.foreign = {"pH", "Conductivity", "Air temp", "Canopy code"};
           }),
      make("lines_name_pools", without(usual, F::visit_pool), [](Style& s) { s.pools_as_sections = true; }),
      make("a_sheet_a_pool", without(usual, F::visit_pool), [](Style& s) { s.sheet_a_pool = true; }),
      make("a_column_a_visit", usual, [](Style& s) { s.layout = Layout::column_a_visit; }),
      make("a_column_a_visit_us", other_order,
           [](Style& s) {
             s.layout = Layout::column_a_visit;
             s.metric = false;
             s.dates = Dates::month_words;
           }),
      make("a_row_a_reading", usual, [](Style& s) { s.layout = Layout::row_a_reading; }),
      make("a_row_a_reading_us", other_order,
           [](Style& s) {
             s.layout = Layout::row_a_reading;
             s.metric = false;
             s.titles = {"Readings 2019"};
             s.dates = Dates::two_digit_years;
           }),
  };
}

constexpr double today = 46280; // 2026-09-15

class Layouts : public ::testing::TestWithParam<Style> {};

TEST_P(Layouts, FieldsUnitsRowsAndValuesComeOut) {
  const Style& style = GetParam();
  const auto truth = true_visits(style.metric);
  const Audit audit = wetspell::audit("old.ods", written(style), {nullptr, today});
  ASSERT_TRUE(audit.season);
  const bool long_form = style.layout == Layout::row_a_reading;

  // Every column is mapped to its field, in its unit; columns that are not ours are left alone.
  std::size_t mapped = 0;
  for (const AuditedTable& table : audit.tables) {
    EXPECT_EQ(table.kind, TableKind::visits) << table.reason;
    EXPECT_EQ(table.layout, style.layout);
    for (const AuditedColumn& column : table.columns) {
      const Mapping& m = column.mapping;
      EXPECT_TRUE(m.open() || m.confidence >= sure_enough) << m.heading;
      EXPECT_FALSE(m.reason.empty());
      for (const std::string& foreign : style.foreign)
        EXPECT_TRUE(m.heading != foreign || m.open())
            << foreign << " was taken for " << meaning_word(m.field, m.part, m.count);
      mapped += !m.open();
    }
  }
  if (!long_form)
    for (const AuditedTable& table : audit.tables)
      for (const auto& [field, words] : style.columns) {
        if (field == Field::visit_date && style.dates == Dates::parts)
          continue;
        const auto at = std::find_if(
            table.columns.begin(), table.columns.end(),
            [field = field](const AuditedColumn& column) { return column.mapping.field == field; });
        ASSERT_NE(at, table.columns.end()) << words << " was left open";
        EXPECT_NE(at->mapping.heading.find(words), std::string::npos) << at->mapping.heading;
        EXPECT_EQ(at->mapping.unit, unit_of(field, style.metric)) << words << ": " << at->mapping.reason;
        EXPECT_FALSE(at->mapping.unit_open) << words;
      }
  EXPECT_GT(mapped, 0u);

  // Every visit is there once, with its readings.
  const Season& season = *audit.season;
  ASSERT_EQ(season.visits.size(), truth.size());
  EXPECT_EQ(audit.rows.all(), truth.size());
  EXPECT_EQ(audit.rows.unusable, 0u);
  EXPECT_EQ(audit.unread_count, style.notes_in_numbers ? 1u : 0u)
      << (audit.unread.empty() ? "" : audit.unread.front().text + ": " + audit.unread.front().reason);
  for (const TrueVisit& expected : truth) {
    const auto visit = std::find_if(season.visits.begin(), season.visits.end(), [&](const Visit& v) {
      return v.pool.known() && season.pools[static_cast<std::size_t>(v.pool.index)].code == expected.pool &&
             v.date.si == expected.date;
    });
    ASSERT_NE(visit, season.visits.end())
        << expected.pool << " on " << print_date(expected.date) << "; " << audit.tables.front().date_reason;
    for (const auto& [field, words] : style.columns) {
      const auto reading = expected.readings.find(field);
      if (reading == expected.readings.end())
        continue;
      const auto* member = std::get_if<Quantity Visit::*>(&spec(field).member);
      ASSERT_NE(member, nullptr);
      const Quantity& read = (*visit).**member;
      const bool spoiled = style.notes_in_numbers && field == Field::visit_depth && &expected == &truth[4];
      if (spoiled) {
        EXPECT_EQ(read.status, Status::bad);
        continue;
      }
      EXPECT_NEAR(read.si, to_si(reading->second, unit_of(field, style.metric)), 1e-9) << words;
    }
    EXPECT_TRUE(long_form || style.columns != usual || visit->water.is(Water::standing));
  }
  // What was passed over is told.
  if (style.sums) {
    const auto& passed = audit.tables.front().passed;
    EXPECT_TRUE(std::any_of(passed.begin(), passed.end(), [](const AuditedRow& row) {
      return row.use == RowUse::sums && row.text == "Total";
    }));
  }
}

TEST(LayoutList, AreThirtyOrMoreAndAllDifferent) {
  const auto styles = all_styles();
  EXPECT_GE(styles.size(), 30u);
  for (std::size_t i = 0; i < styles.size(); ++i)
    for (std::size_t j = i + 1; j < styles.size(); ++j) {
      const auto one = written(styles[i]);
      const auto other = written(styles[j]);
      bool same = one.size() == other.size() && one[0].rows() == other[0].rows() &&
                  one[0].columns() == other[0].columns();
      for (std::size_t row = 0; same && row < one[0].rows(); ++row)
        for (std::size_t column = 0; same && column < one[0].columns(); ++column)
          same = one[0].at(row, column) == other[0].at(row, column);
      EXPECT_FALSE(same) << styles[i].name << " and " << styles[j].name;
    }
}

INSTANTIATE_TEST_SUITE_P(Old, Layouts, ::testing::ValuesIn(all_styles()),
                         [](const auto& each) { return each.param.name; });

} // namespace
} // namespace wetspell::testing
