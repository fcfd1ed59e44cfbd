// The units that lines above a table name.
#include "audit/title_units.hpp"
#include "engine/audit/audited.hpp"
#include "engine/season/sheets.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell {
namespace {

using testing::audited;
using testing::column;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using testing::sheet;
using ::testing::StartsWith;

/// "temperature °F, depth cm": every kind that the lines give a unit.
std::string said(const std::vector<std::string>& titles) {
  const TitleUnits units(titles);
  std::string all;
  for (const Kind kind : {Kind::temperature, Kind::depth, Kind::length, Kind::area})
    if (const Unit unit = units.of(kind); unit != Unit::none)
      all += fmt::format("{}{} {}", all.empty() ? "" : ", ", name(kind), symbol(unit));
  return all;
}

TEST(TitleUnits, AreReadAsPeopleNameThem) {
  EXPECT_EQ(said({"Depths in cm, lengths and widths in feet"}), "depth cm, length ft");
  EXPECT_EQ(said({"lengths, widths and depths in cm"}), "depth cm, length cm");
  EXPECT_EQ(said({"Temps in F"}), "temperature °F");
  EXPECT_EQ(said({"Temp. in C and depth in cm"}), "temperature °C, depth cm");
  EXPECT_EQ(said({"Temperatures in degrees Celsius; sizes in metres"}), "temperature °C, length m");
  EXPECT_EQ(said({"Depths (cm), widths (m)"}), "depth cm, length m");
  EXPECT_EQ(said({"Units: depth cm; length m"}), "depth cm, length m");
  EXPECT_EQ(said({"Maximum depth of water measured in cm"}), "depth cm");
  EXPECT_EQ(said({"Depth to the nearest cm"}), "depth cm");
  EXPECT_EQ(said({"Long Pond, visits of 2019: water depth = cm"}), "depth cm");
  EXPECT_EQ(said({"Area of pools in sq ft"}), "area ft²");
  EXPECT_EQ(said({"Lengths in paces"}), "length paces");
}

TEST(TitleUnits, OfMeasurementsThatAreNotNamedAreThoseOfDepthsAndLengths) {
  EXPECT_EQ(said({"All measurements in cm"}), "depth cm, length cm");
  EXPECT_EQ(said({"Units: feet"}), "depth ft, length ft");
  EXPECT_EQ(said({"All measurements of depth in cm"}), "depth cm");
}

TEST(TitleUnits, OfOtherThingsSayNothing) {
  EXPECT_EQ(said({"Air temperature in F"}), "");
  EXPECT_EQ(said({"Snow depth in inches"}), "");
  EXPECT_EQ(said({"Probe depth in cm"}), "");
  EXPECT_EQ(said({"Depth taken 1 m from the shore"}), "");
  EXPECT_EQ(said({"Walked 4 km, 3 feet of snow"}), "");
  EXPECT_EQ(said({"Depths in F"}), "");
  EXPECT_EQ(said({"Air temperature in F, depth in cm"}), "depth cm");
  EXPECT_EQ(said({"Depth by stick, lengths in m"}), "length m");
}

TEST(TitleUnits, AWordThatCouldBeAnotherIsAUnitOnlyWhereOneIsLookedFor) {
  EXPECT_EQ(said({"Lengths and widths in"}), "");
  EXPECT_EQ(said({"Depths in two pools"}), "");
  EXPECT_EQ(said({"Depths (in)"}), "depth in");
  EXPECT_EQ(said({"Depth in in and width in ft"}), "depth in, length ft");
  EXPECT_EQ(said({"Depths, M. Carter"}), "");
  EXPECT_EQ(said({"Depths: M. Carter"}), "");
  EXPECT_EQ(said({"Depths in m."}), "depth m");
}

TEST(TitleUnits, ThatDifferSayNothing) {
  EXPECT_EQ(said({"Depths in cm", "Spring: depths in inches, lengths in m"}), "length m");
}

constexpr const char* bare_readings = R"(
Pool | Date | Water | Temp 1 | Temp 2 | Temp 3 | Depth | Length | Width
B01 | 2019-04-01 | wet | 46 | 47 | 46 | 28 | 20 | 10
B02 | 2019-04-02 | wet | 48 | 48 | 47 | 31 | 21 | 12
B03 | 2019-04-03 | wet | 51 | 52 | 51 | 24 | 18 | 11
)";

