// Tables with pools down one side and days along the other: what is told of them, and what is none.
#include "audit/audit.hpp"
#include "audit/audit_sheet.hpp"
#include "audit/audit_tables.hpp"
#include "audit/headings_sheet.hpp"
#include "audit/name_of_reading.hpp"
#include "engine/audit/audited.hpp"
#include "engine/season/sheets.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell {
namespace {

using testing::audited;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using testing::sheet;

std::vector<std::string> told(const AuditedTable& table) {
  std::vector<std::string> lines;
  for (const AuditedColumn& column : table.columns) {
    const Mapping& m = column.mapping;
    lines.push_back(fmt::format("{} \"{}\" {}{}{}", column.spot, m.heading,
                                m.open() ? "open" : meaning_word(m.field, m.part, m.count),
                                m.unit == Unit::none ? "" : " ", symbol(m.unit)));
  }
  return lines;
}

constexpr const char* depths = R"(
Water depth (cm), Split Rock, spring 2019

Pool | 3 Apr | 17 Apr | 1 May | Mean
B07 | 58 | 50 | 38 | 49
B08 | 76 | | stick lost | 76
Notes | calm | rain | |
Mean | 67 | 50 | 38 |
)";

TEST(DayTables, EachFilledCellIsAVisit) {
  const Audit a = audited(nullptr, sheet("Old", depths));
  ASSERT_EQ(a.tables.size(), 1u);
  EXPECT_EQ(a.tables[0].layout, Layout::cell_a_visit);
  EXPECT_EQ(name(a.tables[0].layout), "a cell a visit");
  EXPECT_EQ(a.tables[0].first_row, 3u);
  EXPECT_EQ(a.tables[0].last_row, 5u);
  EXPECT_EQ(a.tables[0].reason, "3 days across, pools down");
  EXPECT_THAT(told(a.tables[0]),
              ElementsAre("A \"Pool\" Visits: Pool", "3 \"\" Visits: Date",
                          "B:D \"Water depth (cm), Split Rock, spring 2019\" Visits: Depth cm",
                          "E \"Mean\" open"));
  ASSERT_EQ(a.season->visits.size(), 5u);
  EXPECT_EQ(a.season->visits[1].date.si, 43572); // 2019-04-17
  EXPECT_DOUBLE_EQ(a.season->visits[1].depth.si, 0.5);
  EXPECT_EQ(a.rows.usable, 4u);
  EXPECT_EQ(a.rows.after_answers, 1u);
  ASSERT_EQ(a.unread.size(), 1u);
  EXPECT_EQ(a.unread[0].place, (Place{"Old", 5, 3}));
  std::vector<std::string> passed;
  for (const AuditedRow& row : a.tables[0].passed)
    passed.push_back(fmt::format("{} {} {}", row.row, name(row.use), row.text));
  EXPECT_THAT(passed, ElementsAre("6 no pool Notes", "7 sums Mean"));
}

TEST(DayTables, TidyRowsSayTheCellOfTheReading) {
  const Audit a = audited(nullptr, sheet("Old", depths));
  const auto sheets = tidy_tables(a);
  ASSERT_EQ(sheets.size(), 1u);
  const Table& t = sheets[0].table;
  std::vector<std::string> rows;
  for (std::size_t row = 0; row < t.rows(); ++row) {
    std::string line;
    for (std::size_t column = 0; column < t.columns(); ++column)
      line += (column == 0 ? "" : " | ") + to_text(t.at(row, column));
    rows.push_back(line);
  }
  EXPECT_THAT(rows,
              ElementsAre("Pool | Date | Depth | From", "B07 | 2019-04-03 | 58 cm | Old.B4",
                          "B07 | 2019-04-17 | 50 cm | Old.C4", "B07 | 2019-05-01 | 38 cm | Old.D4",
                          "B08 | 2019-04-03 | 76 cm | Old.B5", "B08 | 2019-05-01 | stick lost | Old.D5"));
  const TidyTable& tidy = a.tidy[0];
  EXPECT_EQ(a.source(tidy, 1, 0), (Place{"Old", 4, 0})) << "the pool";
  EXPECT_EQ(a.source(tidy, 1, 1), (Place{"Old", 3, 2})) << "the day";
  EXPECT_EQ(a.source(tidy, 1, 2), (Place{"Old", 4, 2})) << "the reading";
}

