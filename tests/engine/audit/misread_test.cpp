// What would be read as something else without a word: units, animals, columns of other measurements.
#include "audit/audit.hpp"
#include "audit/audit_tables.hpp"
#include "engine/audit/audited.hpp"
#include "engine/season/sheets.hpp"
#include "quantity/read.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell {
namespace {

using testing::audited;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using testing::sheet;

/// The cells of a field below one another, as they stand in the tidy rows.
std::vector<std::string> tidy(const Audit& audit, Field field) {
  std::vector<std::string> cells;
  for (const TidySheet& rows : tidy_tables(audit))
    for (std::size_t column = 0; column < rows.table.columns(); ++column)
      if (rows.kind == spec(field).table && to_text(rows.table.at(0, column)) == spec(field).heading)
        for (std::size_t row = 1; row < rows.table.rows(); ++row)
          cells.push_back(to_text(rows.table.at(row, column)));
  return cells;
}

const Mapping& mapping(const Audit& audit, std::string_view heading) {
  for (const AuditedTable& table : audit.tables)
    for (const AuditedColumn& column : table.columns)
      if (column.mapping.heading == heading)
        return column.mapping;
  static const Mapping none;
  ADD_FAILURE() << "no heading " << heading;
  return none;
}

TEST(Misread, DoubtfulNumbersTakeTheirUnitAlongToo) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Depth (cm) | Water temp (C)
B07 | 3 April 2013 | 34 | 6
B08 | 3 April 2013 | ca. 10 | 7?
B09 | 3 April 2013 | >90 | 5-6
B10 | 3 April 2013 | 12 in | 44 F
B11 | 3 April 2013 | dry |
)"));
  EXPECT_THAT(tidy(a, Field::visit_depth), ElementsAre("34 cm", "ca. 10 cm", ">90 cm", "12 in", "0 cm"));
  EXPECT_THAT(tidy(a, Field::visit_temperature_mean), ElementsAre("6 °C", "7? °C", "5-6 °C", "44 F", ""));
}

TEST(Misread, FractionsOfAPoolStayFractions) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | How full?
B07 | 3 April 2013 | 3/4
B07 | 17 April 2013 | full
B07 | 1 May 2013 | 80 %
B07 | 15 May 2013 | 40
B07 | 29 May 2013 | ½
)"));
  EXPECT_THAT(tidy(a, Field::visit_fill), ElementsAre("3/4", "100", "80 %", "40", "½"));
  EXPECT_EQ(a.rows.usable, 5u);
  EXPECT_DOUBLE_EQ(a.season->visits[0].fill.si, 0.75);
  EXPECT_DOUBLE_EQ(a.season->visits[3].fill.si, 0.4);
}

TEST(Misread, WhereCellsSayDifferentUnitsABareNumberStaysOpen) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Depth
B07 | 3 April 2013 | 18 in
B07 | 17 April 2013 | 45 cm
B07 | 1 May 2013 | 1.5 ft
B08 | 3 April 2013 | 11 in
B08 | 17 April 2013 | 30 cm
B08 | 1 May 2013 | 10
B08 | 15 May 2013 | 0
)"));
  EXPECT_EQ(mapping(a, "Depth").unit, Unit::none);
  EXPECT_THAT(mapping(a, "Depth").reason, HasSubstr("the other cells say different ones"));
  EXPECT_THAT(tidy(a, Field::visit_depth),
              ElementsAre("18 in", "45 cm", "1.5 ft", "11 in", "30 cm", "10 (unit?)", "0"))
      << "nought is nought in every unit";
  ASSERT_EQ(a.unread.size(), 1u);
  EXPECT_EQ(a.unread[0].text, "10");
}

TEST(Misread, ADoubtfulNumberWhoseUnitIsOpenStandsAsItWasTyped) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Width | Notes
B07 | 3 April 2013 | 30 |
B07 | 17 April 2013 | about 9 |
B08 | 3 April 2013 | 20-25 |
B08 | 17 April 2013 | >40 |
)"));
  EXPECT_THAT(tidy(a, Field::visit_width),
              ElementsAre("30 (unit?)", "about 9 (unit?)", "20-25 (unit?)", ">40 (unit?)"));
  EXPECT_EQ(a.unread_count, 4u);
  for (const char* text : {"30 (unit?)", "about 9 (unit?)", "20-25 (unit?)", ">40 (unit?)"})
    EXPECT_EQ(read(text, {.kind = Kind::length, .assume = Unit::foot}).status, Status::bad) << text;
}

TEST(Misread, TheAirIsNotTheWater) {
  for (const char* air : {"t_a", "ATEMP", "Temp in", "Temp out"}) {
    const Audit a = audited(nullptr, sheet("Old", std::string("Pool | Date | Depth (in) | ") + air + R"(
B07 | 3 April 2013 | 18 | 50
B07 | 17 April 2013 | 17 | 61
B08 | 3 April 2013 | 11 | 55
)"));
    EXPECT_TRUE(mapping(a, air).open()) << air;
  }
  const Audit a = audited(nullptr, sheet("Old", R"(
SITE | DATE | WTEMP | ATEMP
B07 | 3 April 2013 | 44 | 50
B07 | 17 April 2013 | 48 | 61
B08 | 3 April 2013 | 43 | 55
)"));
  EXPECT_EQ(mapping(a, "WTEMP").field, Field::visit_temperature_mean);
  EXPECT_TRUE(mapping(a, "ATEMP").open());
}

TEST(Misread, ConductivityIsNoPondAndAVolumeNoVolunteer) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Place name | Date | Depth | Cond | vol
 | | cm | uS | m3
Rocky | 3 April 2013 | 33 | 45 |
Mossy | 3 April 2013 | 18 | 30 |
)"));
  EXPECT_TRUE(mapping(a, "Cond").open());
  EXPECT_TRUE(mapping(a, "vol").open());
  EXPECT_THAT(mapping(a, "vol").reason, HasSubstr("m³ is the unit of its numbers"));
}

