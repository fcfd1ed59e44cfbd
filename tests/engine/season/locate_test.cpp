// Finding the tables: by headings alone, wherever they stand.
#include "engine/season/sheets.hpp"
#include "season/heading.hpp"
#include "season/locate.hpp"

#include <gtest/gtest.h>

namespace wetspell::testing {
namespace {

std::optional<Field> meaning(std::string_view text, TableKind table) {
  for (const HeadingMatch& m : read_heading(text).matches)
    if (m.table == table)
      return m.field;
  return std::nullopt;
}

TEST(Headings, CaseSignsBreaksAndRemarksAside) {
  for (const char* text : {"Temperature 1", "TEMPERATURE-1", "temperature\n1", " Temperature 1 (one end) ",
                           "Temp. 1", "temperature_1", "Temperature 1 [°C]", "Temperature 1 (one end) (°C)"})
    EXPECT_EQ(meaning(text, TableKind::visits), Field::visit_temperature_1) << text;
}

TEST(Headings, SayTheUnit) {
  EXPECT_EQ(read_heading("Depth (cm)").unit, Unit::centimetre);
  EXPECT_EQ(read_heading("Depth, in").unit, Unit::inch);
  EXPECT_EQ(read_heading("Depth in inches").unit, Unit::inch);
  EXPECT_EQ(read_heading("Depth\nin").unit, Unit::inch);
  EXPECT_EQ(read_heading("Temperature 1 °C").unit, Unit::celsius);
  EXPECT_EQ(read_heading("Full, %").unit, Unit::percent);
  EXPECT_EQ(read_heading("Depth (deepest point)").unit, Unit::none);
  EXPECT_TRUE(read_heading("Depth of the snow in March").matches.empty());
  EXPECT_TRUE(read_heading("").matches.empty());
  EXPECT_TRUE(read_heading("#").matches.empty());
}

TEST(Headings, EveryFieldIsFoundByItsOwnHeadingAndName) {
  for (const FieldSpec& s : fields()) {
    EXPECT_EQ(meaning(s.heading, s.table), s.field) << s.heading;
    EXPECT_EQ(meaning(s.name, s.table), s.field) << s.name;
  }
}

TEST(Locate, VisitsOfThreeColumnsInAnySheet) {
  const auto season = season_of(sheet("Sheet1", "Pool|Date|Depth\nB07|2026-04-18|25"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().visits.size(), 1u);
  EXPECT_FALSE(season.value().where(TableKind::life).found());
}

TEST(Locate, VisitsByTheNameOfTheFile) {
  EXPECT_TRUE(season_of(sheet("visits", "Pool|Date\nB07|2026-04-18")).has_value());
  EXPECT_TRUE(season_of(sheet("visits.csv", "Pool|Date\nB07|2026-04-18")).has_value());
  const auto nothing = season_of(sheet("Sheet1", "Pool|Date\nB07|2026-04-18"));
  ASSERT_FALSE(nothing.has_value());
  EXPECT_EQ(nothing.error().kind, ProblemKind::not_enough);
}

TEST(Locate, RefusesASeasonWithoutVisits) {
  EXPECT_FALSE(season_of().has_value());
  EXPECT_FALSE(season_of(sheet("Pools", two_pools)).has_value());
}

TEST(Locate, BelowATitleAndWithColumnsMovedAndAdded) {
  const auto season = season_of(sheet("What we saw", R"(
Our fifth season | | | | |
 | | | | |
Depth | My own column | Pool code | Weather | Date of visit | Temp 1
25 | hello | B07 | fine | 2026-04-18 | 52.5)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_EQ(s.visits.size(), 1u);
  EXPECT_EQ(s.place(Field::visit_depth, s.visits[0].row), (Place{"What we saw", 4, 0}));
  EXPECT_EQ(s.place(Field::visit_temperature_1, s.visits[0].row), (Place{"What we saw", 4, 5}));
  EXPECT_EQ(s.place(Field::visit_width, s.visits[0].row), std::nullopt);
  EXPECT_TRUE(s.has(Field::visit_date));
  EXPECT_FALSE(s.has(Field::visit_width));
  EXPECT_TRUE(s.cell(Field::visit_width, s.visits[0].row).empty());
  EXPECT_EQ(s.visits[0].temperature_1.written, 52.5);
}

TEST(Locate, TablesOneBelowAnother) {
  const auto season = season_of(sheet("All", R"(
Pools we visit
Pool code | Pool name
B07 | Split Rock
 |
B08 | Long Hollow
 |
Visits of this year
Pool | Date | Depth
B07 | 2026-04-18 | 25
B08 | 2026-04-19 | 12)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_EQ(s.pools.size(), 2u);
  EXPECT_EQ(s.pools[1].name, "Long Hollow");
  ASSERT_EQ(s.visits.size(), 2u);
  EXPECT_EQ(s.visits[1].pool.index, 1);
  EXPECT_EQ(s.visits[1].row, 9u);
}

TEST(Locate, TablesSideBySideAtDifferentHeights) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|7"), sheet("Classes", R"(
Depth class | Over | Up to | | | |
dry | 0 | 0 | | Fill class | From | To
little | 0 | 10 | | low | 0 | 49
much | 10 | | | high | 50 | 100
not known | | | | not known | |
 | | | | | |
Change these as you like. | | | | Species | From day | At most
 | | | | wood frog | March 1 | 900)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_TRUE(s.remarks.empty()) << s.remarks[0];
  ASSERT_EQ(s.depth_classes.rows.size(), 3u);
  EXPECT_EQ(s.depth_classes.rows[2].label, "much");
  ASSERT_EQ(s.fill_classes.rows.size(), 2u);
  EXPECT_EQ(s.fill_classes.rows[1].label, "high");
  ASSERT_EQ(s.species.size(), 1u);
  EXPECT_EQ(s.species[0].first_day, 301);
  EXPECT_EQ(s.species[0].most, 900);
}

TEST(Locate, AdjacentTablesWithoutAColumnBetween) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth\nB07|2026-04-18|7"), sheet("Classes", R"(
Depth class | Over | Up to | Fill class | From | To
dry | 0 | 0 | low | 0 | 49
wet | 0 | | high | 50 | 100)"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().depth_classes.rows.size(), 2u);
  EXPECT_EQ(season.value().fill_classes.rows.size(), 2u);
}

TEST(Locate, ABlankHeadingInsideATableDoesNotSplitIt) {
  const auto season = season_of(sheet("S", R"(
Pool | Date | Person | | Temperature 1 | Temperature 2 | | Depth
B07 | 2026-04-18 | RW | x | 50 | 51 | y | 12)"));
  ASSERT_TRUE(season.has_value());
  const Visit& v = season.value().visits.at(0);
  EXPECT_EQ(v.temperature_2.written, 51);
  EXPECT_EQ(v.depth.written, 12);
}

TEST(Locate, LifeAndPoolsAreNotTakenForVisits) {
  const auto season =
      season_of(sheet("One", "Pool|Date|Person|Species|Seen as|Count\nB07|2026-04-18|RW|wood frog|eggs|14"),
                sheet("Two", "Pool|Name|Latitude|Notes\nB07|Split Rock|44.1|"),
                sheet("Three", "Pool|Date|Person|Depth|Notes\nB07|2026-04-18|RW|25|fine"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  EXPECT_EQ(s.where(TableKind::life).table->sheet(), "One");
  EXPECT_EQ(s.where(TableKind::pools).table->sheet(), "Two");
  EXPECT_EQ(s.where(TableKind::visits).table->sheet(), "Three");
  EXPECT_TRUE(s.life.at(0).seen_as.is(SeenAs::egg_masses));
  EXPECT_TRUE(s.remarks.empty());
}

TEST(Locate, ASecondTableOfVisitsIsTold) {
  const auto season = season_of(sheet("Visits", "Pool|Date|Depth|Water\nB07|2026-04-18|25|yes"),
                                sheet("Copy", "Pool|Date|Depth|Water\nB07|2026-04-18|25|yes"));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().where(TableKind::visits).table->sheet(), "Visits");
  ASSERT_EQ(season.value().remarks.size(), 1u);
  EXPECT_NE(season.value().remarks[0].find("Copy.A1"), std::string::npos);
}

TEST(Locate, UnitsRowBelowTheHeadings) {
  const auto season = season_of(sheet("S", R"(
Pool | Date | Depth | Temperature 1 | Notes
 | | (cm) | °C |
B07 | 2026-04-18 | 64 | 11 |)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_EQ(s.visits.size(), 1u);
  EXPECT_DOUBLE_EQ(s.visits[0].depth.si, 0.64);
  EXPECT_DOUBLE_EQ(s.visits[0].temperature_1.si, 11);
  EXPECT_EQ(s.unit(Field::visit_depth), Unit::centimetre);
}

TEST(Locate, FindsHeadingsFarBelowALongTable) {
  std::string text = "Pool|Date|Depth";
  for (int row = 0; row < 5000; ++row)
    text += "\nB07|46130|25";
  text += "\n\nPool code|Pool name\nB07|Split Rock";
  const auto season = season_of(sheet("S", text));
  ASSERT_TRUE(season.has_value());
  EXPECT_EQ(season.value().visits.size(), 5000u);
  ASSERT_EQ(season.value().pools.size(), 1u);
  EXPECT_EQ(season.value().pools[0].name, "Split Rock");
}

} // namespace
} // namespace wetspell::testing