TEST(DayTables, DaysDownAndPoolsAcross) {
  const Audit a = audited(nullptr, sheet("Pool depths in inches", R"(
Date | B07 | B08 | North pool | Observer | Mean
2019-04-03 | 23 | 30 | 18 | RW | 23
2019-04-17 | 20 | 28 | | RW | 24
2019-05-01 | 15 | 25 | 12 | TH | 17
)"));
  ASSERT_EQ(a.tables.size(), 1u);
  EXPECT_EQ(a.tables[0].reason, "3 days down, pools across");
  EXPECT_THAT(told(a.tables[0]), ElementsAre("1 \"Date\" Visits: Pool", "A \"\" Visits: Date",
                                             "2:4 \"Pool depths in inches\" Visits: Depth in"));
  EXPECT_EQ(a.tables[0].first_row, 1u);
  EXPECT_EQ(a.tables[0].last_row, 4u);
  ASSERT_EQ(a.season->visits.size(), 8u);
  EXPECT_EQ(to_text(a.source(a.tidy[0], 3)), "'Pool depths in inches'.C2") << "the first of B08";
  EXPECT_EQ(a.source(a.tidy[0], 3, 1), (Place{"Pool depths in inches", 2, 0})) << "its day";
  ASSERT_EQ(a.tables[0].passed.size(), 2u);
  const AuditSheet page = audit_sheet(a);
  std::vector<std::string> leads;
  for (std::size_t row = 0; row < page.lines.size(); ++row)
    if (page.leads_to[row] && !page.leads_to[row]->sheet.empty())
      leads.push_back(to_text(*page.leads_to[row]));
  EXPECT_THAT(leads, ElementsAre("'Pool depths in inches'.E1", "'Pool depths in inches'.F1"));
}

TEST(DayTables, WhatWasReadStaysOpenUntilAPersonSaysIt) {
  const char* nothing_said = R"(
Survey of 2019
Pool | 2019-04-03 | 2019-04-17 | 2019-05-01
B07 | 23 | 20 | 15
B08 | 30 | 28 | 25
)";
  const Audit open = audited(nullptr, sheet("Sheet1", nothing_said));
  EXPECT_EQ(open.rows.all(), 0u);
  ASSERT_EQ(open.tables.size(), 1u);
  EXPECT_FALSE(open.tables[0].kind);
  EXPECT_EQ(open.tables[0].layout, Layout::cell_a_visit);
  EXPECT_THAT(verdict_lines(open).back(), HasSubstr("no table of visits"));
  const HeadingsSheet page = headings_sheet(open, {});
  ASSERT_EQ(page.cells.rows(), 3u) << "one line for all days";
  EXPECT_EQ(to_text(page.cells.at(2, headings_heading)), "Survey of 2019");
  EXPECT_EQ(to_text(page.cells.at(2, headings_where)), "Sheet1.B2");

  Table corrected = page.cells;
  corrected.at(2, headings_field) = Cell::of_text("Visits: Depth");
  corrected.at(2, headings_unit) = Cell::of_text("in");
  const auto corrections = corrections_on(corrected);
  ASSERT_TRUE(corrections);
  const Audit said = audited(&corrections.value().map, sheet("Sheet1", nothing_said));
  EXPECT_EQ(said.rows.usable, 6u);
  EXPECT_DOUBLE_EQ(said.season->visits[0].depth.si, 23 * 0.0254);
}

