#include "audit/find_tables.hpp"

#include "engine/season/sheets.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

using testing::sheet;

std::size_t records(const Block& block) {
  return block.end_data - block.first_data - block.passed.size();
}

TEST(FindTables, TellsTitlesHeadingsUnitsSumsAndBlanksApart) {
  const Table table = sheet("Old", R"(
Survey of pools, 2019
counted by the Friends

Site | Date | Depth | Temp
     | yyyy-mm-dd | cm | °C
B07 | 2019-04-01 | 30 | 6

B08 | 2019-04-02 | 41 | 7
Total | | 71 | 13
)");
  const auto blocks = find_tables(table);
  ASSERT_EQ(blocks.size(), 1u);
  const Block& block = blocks[0];
  EXPECT_EQ(block.grid.place(0, 0).row, 4u);
  EXPECT_EQ(block.titles, (std::vector<std::string>{"Survey of pools, 2019", "counted by the Friends"}));
  EXPECT_EQ(block.headings[2].text, "Depth");
  EXPECT_EQ(block.headings[2].unit, Unit::centimetre);
  EXPECT_EQ(block.headings[3].unit, Unit::celsius);
  EXPECT_EQ(records(block), 2u);
  ASSERT_EQ(block.passed.size(), 2u);
  EXPECT_EQ(block.passed[0].use, RowUse::blank);
  EXPECT_EQ(block.passed[1].use, RowUse::sums);
}

TEST(FindTables, TakesSeveralTablesSideBySideAndBelow) {
  const Table table = sheet("Old", R"(
Pool | Date | Depth (in) | | Person code | Name
B07 | 2019-04-01 | 30 | | RW | R. Wren
B08 | 2019-04-02 | 41 | | TH | T. Heron

Animals
Pool | Date | Species | Count
B07 | 2019-04-01 | wood frog | 12
)");
  const auto blocks = find_tables(table);
  ASSERT_EQ(blocks.size(), 3u);
  EXPECT_EQ(blocks[0].headings.size(), 3u);
  EXPECT_EQ(records(blocks[0]), 2u);
  EXPECT_EQ(blocks[1].headings[0].text, "Person code");
  EXPECT_EQ(blocks[1].grid.place(0, 0).column, 4u);
  EXPECT_EQ(records(blocks[1]), 2u);
  EXPECT_EQ(blocks[2].grid.place(0, 0).row, 6u);
  EXPECT_EQ(blocks[2].titles, std::vector<std::string>{"Animals"});
  EXPECT_EQ(records(blocks[2]), 1u);
}

TEST(FindTables, KeepsATableWithABlankColumnInOnePiece) {
  const auto blocks = find_tables(sheet("Old", R"(
Pool | Date | Depth | | Observer | Notes
B07 | 2019-04-01 | 30 | | RW | muddy
)"));
  ASSERT_EQ(blocks.size(), 1u);
  EXPECT_EQ(blocks[0].headings.size(), 6u);
}

TEST(FindTables, WordsInRecordsAreNoHeadings) {
  const auto blocks = find_tables(sheet("Old", R"(
Pool | Date | Water | Joined to
B07 | 2 Apr 2019 | dry | pond

B08 | 3 Apr 2019 | wet | nothing
B09 | 4 Apr 2019 | wet | a pond
)"));
  ASSERT_EQ(blocks.size(), 1u);
  EXPECT_EQ(records(blocks[0]), 3u);
}

TEST(FindTables, AColumnAVisitStandsUnderItsPool) {
  const Table table = sheet("Old", R"(
North woods 2019

Pools: the wet ones
Pool: B07
Date | 2019-04-01 | 2019-04-16 | 2019-05-02
Observer | RW | TH | RW
Depth (cm) | 41 | 38 | 30
Pool: B08
Date | 2019-04-02 | 2019-04-17
Depth (cm) | 21 | 18
)");
  const auto blocks = find_tables(table);
  ASSERT_EQ(blocks.size(), 2u);
  EXPECT_TRUE(blocks[0].grid.turned());
  EXPECT_EQ(blocks[0].titles,
            (std::vector<std::string>{"Pool: B07", "North woods 2019", "Pools: the wet ones"}));
  ASSERT_EQ(blocks[0].headings.size(), 3u);
  EXPECT_EQ(blocks[0].headings[0].text, "Date");
  EXPECT_EQ(blocks[0].grid.place(0, 0).row, 5u);
  EXPECT_EQ(records(blocks[0]), 3u);
  EXPECT_EQ(blocks[1].titles.front(), "Pool: B08");
  EXPECT_EQ(records(blocks[1]), 2u);
}

TEST(FindTables, APoolsNameAloneMakesNoColumnsOfVisits) {
  // Rows of visits below it, or a line between them.
  for (const char* text :
       {"Pool: B07\nDate | Depth | Observer\n2019-04-01 | 30 | RW\n2019-04-02 | 41 | TH",
        "Date | Depth | Observer\nPool: B07\n2019-04-01 | 30 | RW\n2019-04-02 | 41 | TH"}) {
    const auto blocks = find_tables(sheet("Old", text));
    ASSERT_EQ(blocks.size(), 1u);
    EXPECT_FALSE(blocks[0].grid.turned());
  }
  // Nothing below it that names visits.
  EXPECT_TRUE(find_tables(sheet("Old", "Pool: B07\nFlow | 12 | 14 | 13\nHead | 1 | 2 | 2")).empty());
  // Something above it: one list of names serves the whole sheet.
  const auto whole = find_tables(
      sheet("Old", "Date | 2019-04-01 | 2019-04-16\nPool: B07\nDepth (cm) | 41 | 38\nObserver | RW | TH"));
  ASSERT_EQ(whole.size(), 1u);
  EXPECT_EQ(whole[0].headings.size(), 4u);
}

TEST(FindTables, GivesNothingForNothing) {
  EXPECT_TRUE(find_tables(Table()).empty());
  EXPECT_TRUE(find_tables(Table(Place{"Empty", 1, 0}, 50, 20)).empty());
  EXPECT_TRUE(find_tables(sheet("Letter", "Dear all\n\nsee you in spring")).empty());
}

} // namespace
} // namespace wetspell