TEST(TitleUnits, GoBeforeWhatTheNumbersSuggest) {
  // Degrees Fahrenheit make the table's other units customary; its depths would be inches.
  const Audit bare = audited(nullptr, sheet("Old", bare_readings));
  EXPECT_EQ(column(bare, "Depth").unit, Unit::inch);
  EXPECT_THAT(
      bare.remarks,
      ElementsAre(
          "Old: no unit is written for \"Depth\" (read as in), \"Length\" (ft) and \"Width\" (ft); the "
          "table's other units are US customary. Where it was another, correct Unit under Headings."));
  const Audit a = audited(nullptr, sheet("Old", std::string("Depths in cm\n") + bare_readings));
  EXPECT_EQ(column(a, "Temp 1").unit, Unit::fahrenheit);
  EXPECT_EQ(column(a, "Depth").unit, Unit::centimetre);
  EXPECT_THAT(column(a, "Depth").reason, HasSubstr("cm as the lines above the table say"));
}

TEST(TitleUnits, DoNotGoBeforeTheHeadingOrWhatCannotBe) {
  const Audit a = audited(nullptr, sheet("Old", R"(
All measurements in m

Pool | Date | Water | Temp (°C) | Depth | Length (ft) | Width
B01 | 2019-04-01 | wet | 6 | 128 | 20 | 10
B02 | 2019-04-02 | wet | 7 | 131 | 21 | 12
B03 | 2019-04-03 | wet | 6 | 124 | 18 | 11
)"));
  EXPECT_EQ(column(a, "Depth").unit, Unit::centimetre);
  EXPECT_EQ(column(a, "Length (ft)").unit, Unit::foot);
  EXPECT_EQ(column(a, "Width").unit, Unit::metre);
}

TEST(UnitsOfOtherColumns, AreToldOnceForAllSheets) {
  const Audit a = audited(nullptr, sheet("East", bare_readings), sheet("West", bare_readings));
  EXPECT_THAT(a.remarks, ElementsAre(StartsWith("East and 1 more: no unit is written for"),
                                     StartsWith("3 rows say the pool and the day of an earlier row")));
}

constexpr const char* a_row_a_reading = R"(
Site | Date | Parameter | Value
B01 | 2019-04-01 | Depth | 28
B01 | 2019-04-01 | Length | 20 m
B02 | 2019-04-02 | Depth | 31 cm
B03 | 2019-04-03 | Depth | 24
)";

Quantity first_depth(const Audit& audit) {
  return audit.season->visits[0].depth;
}

TEST(TitleUnits, CountForReadingsInRowsOfTheirOwn) {
  const Audit a = audited(nullptr, sheet("Old", std::string("Depths in inches\n") + a_row_a_reading));
  EXPECT_EQ(first_depth(a).unit, Unit::inch);
  EXPECT_EQ(first_depth(a).written, 28);
}

TEST(UnitsOfReadings, AreNotThoseOfAFewOfThem) {
  const Audit a = audited(nullptr, sheet("Old", a_row_a_reading));
  EXPECT_FALSE(first_depth(a).has_value());
  ASSERT_EQ(a.unread.size(), 2u); // 28 and 24: one of three says that it is in centimetres
  EXPECT_THAT(a.unread.front().reason, HasSubstr("unit of the number cannot be told"));
}

TEST(TitleUnits, CountForCellsWherePoolsAndDaysMeet) {
  const Audit a = audited(nullptr, sheet("Depth", R"(
All measurements in cm

Pool | 2019-04-01 | 2019-04-15 | 2019-05-01
B01 | 28 | 30 | 21
B02 | 31 | 33 | 25
B03 | 24 | 26 | 19
)"));
  EXPECT_EQ(a.tables.front().columns.back().mapping.unit, Unit::centimetre);
}

} // namespace
} // namespace wetspell