TEST(DayTables, WordsThatTheCellsSpeakAgainstNameNothing) {
  const Audit a = audited(nullptr, sheet("Depth (m)", R"(
Pool | 2019-04-03 | 2019-04-17
B07 | 230 | 200
B08 | 300 | 280
)"));
  EXPECT_EQ(a.rows.all(), 0u);
  EXPECT_THAT(a.tables[0].columns.back().mapping.reason, HasSubstr("are not those of a pool"));
}

TEST(DayTables, BareNumbersWithoutAUnitAreLeftUnread) {
  const Audit a = audited(nullptr, sheet("Depths", R"(
Pool | 2019-04-03 | 2019-04-17
B07 | 23 | 20
B08 | 30 | 28
)"));
  EXPECT_EQ(a.rows.after_answers, 4u);
  EXPECT_EQ(a.unread_count, 4u);
}

TEST(DayTables, AWideTableOfFewReadingsIsLookedAtWhereTheyStand) {
  constexpr std::size_t pools = 200;
  Table wide(Place{"Depth", 1, 0}, pools + 1, pools + 1);
  wide.at(0, 0) = Cell::of_text("Pool");
  for (std::size_t i = 1; i <= pools; ++i) {
    wide.at(0, i) = Cell::of_date(43500 + static_cast<double>(i));
    wide.at(i, 0) = Cell::of_text(fmt::format("B{:03}", i));
    wide.at(i, i) = Cell::of_text("30 cm");
  }
  const Audit a = audited(nullptr, std::move(wide));
  EXPECT_EQ(a.rows.usable, pools);
  EXPECT_THAT(a.tables[0].columns.back().mapping.reason, HasSubstr("cm as 200 of 200 cells say"));
}

TEST(DayTables, AHeadingThatIsNoCertainDayIsToldOnceAndCountedForItsRows) {
  const Audit a = audited(nullptr, sheet("Depth (cm)", R"(
Pool | 3/4/2019 | 5/4/2019
B07 | 58 | 50
B08 | 76 | 71
B09 | 45 |
)"));
  EXPECT_EQ(a.rows.after_answers, 5u);
  ASSERT_EQ(a.unread.size(), 2u);
  EXPECT_EQ(a.unread[0].place, (Place{"Depth (cm)", 1, 1}));
  EXPECT_EQ(a.unread[0].rows, 3u);
  ASSERT_EQ(a.findings.size(), 2u);
  EXPECT_EQ(a.findings[0].rows, 3u);
  ASSERT_FALSE(a.reasons.empty());
  EXPECT_EQ(a.reasons[0].rows, 5u) << a.reasons[0].words;
}

TEST(DayTables, SeveralStandBelowAndBesideOneAnother) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Depth (cm) | | | | Water temperature (C)
Pool | 2019-04-03 | 2019-04-17 | | Pool | 2019-04-03 | 2019-04-17
B07 | 23 | 20 | | B07 | 5 | 8
B08 | 30 | 28 | | B08 | 6 | 9
 | | | | |
How full (%) | | | | |
Pool | 2019-04-03 | 2019-04-17 | | |
B07 | 90 | 80 | | |
B08 | 95 | 85 | | |
)"));
  ASSERT_EQ(a.tables.size(), 3u);
  EXPECT_EQ(a.rows.usable, 12u);
  EXPECT_THAT(told(a.tables[0]).back(), HasSubstr("Visits: Depth cm"));
  EXPECT_THAT(told(a.tables[1]).back(), HasSubstr("F:G \"Water temperature (C)\" Visits: Mean"));
  EXPECT_THAT(told(a.tables[2]).back(), HasSubstr("Visits: Full %"));
}

TEST(DayTables, ReadingsOfTwoKindsAboveOneRowOfDaysStayOpen) {
  const Audit a = audited(nullptr, sheet("Old", R"(
 | Depth (cm) | | Water temperature (C) |
Pool | 2019-04-03 | 2019-04-17 | 2019-04-03 | 2019-04-17
B07 | 23 | 20 | 5 | 8
B08 | 30 | 28 | 6 | 9
)"));
  EXPECT_EQ(a.rows.all(), 0u);
}

TEST(DayTables, CountsOfAnAnimalBecomeCountsOfLife) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Wood frog egg masses 2019
Pool | 3/28/2019 | 4/3/2019 | 4/17/2019
B07 | 12 | 20 | 15
B08 | 0 | 5 |
)"));
  ASSERT_EQ(a.season->life.size(), 5u);
  EXPECT_EQ(a.tables[0].kind, TableKind::life);
  EXPECT_EQ(a.season->life[4].by_first.si, 5);
  EXPECT_EQ(a.season->life[4].date.si, 43558); // 2019-04-03
  EXPECT_EQ(a.season->species_names[static_cast<std::size_t>(a.season->life[0].species.index)], "wood frog");
  EXPECT_EQ(a.source(a.tidy[0], 4), (Place{"Old", 4, 2}));
}

