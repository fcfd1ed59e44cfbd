// How people lay out a workbook: letters that count, groups over places, means of nothing, blanks that do not
// break.

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

} // namespace
} // namespace wetspell
