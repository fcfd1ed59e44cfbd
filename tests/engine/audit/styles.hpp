// Forty-odd layouts of our own invention.
#pragma once

#include "engine/audit/write_sheets.hpp"

namespace wetspell::testing {

using F = Field;
using Columns = std::vector<std::pair<Field, std::string>>;

inline const Columns usual{{F::visit_pool, "Pool"},
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
inline const Columns other_order{{F::visit_notes, "Comments"},   {F::visit_depth, "Max depth"},
                                 {F::visit_width, "Pool width"}, {F::visit_length, "Pool length"},
                                 {F::visit_date, "Survey date"}, {F::visit_temperature_mean, "Water temp"},
                                 {F::visit_person, "Volunteer"}, {F::visit_pool, "Site ID"}};
inline const Columns shortened{{F::visit_pool, "Site no."},    {F::visit_date, "Dt"},
                               {F::visit_person, "Obs"},       {F::visit_temperature_1, "T1"},
                               {F::visit_temperature_2, "T2"}, {F::visit_temperature_3, "T3"},
                               {F::visit_depth, "Dep"},        {F::visit_length, "Len"},
                               {F::visit_width, "Wid"},        {F::visit_fill, "Pct full"}};
inline const Columns misspelt{
    {F::visit_pool, "Pond nummber"}, {F::visit_date, "Daate"},
    {F::visit_person, "Obsever"},    {F::visit_temperature_mean, "Water temprature"},
    {F::visit_depth, "Dpeth"},       {F::visit_length, "Lenght"},
    {F::visit_width, "Widht"},       {F::visit_notes, "Coments"}};
inline const Columns run_together{{F::visit_pool, "PoolID"},
                                  {F::visit_date, "VisitDate"},
                                  {F::visit_person, "observer_name"},
                                  {F::visit_temperature_1, "WaterTemp1"},
                                  {F::visit_temperature_2, "WaterTemp2"},
                                  {F::visit_temperature_3, "WaterTemp3"},
                                  {F::visit_depth, "max_depth"},
                                  {F::visit_length, "poolLength"},
                                  {F::visit_width, "poolWidth"}};
inline const Columns in_capitals{{F::visit_pool, "SITE"},    {F::visit_date, "SURV_DT"},
                                 {F::visit_person, "CREW"},  {F::visit_temperature_mean, "WTEMP"},
                                 {F::visit_depth, "MAXDEP"}, {F::visit_length, "LEN"},
                                 {F::visit_width, "WID"}};
inline const Columns unit_inside{{F::visit_pool, "Pool"},
                                 {F::visit_date, "Date"},
                                 {F::visit_temperature_1, "Temp_F_1"},
                                 {F::visit_temperature_2, "Temp_F_2"},
                                 {F::visit_temperature_3, "Temp_F_3"},
                                 {F::visit_depth, "Depth_in"},
                                 {F::visit_length, "Length_ft"},
                                 {F::visit_width, "Width_ft"}};
inline const Columns three_temps{{F::visit_pool, "Pond"},          {F::visit_date, "Date of visit"},
                                 {F::visit_temperature_1, "Temp"}, {F::visit_temperature_2, "Temp"},
                                 {F::visit_temperature_3, "Temp"}, {F::visit_depth, "Water depth"},
                                 {F::visit_notes, "Remarks"}};
inline const Columns grouped{
    {F::visit_pool, "Pool"},       {F::visit_date, "Date"},       {F::visit_temperature_1, "1"},
    {F::visit_temperature_2, "2"}, {F::visit_temperature_3, "3"}, {F::visit_length, "Length"},
    {F::visit_width, "Width"},     {F::visit_depth, "Depth"},     {F::visit_notes, "Notes"}};
inline const std::map<Field, std::string> groups{{F::visit_temperature_1, "Water temperature"},
                                                 {F::visit_length, "Size of the water"}};

inline const Columns depths{
    {F::visit_pool, "Pool"}, {F::visit_date, "Date"}, {F::visit_depth, "Water depth"}};
inline const Columns warmths{
    {F::visit_pool, "Site"}, {F::visit_date, "Date"}, {F::visit_temperature_mean, "Water temp"}};

inline Columns without(Columns columns, Field field) {
  std::erase_if(columns, [&](const auto& column) { return column.first == field; });
  return columns;
}

inline Style make(
    std::string name, const Columns& columns, void (*change)(Style&) = [](Style&) {}) {
  Style style;
  style.name = std::move(name);
  style.columns = columns;
  change(style);
  return style;
}

inline Style cells(
    std::string name, const Columns& columns, void (*change)(Style&) = [](Style&) {}) {
  Style style = make(std::move(name), columns, change);
  style.layout = Layout::cell_a_visit;
  return style;
}

inline std::vector<Style> all_styles() {
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
      make("foreign_columns_that_look_alike", in_capitals,
           [](Style& s) {
             s.units = UnitsAt::behind;
             s.dates = Dates::serials;
             s.foreign = {"ATEMP", "COND", "t_a"};
           }),
      make("units_before_numbers", unit_inside,
           [](Style& s) {
             s.units = UnitsAt::nowhere;
             s.metric = false;
           }),
      make("ditto_marks_of_commas", usual,
           [](Style& s) {
             s.ditto = true;
             s.ditto_mark = ",,";
           }),
      make("lines_name_days", without(usual, F::visit_date),
           [](Style& s) {
             s.days_as_sections = true;
             s.dates = Dates::month_first;
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
      make("a_column_a_visit_pool_after_pool", without(usual, F::visit_pool),
           [](Style& s) {
             s.layout = Layout::column_a_visit;
             s.pools_as_sections = true;
           }),
      make("a_column_a_visit_pool_after_pool_us", without(other_order, F::visit_pool),
           [](Style& s) {
             s.layout = Layout::column_a_visit;
             s.pools_as_sections = true;
             s.dividers = true;
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
      cells("a_cell_a_visit", depths),
      cells("a_cell_a_visit_us", warmths,
            [](Style& s) {
              s.metric = false;
              s.dates = Dates::month_first;
            }),
      cells("a_cell_a_visit_named_by_title", depths,
            [](Style& s) {
              s.named = Named::title;
              s.dates = Dates::without_year;
              s.units = UnitsAt::comma;
            }),
      cells("a_cell_a_visit_named_by_sheet", depths,
            [](Style& s) {
              s.named = Named::sheet;
              s.dates = Dates::serials;
              s.units = UnitsAt::behind;
              s.titles = {"Survey of the north woods"};
            }),
      cells("a_cell_a_visit_units_in_cells", depths,
            [](Style& s) {
              s.named = Named::title;
              s.units = UnitsAt::cells;
              s.dates = Dates::two_digit_years;
            }),
      cells("a_cell_a_visit_units_nowhere", warmths,
            [](Style& s) {
              s.named = Named::title;
              s.units = UnitsAt::nowhere;
              s.dates = Dates::day_first;
            }),
      cells("a_cell_a_visit_sums_and_gaps", depths,
            [](Style& s) {
              s.sums = s.dividers = s.footnote = true;
              s.foreign = {"Mean", "Canopy code"};
              s.shift = 2;
            }),
      cells("a_cell_a_visit_headings_repeated", depths,
            [](Style& s) {
              s.repeated_headings = true;
              s.named = Named::sheet;
            }),
      cells("a_cell_a_visit_notes_in_numbers", depths, [](Style& s) { s.notes_in_numbers = true; }),
      cells("days_down", depths, [](Style& s) { s.days_down = true; }),
      cells("days_down_us", warmths,
            [](Style& s) {
              s.days_down = true;
              s.metric = false;
              s.named = Named::title;
              s.dates = Dates::month_words;
            }),
      cells("days_down_sums_and_gaps", depths,
            [](Style& s) {
              s.days_down = true;
              s.sums = s.dividers = true;
              s.foreign = {"Mean"};
              s.shift = 1;
              s.dates = Dates::iso;
              s.named = Named::sheet;
            }),
  };
}

} // namespace wetspell::testing