TEST(DayTables, RowsInMessagesAreCells) {
  const Audit a = audited(nullptr, sheet("Depth (cm)", R"(
Pool | 2019-04-03 | 2019-04-17
B07 | 23 | 20
B08 | 30 | 3210
)"));
  ASSERT_FALSE(a.findings.empty());
  for (const AuditFinding& each : a.findings)
    EXPECT_EQ(each.finding.place, (Place{"Depth (cm)", 3, 2})) << each.finding.message;
}

TEST(DayTables, OtherTablesAreNone) {
  const auto layout = [](const char* name, const char* cells) {
    const Audit a = audited(nullptr, sheet(name, cells));
    for (const AuditedTable& table : a.tables)
      if (table.layout == Layout::cell_a_visit)
        return "taken apart";
    return "not";
  };
  EXPECT_STREQ(layout("Soil", "Plot | 2019-04-03 | 2019-04-17\nB07 | 23 | 20\nB08 | 30 | 28"), "not");
  EXPECT_STREQ(layout("Depth (cm)", "Datum | Tiefe | Wasser\n2019-04-03 | 23 | 20\n2019-04-17 | 30 | 28"),
               "not");
  EXPECT_STREQ(layout("Pool B07", "Date | 1 | 2 | 3\n2019-04-03 | 5 | 6 | 7\n2019-04-17 | 8 | 9 | 8"), "not");
  EXPECT_STREQ(layout("Pools", "Pool | Laid | Hatched\nB07 | 2019-04-03 | 2019-05-03\nB08 | 2019-04-05 | "
                               "2019-05-07\nB09 | 2019-04-05 | 2019-05-07"),
               "not");
  EXPECT_STREQ(layout("Pools", "Date | 2019-04-03 | 2019-04-17\nPool | B07 | B07\nDepth (cm) | 23 | 20\nTemp "
                               "(C) | 6 | 9\nMud | soft | soft"),
               "not");
  EXPECT_STREQ(layout("Pools", "Date | Pool | Depth (cm) | Temp (C)\n2019-04-03 | B07 | 23 | 6\n2019-04-17 | "
                               "B07 | 20 | 9"),
               "not");
}

TEST(NameOfReading, IsFoundAmongWhatSaysNothing) {
  const auto name = [](const char* text) { return name_of_reading(text).value_or("none"); };
  EXPECT_EQ(name("Depth (in)"), "Depth (in)");
  EXPECT_EQ(name("Water depth (cm), Split Rock Reserve, spring 2019"), "Water depth (cm)");
  EXPECT_EQ(name("2019: water temperatures of all pools, °F"), "water temperatures °F");
  EXPECT_EQ(name("depths_2019"), "depths");
  EXPECT_EQ(name("Pool / Depth (in)"), "Pool Depth (in)");
  EXPECT_EQ(name("Soil: depth (cm)"), "none");
  EXPECT_EQ(name("Split Rock: water depth (cm)"), "water depth (cm)");
  EXPECT_EQ(name("Soil Moisture: depth (cm)"), "none");
  EXPECT_EQ(name("Depth 2 (cm)"), "none");
  EXPECT_EQ(name("Air temperature"), "none");
  EXPECT_EQ(name("Depth (cm), water temperature (C)"), "none");
  EXPECT_EQ(name("Survey of the north woods"), "none");
  EXPECT_EQ(name(""), "none");
}

} // namespace
} // namespace wetspell
