// The audit speaks in the units in which the sheets are written.
#include "audit/audit.hpp"
#include "audit/audit_tables.hpp"
#include "engine/season/sheets.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell {
namespace {

using ::testing::AllOf;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;
using testing::sheet;

template <class... Sheets> Audit audited(Sheets... sheets) {
  std::vector<Table> all;
  (all.push_back(std::move(sheets)), ...);
  return audit("old.ods", std::move(all), {nullptr, 46280});
}

std::string said_by(const Audit& audit, std::string_view rule) {
  for (const AuditFinding& each : audit.findings)
    if (each.finding.rule->name == rule)
      return each.finding.message;
  return "nothing";
}

constexpr const char* metric = R"(
Pool | Date | Water | Temp 1 (°C) | Temp 2 | Temp 3 | Depth (cm) | Length (m) | Width (m)
B01 | 2019-04-01 | wet | 6 | 6 | 14 | 30 | 20 | 10
B02 | 2019-04-02 | wet | 6 | 6 | 6 | 3210 | 20 | 10
B03 | 2019-04-03 | wet | 6 | 6 | 6 | 30 | 900 | 10
B04 | 2019-04-04 | wet | 6 | 6 | 6 | 30 | 240 | 230
)";

TEST(SpokenUnits, AMetricSheetIsSpokenOfInItsOwnUnits) {
  const Audit a = audited(sheet("Old", metric));
  EXPECT_THAT(said_by(a, "one-reading-odd"), HasSubstr("8 °C"));
  EXPECT_THAT(said_by(a, "impossible-depth"), AllOf(HasSubstr("3210 cm"), EndsWith(" cm.")));
  EXPECT_THAT(said_by(a, "length-beyond-pools"), AllOf(HasSubstr("900 m"), HasSubstr("250 m")));
  EXPECT_THAT(said_by(a, "area-beyond-pools"), HasSubstr(" m²"));
  for (const AuditFinding& each : a.findings)
    EXPECT_THAT(each.finding.message, AllOf(Not(HasSubstr(" ft")), Not(HasSubstr("°F"))));
}

TEST(SpokenUnits, ACustomarySheetIsSpokenOfInItsOwnUnits) {
  const Audit a = audited(sheet("Old", R"(
Pool | Date | Water | Depth (in) | Length (ft) | Width (ft)
B01 | 2019-04-01 | wet | 3210 | 60 | 30
B02 | 2019-04-02 | wet | 12 | 9000 | 30
B03 | 2019-04-03 | wet | 12 | 60 | 30
B04 | 2019-04-04 | wet | 12 | 60 | 30
)"));
  EXPECT_THAT(said_by(a, "impossible-depth"), AllOf(HasSubstr("3210 in"), EndsWith(" in.")));
  EXPECT_THAT(said_by(a, "length-beyond-pools"), AllOf(HasSubstr("9000 ft"), Not(HasSubstr(" m "))));
}

TEST(SpokenUnits, EachKindOfQuantityHasItsOwnAndMostReadingsWin) {
  const Audit a = audited(sheet("Old", R"(
Pool | Date | Water | Depth | Length (ft) | Width (ft)
B01 | 2019-04-01 | wet | 3210 in | 60 | 30
B02 | 2019-04-02 | wet | 30 cm | 9000 | 30
B03 | 2019-04-03 | wet | 40 cm | 60 | 30
B04 | 2019-04-04 | wet | 40 cm | 60 | 30
)"));
  EXPECT_THAT(said_by(a, "impossible-depth"), AllOf(HasSubstr("3210 in"), EndsWith(" cm.")));
  EXPECT_THAT(said_by(a, "length-beyond-pools"), AllOf(HasSubstr("9000 ft"), Not(HasSubstr(" m "))));
}

TEST(SpokenUnits, ReadingsInRowsOfTheirOwnCountToo) {
  const Audit a = audited(sheet("Long", R"(
Site | Date | Parameter | Value | Units
B01 | 2019-04-01 | Depth | 3210 | cm
B02 | 2019-04-02 | Depth | 30 | cm
)"));
  EXPECT_THAT(said_by(a, "impossible-depth"), EndsWith(" cm."));
}

TEST(SpokenUnits, TheFilesOwnSettingsComeFirst) {
  const Audit a =
      audited(sheet("Start", "Unit system | US customary\nSeason (year) | 2019"), sheet("Old", metric));
  EXPECT_THAT(said_by(a, "length-beyond-pools"), HasSubstr(" ft"));
  const Audit silent =
      audited(sheet("Start", "Programme | Pools of the north\nSeason (year) | 2019"), sheet("Old", metric));
  EXPECT_THAT(said_by(silent, "length-beyond-pools"), Not(HasSubstr(" ft")));
}

TEST(SpokenUnits, TidyRowsStillCarryTheUnitThatAFreshWorkbookHasNot) {
  const Audit a = audited(sheet("Old", metric));
  const auto sheets = tidy_tables(a);
  ASSERT_EQ(sheets.size(), 1u);
  const Table& t = sheets[0].table;
  std::vector<Cell> depths;
  for (std::size_t column = 0; column < t.columns(); ++column)
    if (to_text(t.at(0, column)) == "Depth")
      depths.push_back(t.at(1, column));
  EXPECT_EQ(depths, std::vector{Cell::of_text("30 cm")});
}

} // namespace
} // namespace wetspell
