// Reading records: what a row is, references, units, settings, classes, limits, species.
#include "engine/season/sheets.hpp"

#include <gtest/gtest.h>

namespace wetspell::testing {
namespace {

bool mentions(const std::vector<std::string>& remarks, std::string_view text) {
  for (const std::string& remark : remarks)
    if (remark.find(text) != std::string::npos)
      return true;
  return false;
}

TEST(Records, RowsWithNothingTypedArePassedOver) {
  const auto season = season_of(sheet("Visits", R"(
Pool | Date | Depth | Depth as read | Doubts
B07 | 2026-04-18 | 25 | 25 |
 | | | 0 | worked out
 | | | |
'  | | | |
B08 | | | |)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_EQ(s.visits.size(), 2u);
  EXPECT_EQ(s.visits[0].row, 1u);
  EXPECT_EQ(s.visits[1].row, 5u);
  EXPECT_EQ(s.visits[1].depth.status, Status::blank);
}

TEST(Records, SortedRowsKeepTheirPlaces) {
  const auto season = season_of(sheet("Visits", R"(
Pool | Date | Depth
B08 | 2026-05-20 | 12
B07 | 2026-04-18 | 25)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_EQ(s.place(Field::visit_depth, s.visits.at(1).row), (Place{"Visits", 3, 2}));
  EXPECT_EQ(to_text(s.cell(Field::visit_depth, s.visits.at(1).row)), "25");
}

TEST(Records, TablesThatDoNotBeginAtTheFirstCell) {
  Table table({"Visits", 11, 2}, 2, 3);
  const char* cells[] = {"Pool", "Date", "Depth", "B07", "2026-04-18", "25"};
  for (std::size_t i = 0; i < 6; ++i)
    table.at(i / 3, i % 3) = cell_from(cells[i]);
  const auto season = season_of(std::move(table));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().place(Field::visit_depth, 1), (Place{"Visits", 12, 4}));
}

TEST(References, ByCodeCaseAndBlanksAside) {
  const auto season = season_of(sheet("Pools", two_pools), sheet("Visits", R"(
Pool | Date | Depth
 b07 | 2026-04-18 | 25
B7 | 2026-04-18 | 25
 | 2026-04-18 | 25
long hollow | 2026-04-18 | 25)"));
  ASSERT_TRUE(season.has_value());
  const auto& v = season.value().visits;
  EXPECT_EQ(v.at(0).pool.index, 0);
  EXPECT_EQ(v.at(1).pool.index, Ref::unknown); // leading zeros count
  EXPECT_EQ(v.at(2).pool.index, Ref::blank);
  EXPECT_EQ(v.at(3).pool.index, 1); // by its name
}

TEST(References, NumericCodesTypedAsNumbersOrText) {
  const auto season =
      season_of(sheet("Pools", "Pool code|Pool name\n1|A\n'2|B\n'003|C"),
                sheet("Visits", "Pool|Date|Depth\n'1|2026-04-18|5\n2|2026-04-18|5\n3|2026-04-18|5"));
  ASSERT_TRUE(season.has_value());
  const auto& v = season.value().visits;
  EXPECT_EQ(v.at(0).pool.index, 0);
  EXPECT_EQ(v.at(1).pool.index, 1);
  EXPECT_EQ(v.at(2).pool.index, Ref::unknown);
}

TEST(References, WithoutATableOfPoolsEveryCodeIsOne) {
  const auto season = season_of(sheet("Visits", R"(
Pool | Date | Depth | Person
B07 | 2026-04-18 | 25 | RW
B08 | 2026-04-18 | 25 | RW
b07 | 2026-05-18 | 20 |)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_EQ(s.pools.size(), 2u);
  EXPECT_EQ(s.visits.at(2).pool.index, 0);
  ASSERT_EQ(s.people.size(), 1u);
  EXPECT_EQ(s.visits.at(2).person.index, Ref::blank);
  EXPECT_FALSE(s.where(TableKind::pools).found());
  EXPECT_TRUE(s.cell(Field::pool_code, s.pools[0].row).empty());
}

TEST(References, SpeciesByNameAndItsPlural) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"), sheet("Life", R"(
Pool | Date | Species | Seen as | Count
B07 | 2026-04-18 | Wood Frogs | egg masses | 14
B07 | 2026-04-18 | sea serpent | adults | 1)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_TRUE(s.life.at(0).species.known());
  EXPECT_EQ(s.species_names.at(static_cast<std::size_t>(s.life[0].species.index)), "wood frog");
  EXPECT_EQ(s.life.at(1).species.index, Ref::unknown);
}

TEST(Units, UsCustomaryUnlessSaidOtherwise) {
  const auto season = season_of(sheet("Visits", R"(
Pool | Date | Temperature 1 | Temperature 2 | Depth | Length | Width
B07 | 2026-04-18 | 50 | 10 °C | 24 | 60 | 9 m
B07 | 2026-05-18 | 50 °F | | 2' 6" | 12 paces | 20 yd)"));
  ASSERT_TRUE(season.has_value());
  const auto& v = season.value().visits;
  EXPECT_DOUBLE_EQ(v.at(0).temperature_1.si, 10);
  EXPECT_DOUBLE_EQ(v.at(0).temperature_2.si, 10);
  EXPECT_DOUBLE_EQ(v.at(0).depth.si, 0.6096);
  EXPECT_DOUBLE_EQ(v.at(0).length.si, 18.288);
  EXPECT_DOUBLE_EQ(v.at(0).width.si, 9);
  EXPECT_DOUBLE_EQ(v.at(1).depth.si, 0.762);
  EXPECT_EQ(v.at(1).length.status, Status::paces);
}

constexpr const char* bare_numbers = "Pool|Date|Temperature 1|Depth|Length\nB07|2026-04-18|10|61|18";

TEST(Units, OneSettingTurnsAllToMetric) {
  const auto season = season_of(sheet("Visits", bare_numbers), sheet("Start", R"(
Welcome |
Unit system | metric
Temperatures in | as the system
Depths in |
Season (year) | 2026)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_EQ(s.settings.units, UnitSystem::metric);
  EXPECT_DOUBLE_EQ(s.visits.at(0).temperature_1.si, 10);
  EXPECT_DOUBLE_EQ(s.visits.at(0).depth.si, 0.61);
  EXPECT_DOUBLE_EQ(s.visits.at(0).length.si, 18);
  EXPECT_EQ(s.settings.unit_of(Kind::area), Unit::square_metre);
}

TEST(Units, OneLineOverridesTheSystem) {
  const auto season = season_of(sheet("Visits", bare_numbers), sheet("Start", R"(
Setting | Value | What it does
Unit system | US customary | ...
Temperatures in | °C | ...)"));
  ASSERT_TRUE(season.has_value());
  EXPECT_DOUBLE_EQ(season.value().visits.at(0).temperature_1.si, 10);
  EXPECT_DOUBLE_EQ(season.value().visits.at(0).depth.si, 61 * 0.0254);
}

TEST(Units, AHeadingsUnitGoesBeforeTheSettings) {
  const auto season = season_of(
      sheet("Visits", "Pool|Date|Temperature 1 (°C)|Depth, cm|Length (s)\nB07|2026-04-18|10|61|18"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_DOUBLE_EQ(s.visits.at(0).temperature_1.si, 10);
  EXPECT_DOUBLE_EQ(s.visits.at(0).depth.si, 0.61);
  EXPECT_DOUBLE_EQ(s.visits.at(0).length.si, 18 * 0.3048); // (s) is no unit of length
}

TEST(ReadSettings, TypedValues) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|3/4/2026|5"), sheet("Start", R"(
Setting | Value | What it does
Programme | Hollow Watch | free
Season (year) | '2026 |
First day of the season | 2026-03-15 |
Last day of the season | August 31 |
A date like 3/4/2026 is | day first |
Check as of | 2026-06-01 |)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_TRUE(s.remarks.empty()) << s.remarks[0];
  EXPECT_EQ(s.settings.programme, "Hollow Watch");
  EXPECT_EQ(s.settings.season_year, 2026);
  // Day numbers as Calc gives them: DATE(2026;3;15) = 46096, DATE(2026;8;31) = 46265, DATE(2026;6;1) = 46174.
  EXPECT_EQ(s.settings.first_day, 46096);
  EXPECT_EQ(s.settings.last_day, 46265);
  EXPECT_EQ(s.settings.today, 46174);
  EXPECT_EQ(s.visits.at(0).date.si, 46115); // 2026-04-03
}

TEST(ReadSettings, WhatCannotBeReadIsTold) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|3/4/2026|5"), sheet("Start", R"(
Setting | Value
Season (year) | soon
Depths in | °C
Unit system | cubits)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_EQ(s.remarks.size(), 3u);
  EXPECT_TRUE(mentions(s.remarks, "Start.B2: \"soon\""));
  EXPECT_EQ(s.settings.season_year, std::nullopt);
  EXPECT_EQ(s.settings.depth, Unit::inch);
  EXPECT_EQ(s.settings.today, 46280);                 // the caller's
  EXPECT_EQ(s.visits.at(0).date.status, Status::bad); // ambiguous dates are refused unless settled
}

TEST(ReadSettings, AHelpTextIsNotAValue) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"), sheet("Start", R"(
Setting | Value | What it does
Programme | | The name of your programme
Check as of | | Blank: the day of the check)"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().settings.programme, "");
  EXPECT_TRUE(season.value().remarks.empty());
}

TEST(Classes, LabelsInManyWords) {
  const auto season = season_of(sheet("Visits", R"(
Pool | Date | Depth class judged | Full class judged
B07 | 2026-04-18 | over 12 to 24 in | 50 to 74 %
B07 | 2026-04-19 | 12-24 | 50-74
B07 | 2026-04-20 | Over 12 to 24 | 50–74%
B07 | 2026-04-21 | dry | ?
B07 | 2026-04-22 | not known | plenty
B07 | 2026-04-23 | over 48 | )"));
  ASSERT_TRUE(season.has_value());
  const auto& v = season.value().visits;
  for (int i : {0, 1, 2}) {
    EXPECT_EQ(v.at(i).depth_class.index, 3) << i;
    EXPECT_EQ(v.at(i).fill_class.index, 2) << i;
  }
  EXPECT_EQ(v.at(3).depth_class.index, 0);
  EXPECT_EQ(v.at(3).fill_class.index, Choice::not_known);
  EXPECT_EQ(v.at(4).depth_class.index, Choice::not_known);
  EXPECT_EQ(v.at(4).fill_class.index, Choice::unreadable);
  EXPECT_EQ(v.at(5).depth_class.index, 6);
  EXPECT_EQ(v.at(5).fill_class.index, Choice::blank);
}

TEST(Classes, AnUnreadableTableIsToldAndTheUsualOneTaken) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"), sheet("Classes", R"(
Depth class | Over | Up to
shallow | 0 | 10
deep | 20 | 30)"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().depth_classes.rows.size(), default_depth_classes().rows.size());
  EXPECT_TRUE(mentions(season.value().remarks, "Classes.A1: the table of depth classes cannot be used"));
}

TEST(Classes, OfWetSpellsInDays) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"), sheet("Classes", R"(
Depth class | Over | Up to | | Wet spell class | Days over | Days up to
shallow | 0 | 10 | | gone by June | 0 | 70
deep | 10 | | | stays | 70 | )"));
  ASSERT_TRUE(season.has_value());
  EXPECT_TRUE(season.value().remarks.empty());
  ASSERT_EQ(season.value().spell_classes.rows.size(), 2u);
  EXPECT_EQ(season.value().spell_classes.rows[1].label, "stays");
  EXPECT_EQ(season.value().spell_classes.rows[1].low, 70);
  EXPECT_EQ(season.value().depth_classes.rows.size(), 2u);
}

TEST(Classes, OfWetSpellsAreTheUsualOnesWithoutATable) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().spell_classes.rows.size(), default_spell_classes().rows.size());
}

TEST(Classes, InCentimetresWhenTheHeadingSaysSo) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|40 cm"), sheet("Classes", R"(
Depth class | Over (cm) | Up to (cm)
shallow | 0 | 50
deep | 50 | )"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().depth_classes.unit, Unit::centimetre);
  EXPECT_EQ(season.value().unit(Field::depth_class_over), Unit::centimetre);
}

TEST(Classes, StayInInchesInAMetricWorkbook) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|40"),
                                sheet("Start", "Unit system|metric\nDepths in|cm"), sheet("Classes", R"(
Depth class | Over | Up to
shallow | 0 | 24
deep | 24 | )"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().depth_classes.unit, Unit::inch);
}

TEST(ReadLimits, ValuesInTheirUnitsOrOthers) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"), sheet("Limits", R"(
Limit | Value | Unit | What it says
temperature_spread | 5.4 | °F |
depth_wading | 100 | cm |
temperature_lowest | -1 | °C |
visit_gap | 20 | |
length_most | 500 ft | |
depth_rise | | |)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_TRUE(s.remarks.empty()) << s.remarks[0];
  EXPECT_DOUBLE_EQ(s.limits[Limit::temperature_spread], 3); // a difference: 5.4 / 1.8
  EXPECT_DOUBLE_EQ(s.limits[Limit::depth_wading], 1);
  EXPECT_DOUBLE_EQ(s.limits[Limit::temperature_lowest], -1);
  EXPECT_DOUBLE_EQ(s.limits[Limit::visit_gap], 20);
  EXPECT_DOUBLE_EQ(s.limits[Limit::length_most], 152.4);
  EXPECT_DOUBLE_EQ(s.limits[Limit::depth_rise], 0.3);
}

TEST(ReadLimits, WhatMakesNoSenseIsToldAndTheUsualValueTaken) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"), sheet("Limits", R"(
Limit | Value | Unit
depth_wading | -3 | in
depth_most | 3 | °C
depth_rise | a lot | mm
my_own | 3 |)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_EQ(s.remarks.size(), 4u);
  EXPECT_DOUBLE_EQ(s.limits[Limit::depth_wading], 0.9144);
  EXPECT_DOUBLE_EQ(s.limits[Limit::depth_most], 5);
  EXPECT_TRUE(mentions(s.remarks, "Limits.A5: there is no limit called \"my_own\""));
}

TEST(ReadSpecies, TheWorkbooksTableReplacesTheUsualOne) {
  Table table = sheet("Species", R"(
Species | Seen as | From day | To day | At most
Wood frog | egg masses | Feb 20 | 31 May | 500
Wood frog | larvae | 04-01 | |
Bog lemming | sideways | soon | | many)");
  table.at(2, 3) = Cell::of_date(46234); // 2026-07-31
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|5"), std::move(table));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_EQ(s.species.size(), 3u);
  EXPECT_EQ(s.species_names, (std::vector<std::string>{"Wood frog", "Bog lemming"}));
  EXPECT_EQ(s.species[0].first_day, 220);
  EXPECT_EQ(s.species[0].last_day, 531);
  EXPECT_EQ(s.species[0].most, 500);
  EXPECT_EQ(s.species[1].first_day, 401);
  EXPECT_EQ(s.species[1].last_day, 731);
  EXPECT_TRUE(s.species[1].seen_as.is(SeenAs::larvae));
  EXPECT_EQ(s.remarks.size(), 3u);
  EXPECT_FALSE(s.species[2].seen_as.typed());
}

} // namespace
} // namespace wetspell::testing
