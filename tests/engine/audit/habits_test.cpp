// How people lay out a workbook: letters that count, groups over places, means of nothing, blanks that do not
// break.

#include "audit/audit_tables.hpp"
#include "audit/map_headings.hpp"
#include "engine/audit/audited.hpp"
#include "engine/season/sheets.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace wetspell {
namespace {

using testing::audited;
using testing::column;
using ::testing::ElementsAre;
using testing::sheet;

/// The fields of the columns after the first three of a sheet of three visits with four temperatures.
std::vector<std::string> fields_under(const std::string& headings, const std::string& above = {}) {
  const Audit a = audited(nullptr, sheet("Old", above + "Pool | Date | Depth (cm) | " + headings +
                                                    "\nB07 | 2019-04-03 | 40 | 46.1 | 46.3 | 46.2 | 45.9"
                                                    "\nB07 | 2019-04-17 | 42 | 48.1 | 48.3 | 48.2 | 45.9"
                                                    "\nB08 | 2019-04-17 | 30 | 49.1 | 49.3 | 49.2 | 45.9"));
  std::vector<std::string> fields;
  for (std::size_t i = 3; i < 7; ++i) {
    const Mapping& mapping = a.tables.at(0).columns.at(i).mapping;
    fields.emplace_back(mapping.field ? fmt::format("{} {}", spec(*mapping.field).heading,
                                                    mapping.unit == Unit::none ? "" : symbol(mapping.unit))
                                      : "");
  }
  return fields;
}

TEST(Habits, LettersThatCountAreReadingsAndNoUnit) {
  for (const char* headings :
       {"Temp A | Temp B | Temp C | Air temp", "Temp (a) | Temp (b) | Temp (c) | pH",
        "TempA | TempB | TempC | Air temp", "temp a (F) | temp b (F) | temp c (F) | pH"})
    EXPECT_THAT(fields_under(headings),
                ElementsAre("Temperature 1 °F", "Temperature 2 °F", "Temperature 3 °F", ""))
        << headings;
  const Audit celsius =
      audited(nullptr, sheet("Old", "Pool | Date | Temp F | Temp C\n"
                                    "B07 | 2019-04-03 | 46.4 | 8\nB08 | 2019-04-03 | 50 | 10"));
  EXPECT_EQ(column(celsius, "Temp C").unit, Unit::celsius) << "no run of letters";
}

TEST(Habits, APlaceBelowATemperatureIsNoWordOfItsOwn) {
  EXPECT_THAT(fields_under("N | mid | S | pH", " | | | Water temp (F) | | |\n"),
              ElementsAre("Temperature 1 °F", "Temperature 2 °F", "Temperature 3 °F", ""));
}

TEST(Habits, TheMeanOfNoReadingsIsBlank) {
  const Audit a =
      audited(nullptr, sheet("Old", "Pool | Date | Temp 1 (C) | Temp 2 (C) | Mean temp (C) | Depth (cm)\n"
                                    "B07 | 2019-04-03 | 6 | 7 | 6.5 | 40\n"
                                    "B07 | 2019-04-17 | | | #DIV/0! | 40\n"
                                    "B07 | 2019-04-28 | 6 | 7 | #REF! | #DIV/0!\n"));
  EXPECT_EQ(column(a, "Mean temp (C)").field, Field::visit_temperature_mean);
  std::vector<std::string> left;
  for (const Unread& each : a.unread)
    left.push_back(fmt::format("{}{}", column_letters(each.place.column), each.place.row));
  EXPECT_THAT(left, ElementsAre("E4", "F4"));
}

TEST(Habits, ABlankThatDoesNotBreakPartsWords) {
  const Audit a = audited(nullptr, sheet("Old", "Pool | Date | Depth of\u00a0water\u00a0(in)\n"
                                                "B07 | 2019-04-03 | 14\nB07 | 2019-04-17 | 15\n"));
  EXPECT_EQ(column(a, "Depth of\u00a0water\u00a0(in)").field, Field::visit_depth);
}

TEST(Habits, ANumberOfVisitsBelowIsNoVisit) {
  const Audit a = audited(nullptr, sheet("Old", "Pool | Date | Depth (in)\nN Meadow | 2019-04-03 | 14\n"
                                                "N Meadow | | 15\nn visits | | 2\n"));
  EXPECT_EQ(a.rows.usable + a.rows.unusable, 2U) << "a pool that begins with N is one";
  EXPECT_EQ(a.tables.at(0).passed.size(), 1U);
}

/// A column of the tidy visits, as it stands there.
std::vector<std::string> tidy_cells(const Audit& audit, std::string_view heading = "Depth") {
  std::vector<std::string> cells;
  for (const TidySheet& tidy : tidy_tables(audit))
    for (std::size_t column = 0; column < tidy.table.columns(); ++column)
      if (tidy.table.at(0, column) == Cell::of_text(std::string(heading)))
        for (std::size_t row = 1; row < tidy.table.rows(); ++row)
          cells.push_back(to_text(tidy.table.at(row, column)));
  return cells;
}

TEST(Habits, FeetAndTheInchesBeyondThemAreOneDepth) {
  constexpr const char* rows = "\nB07 | 2019-04-03 | 1 | 9 | 45\nB08 | 2019-04-03 | 2 | 3.5 | 44"
                               "\nB07 | 2019-04-17 | | 11 | 50\nB08 | 2019-04-17 | 2 | | 51"
                               "\nB07 | 2019-04-28 | dry | | \nB08 | 2019-04-28 | 1 ft | 4 in | 52";
  for (const char* headings :
       {"Pool | Date | Depth (ft) | Depth (in) | Temp (F)", "Pool | Date | Depth ft | in | Temp (F)",
        "Pool | Date | Depth | | Temp (F)\n | | ft | in |"}) {
    const Audit a = audited(nullptr, sheet("Old", std::string(headings) + rows));
    EXPECT_THAT(tidy_cells(a), ElementsAre("1 ft 9 in", "2 ft 3.5 in", "11 in", "2 ft", "0 ft", "1 ft 4 in"))
        << headings;
    EXPECT_EQ(a.unread_count, 0U) << headings;
    ASSERT_TRUE(a.season) << headings;
    EXPECT_NEAR(a.season->visits.at(0).depth.si, 21 * 0.0254, 1e-12) << headings;
  }
  const Audit metres =
      audited(nullptr, sheet("Old", "Pool | Date | Depth (m) | Depth (cm)\nB07 | 2019-04-03 | 1 | 25"));
  EXPECT_THAT(tidy_cells(metres), ElementsAre("1 m 25 cm"));
}

TEST(Habits, ThePlaceOfATemperatureMayTakeTwoWords) {
  for (const char* headings :
       {"Temp near end | Temp middle | Temp far end", "Temp edge | Temp middle | Temp far edge",
        "Temp north shore | Temp middle | Temp south shore"}) {
    const Audit a = audited(nullptr, sheet("Old", std::string("Pool | Date | ") + headings +
                                                      "\nB07 | 2011-05-04 | 48 | 46 | 50"
                                                      "\nB08 | 2011-05-04 | 47 | 45 | 49"
                                                      "\nB09 | 2011-05-04 | 46 | 44 | 48"));
    EXPECT_THAT(tidy_cells(a, "Temperature 1"), ElementsAre("48", "47", "46")) << headings;
    EXPECT_THAT(tidy_cells(a, "Temperature 2"), ElementsAre("46", "45", "44")) << headings;
    EXPECT_THAT(tidy_cells(a, "Temperature 3"), ElementsAre("50", "49", "48")) << headings;
  }
}

TEST(Habits, OneDepthInTwoUnitsIsTakenOnce) {
  const Audit a = audited(nullptr, sheet("Old", "Pool | Date | Depth (ft) | Depth (in)\n"
                                                "B07 | 2019-04-03 | 1.5 | 18\nB08 | 2019-04-03 | 0.75 | 9"));
  EXPECT_THAT(tidy_cells(a), ElementsAre("1.5 ft", "0.75 ft"));
  const Audit other = audited(nullptr, sheet("Old", "Pool | Date | Depth (ft) | Snow (in)\n"
                                                    "B07 | 2019-04-03 | 1 | 8\nB08 | 2019-04-03 | 2 | 9"));
  EXPECT_THAT(tidy_cells(other), ElementsAre("1 ft", "2 ft"));
}

TEST(Habits, AGroupOverKnownHeadingsIsNoHeadingItself) {
  const Audit a =
      audited(nullptr, sheet("Old", "Where | | When | | Water temperature, \u00b0F | | | Water depth\n"
                                    "Town | Pool | Date | Time | Left | Middle | Right | in\n"
                                    "Ashby | Q1 | 2008-04-05 | 8:30 | 45 | 45 | 46 | 21\n"
                                    "Ashby | Q2 | 2008-04-05 | 9:40 | 44 | 45 | 45 | 27\n"));
  EXPECT_EQ(a.rows.usable, 2U);
  EXPECT_EQ(column(a, "Pool").field, Field::visit_pool);
  EXPECT_EQ(column(a, "Water temperature, \u00b0F: Middle").field, Field::visit_temperature_2);
  EXPECT_EQ(column(a, "Water depth: in").unit, Unit::inch);
}

TEST(Habits, TablesSideBySideEachUnderTheNameOfItsPool) {
  const Audit a =
      audited(nullptr, sheet("Old", "Pool: Reed | | | | Pool: Sedge | |\n"
                                    "Date | Depth (cm) | Temp (C) | | Date | Depth (cm) | Temp (C)\n"
                                    "2017-04-01 | 30 | 6 | | 2017-04-01 | 35 | 6\n"
                                    "2017-04-11 | 29 | 8 | | 2017-04-11 | 34 | 8\n"));
  EXPECT_EQ(a.rows.usable, 4U);
  EXPECT_THAT(tidy_cells(a, "Pool"), ElementsAre("Reed", "Reed", "Sedge", "Sedge"));
}

TEST(Habits, ATitleNamesThePoolByItsCodeBeforeOtherWords) {
  EXPECT_EQ(pool_named_in("Pool 12, season 2020"), "12");
  EXPECT_EQ(pool_named_in("Pool 12 \u2013 Larch Hole, season 2020"), "12");
  EXPECT_EQ(pool_named_in("Site B07 (by the mill)"), "B07");
  for (const char* none : {"Pools 2019 - Ashby", "Pool 3, 4 and 5", "Pool 1 - 6", "Pool 12, Pool 13",
                           "Pool 3, and others", "Pool 12 survey", "Pool visits, 2019"})
    EXPECT_EQ(pool_named_in(none), "") << none;
}

TEST(Habits, AFullnessInFractionsOfOneKeepsItsUnit) {
  const Audit a =
      audited(nullptr, sheet("Old", "Pool | Date | Depth (in) | Full\nB07 | 2019-04-03 | 10 | 0.5\n"
                                    "B08 | 2019-04-03 | 9 | 0.75\nB09 | 2019-04-03 | 9 | 1\n"));
  EXPECT_EQ(column(a, "Full").unit, Unit::one);
  EXPECT_THAT(tidy_cells(a, "Full"), ElementsAre("0.5 of 1", "0.75 of 1", "1 of 1"));
  EXPECT_EQ(a.rows.usable, 3U);
  ASSERT_TRUE(a.season);
  EXPECT_DOUBLE_EQ(a.season->visits.at(2).fill.si, 1);
}

TEST(Habits, ATimeOfDayBesideADateIsToldThatItIsLeftAlone) {
  Table old = sheet("Old", "Pool | Date | Depth (in)\nB07 | x | 10\nB08 | 2019-04-03 00:00:00 | 9\n"
                           "B08 | 2019-04-10 11:15 | 9\nB09 | 2019-04-10 | 9\n");
  old.at(1, 1) = Cell::of_date(43556.5);
  const Audit a = audited(nullptr, std::move(old));
  EXPECT_EQ(a.rows.usable, 4U);
  EXPECT_THAT(
      a.remarks,
      ElementsAre(
          "A time of day stands beside 2 dates on 'Old'. It is left alone: write it under Start where "
          "it says when the visit began."));
}

} // namespace
} // namespace wetspell