TEST(Misread, RangesAndFractionsAreNoDates) {
  const Audit a = audited(nullptr, sheet("Old 2013", R"(
Pool | Temps | Clusters | Share | Depth (in) | Width (ft) | Length (ft)
B07 | 48/50/49 | 4-6 | 1/2 | 18 | 20 | 44
B07 | 52/53/52 | 10-12 | 3/4 | 17 | 20 | 45
B08 | 45/45/46 | 2-3 | 1/4 | 11 | 12 | 30
)"));
  for (const char* heading : {"Temps", "Clusters", "Share"})
    EXPECT_TRUE(mapping(a, heading).open()) << heading << ": " << mapping(a, heading).reason;
}

TEST(Misread, NotEveryDayIsThatOfAVisit) {
  for (const char* heading : {"Dried on", "Date entered", "Ice-out", "Next due"}) {
    const Audit a = audited(nullptr, sheet("Old", std::string("Pool | ") + heading + R"( | Depth
B07 | 2010-06-20 | 18 in
B08 | 2010-07-04 | 22 in
B09 | 2010-07-18 | 25 in
)"));
    EXPECT_TRUE(mapping(a, heading).open()) << heading << ": " << mapping(a, heading).reason;
  }
}

TEST(Misread, PlacesMayBeThePoolsIfAPersonSaysSo) {
  const Audit none = audited(nullptr, sheet("Old", R"(
Temp | Depth | When | Where
44 F | 16 in | 4 April 2011 | Dell
38 F | 20 in | 4 April 2011 | Ridge
)"));
  EXPECT_FALSE(none.tables[0].kind);
  EXPECT_THAT(none.tables[0].reason,
              HasSubstr("no column of pools; \"Where\" names places; where they are the pools, say so"));
  const Audit visits = audited(nullptr, sheet("Old", R"(
Location | Date | Depth | Temp | Length | Width
Old mill | 4 April 2011 | 16 in | 44 F | 30 ft | 10 ft
Ridge | 4 April 2011 | 20 in | 44 F | 40 ft | 20 ft
)"));
  EXPECT_EQ(visits.rows.unusable, 2u);
  EXPECT_THAT(mapping(visits, "Location").reason, HasSubstr("it names places"));
  const Audit both = audited(nullptr, sheet("Old", R"(
Town | Pool | Date | Depth
Ashby | B07 | 4 April 2011 | 16 in
)"));
  EXPECT_THAT(mapping(both, "Town").reason, HasSubstr("it belongs to a table of pools"));
}

TEST(Misread, TheSouthIsNoPlural) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Depth N (in) | Depth center (in) | Depth S (in)
B07 | 3 April 2010 | 8 | 18 | 9
B08 | 3 April 2010 | 10 | 22 | 12
)"));
  EXPECT_TRUE(mapping(a, "Depth S (in)").open());
}

TEST(Misread, WhatIsCountedIsNotAlwaysTheUsualForm) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Wood frog tads | Wood frog males | 2nd wood frog count | Wood frog
B07 | 3 April 2013 | 500 | 12 | 31 | 30
)"));
  ASSERT_TRUE(mapping(a, "Wood frog tads").count);
  EXPECT_EQ(mapping(a, "Wood frog tads").count->seen_as, "larvae");
  EXPECT_TRUE(mapping(a, "Wood frog males").open());
  EXPECT_TRUE(mapping(a, "2nd wood frog count").open());
  ASSERT_TRUE(mapping(a, "Wood frog").count);
  EXPECT_EQ(mapping(a, "Wood frog").count->seen_as, "egg masses");
}

TEST(Misread, AWoodFrogIsNoWood) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Name | Owner | Wood frog
B07 | Rocky | private | 40
B08 | Mossy | private | 12
B09 | Alder | town | 85
)"));
  EXPECT_EQ(a.tables[0].kind, TableKind::pools);
  EXPECT_TRUE(mapping(a, "Wood frog").open());
}

TEST(Misread, VisitsSideBySideAreNoReadingsOfOne) {
  const Audit a = audited(nullptr, sheet("Old", R"(
 | April 6 2013 | | April 20 2013 | | May 4 2013 |
Pool | Depth in | Temp F | Depth in | Temp F | Depth in | Temp F
B07 | 23 | 43 | 25 | 49 | 22 | 56
B08 | 13 | 44 | 14 | 51 | 10 | 58
)"));
  EXPECT_TRUE(a.findings.empty());
  EXPECT_THAT(tidy(a, Field::visit_temperature_2), ElementsAre());
}

TEST(Misread, AVisitThatStandsOnTwoSheetsIsTold) {
  constexpr const char* east = "Pool | Date | Depth (cm)\nB07 | 2019-04-01 | 30\nB07 | 2019-04-15 | 31\n";
  constexpr const char* all = "Site | When | Depth (cm)\nB08 | 2019-04-01 | 12\nb07 | 1 April 2019 | 30\n";
  const Audit a = audited(nullptr, sheet("East", east), sheet("All", all));
  EXPECT_THAT(a.remarks,
              ElementsAre("1 row says the pool and the day of an earlier row (as East.A2 and All.A3). "
                          "Where that is one visit, keep one of them."));
  EXPECT_THAT(audited(nullptr, sheet("East", east)).remarks, ElementsAre());
}

} // namespace
} // namespace wetspell
