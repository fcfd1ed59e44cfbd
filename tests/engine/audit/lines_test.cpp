// Pools and days that stand in lines above their rows.
#include "audit/map_headings.hpp"
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

/// Pool and day of every visit, as "B07 2012-04-07 0.38".
std::vector<std::string> visits(const Audit& audit) {
  std::vector<std::string> all;
  if (audit.season)
    for (const Visit& visit : audit.season->visits)
      all.push_back(fmt::format("{} {} {:.4g}", to_text(audit.season->cell(Field::visit_pool, visit.row)),
                                to_text(audit.season->cell(Field::visit_date, visit.row)), visit.depth.si));
  return all;
}

TEST(Lines, ADayAboveItsRowsIsThatOfTheRows) {
  for (const char* day :
       {"Date: April 21 2012", "Date: | April 21 2012", "Visit date: 21 April 2012", "April 21 2012"}) {
    const Audit a = audited(nullptr, sheet("Old", fmt::format(R"(
Rounds
Date: April 7 2012 | | |
Pool | Depth (cm) | Temp (C) | Notes
1 | 15 | 7 |
2 | 22 | 6 | windy
{}
Pool | Depth (cm) | Temp (C) | Notes
1 | 17 | 10 |
2 | 24 | 9 |
)",
                                                              day)));
    EXPECT_THAT(visits(a), ElementsAre("1 2012-04-07 0.15", "2 2012-04-07 0.22", "1 2012-04-21 0.17",
                                       "2 2012-04-21 0.24"))
        << day;
    EXPECT_EQ(a.rows.usable, 4u) << day;
  }
}

TEST(Lines, ADayInTheTitleIsThatOfTheTable) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Date: 4/21/2012 | | Observer: RW
Pool | Depth (cm) | Temp (C) | Notes
1 | 17 | 10 |
2 | 24 | 9 |
)"));
  EXPECT_THAT(a.tables.at(0).reason, HasSubstr("the day of all its rows is 4/21/2012"));
  EXPECT_THAT(visits(a), ElementsAre("1 2012-04-21 0.17", "2 2012-04-21 0.24"));
}

TEST(Lines, DaysOfLinesDecideTogetherWhichIsTheMonth) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Date: 4/7/2012
Pool | Depth (cm) | Temp (C)
1 | 15 | 7
Date: 4/21/2012
1 | 17 | 10
)"));
  EXPECT_THAT(a.tables.at(0).reason, HasSubstr("the days stand in lines above their rows"));
  EXPECT_THAT(visits(a), ElementsAre("1 2012-04-07 0.15", "1 2012-04-21 0.17"));
}

TEST(Lines, WhatNamesNoDayOfAVisitGivesNone) {
  for (const char* line : {"Printed: April 7 2012", "Spring 2012", "Date: unknown", "Dates: see below"})
    EXPECT_EQ(date_named_in(line), "") << line;
  const Audit a = audited(nullptr, sheet("Old", R"(
April 7 2012
Pool | Depth (cm) | Temp (C)
1 | 15 | 7
2 | 17 | 10
)"));
  EXPECT_TRUE(visits(a).empty()) << "a lone day above all may be when it was printed";
  const Audit own = audited(nullptr, sheet("Old", R"(
Date: April 7 2012
Pool | Date | Depth (cm)
1 | April 21 2012 | 15
2 | April 22 2012 | 17
)"));
  EXPECT_THAT(visits(own), ElementsAre("1 2012-04-21 0.15", "2 2012-04-22 0.17")) << "its own column counts";
}

TEST(Lines, NamesOfPoolsAboveTheirRows) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Vernal Pool
Otter Pool
date | depth | obs
2007-04-20 | 27 in | KN
2007-05-04 | 24 in | KN

Sedge Pool
date | depth | obs
2007-04-20 | 10 in | KN

Twin Pond (E)
2007-04-20 | 20 in | PW
)"));
  EXPECT_THAT(a.tables.at(0).reason, HasSubstr("the pools stand in lines above their rows"));
  EXPECT_THAT(visits(a), ElementsAre("Otter Pool 2007-04-20 0.6858", "Otter Pool 2007-05-04 0.6096",
                                     "Sedge Pool 2007-04-20 0.254", "Twin Pond (E) 2007-04-20 0.508"));
}

TEST(Lines, OneNameAloneMayBeTheTitleOfAnything) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Vernal Pool
date | depth | obs
2007-04-20 | 27 in | KN
2007-05-04 | 24 in | KN
)"));
  EXPECT_TRUE(visits(a).empty());
  for (const char* none : {"Each pool was read twice", "Pools of the North", "The depth of the Pool", "Pool",
                           "read at Otter Pool", "Water left in Pool"})
    EXPECT_EQ(pool_of_line(none), "") << none;
}

} // namespace
} // namespace wetspell
