// Sheets that were renamed, columns that were moved, units that are others, notes in cells of numbers,
// answers.
#include "season_of_two.hpp"

#include <gmock/gmock.h>

namespace wetspell {
namespace {

using test::sheet;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

Season season() {
  return test::season_of(test::season_visits());
}

std::string at(const CameRow& row, Field field) {
  return to_text(row.cells[static_cast<std::size_t>(field) - static_cast<std::size_t>(Field::visit_pool)]);
}

TEST(CameIn, ColumnsAreFoundWhereverTheyStand) {
  const auto came = came_in("a.ods",
                            {sheet("what I saw", {{"", "my spring", "", ""},
                                                  {"", "", "", ""},
                                                  {"Remarks", "Max depth", "Day", "Pool"},
                                                  {"windy", "a hand", "2026-05-01", "B01"},
                                                  {"", "11", "2026-05-08", "B02"}})},
                            season());
  ASSERT_THAT(came.visits, SizeIs(2));
  EXPECT_EQ(came.problem, "");
  EXPECT_EQ(at(came.visits[0], Field::visit_depth), "a hand") << "a note in a cell of numbers is kept";
  EXPECT_EQ(at(came.visits[0], Field::visit_notes), "windy");
  EXPECT_EQ(at(came.visits[1], Field::visit_depth), "11");
  EXPECT_EQ(came.visits[1].where, "what I saw, row 5");
}

TEST(CameIn, ANoteInTheOnlyCellOfAColumnIsKept) {
  const auto came = came_in("a.ods",
                            {sheet("Visits", {{"Feedback", "Pool", "Date", "Depth (in)"},
                                              {"", "B01", "2026-05-01", "a hand deep"}})},
                            season());
  ASSERT_THAT(came.visits, SizeIs(1));
  EXPECT_EQ(at(came.visits[0], Field::visit_depth), "a hand deep");
  EXPECT_THAT(came.remarks, IsEmpty());
}

TEST(CameIn, NumbersInAnotherUnitTakeItAlong) {
  const auto came = came_in("a.ods",
                            {sheet("Visits", {{"Pool", "Date", "Depth (cm)"},
                                              {"B01", "2026-05-01", "28"},
                                              {"B02", "2026-05-01", "about 28"}})},
                            season());
  ASSERT_THAT(came.visits, SizeIs(2));
  EXPECT_EQ(at(came.visits[0], Field::visit_depth), "28 cm") << "the season's depths are in inches";
  EXPECT_EQ(at(came.visits[1], Field::visit_depth), "about 28 cm");
}

TEST(CameIn, WhatHasNoPlaceIsTold) {
  const auto came = came_in("a.ods",
                            {sheet("Visits", {{"Pool", "Date", "Depth", "Fill", "Shoe size"},
                                              {"B01", "2026-05-01", "9", "75%", "44"}})},
                            season());
  EXPECT_THAT(came.remarks, Contains(HasSubstr("'Shoe size'")));
  EXPECT_THAT(came.remarks,
              Contains(HasSubstr("The season's visits have no column 'Full': 1 cell was left out")));
}

TEST(CameIn, ATimeOfDayBesideADateIsTold) {
  const auto came = came_in(
      "a.ods", {sheet("Visits", {{"Pool", "Date", "Depth"}, {"B01", "2026-05-01 11:15", "9"}})}, season());
  ASSERT_THAT(came.visits, SizeIs(1));
  EXPECT_THAT(came.remarks, Contains(HasSubstr("A time of day stands beside 1 date on 'Visits'.")));
}

TEST(CameIn, WhatAPersonSetRightOfThemselvesIsTold) {
  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::people,
                                       {{"person", "name", "counts", "course", "run_1", "run_2", "run_3"},
                                        {"RW", "Rowan West", "paces", "30 m", "17", "17.5", ""},
                                        {"AL", "Ada Lund", "paces", "100", "18", "18", ""}}));
  sheets.push_back(test::fixture_table(TableKind::visits, test::season_visits()));
  const auto people = read_season(std::move(sheets), test::fixture_today());
  ASSERT_TRUE(people);
  const auto back = [&](const std::string& run_2, const std::string& run_3) {
    return came_in(
        "a.ods",
        {sheet("Visits", {{"Pool", "Date", "Depth"}, {"B01", "2026-05-01", "9"}}),
         sheet("You", {{"Person code", "Name", "Counts in", "Taped course (ft)", "Run 1", "Run 2", "Run 3"},
                       {"rw", "Rowan West", "paces", "98.4252", "17", run_2, run_3}})},
        people.value());
  };
  EXPECT_THAT(back("17.5", "").remarks, IsEmpty()) << "a course in another unit is the same course";
  EXPECT_THAT(back("", "").remarks, IsEmpty()) << "a blank says nothing";
  EXPECT_THAT(back("18.5", "19").remarks,
              ElementsAre(HasSubstr("Run 2 of RW is '18.5' in the file and '17.5' in the season"),
                          HasSubstr("Run 3 of RW is '19' in the file and blank in the season")));
}

TEST(CameIn, WhatAHandoutBearsBesideRowsIsNoLoss) {
  const auto came = came_in(
      "a.ods",
      {sheet("Read first", {{"How to measure", "Three readings"}, {"Depth", "At the deepest"}}),
       sheet("Visits", {{"Feedback", "Pool", "Date", "Depth"}, {"Read again?", "B01", "2026-05-01", "9"}})},
      season());
  EXPECT_THAT(came.visits, SizeIs(1));
  EXPECT_THAT(came.remarks, IsEmpty());
}

TEST(CameIn, AnswersAreTakenFromTheSheetOfQuestions) {
  const auto came =
      came_in("a.ods",
              {sheet("my answers", {{"Questions to Ada", "", "", ""},
                                    {"Key", "Pool", "Question", "Answer"},
                                    {"00ff00ff00ff00ff", "B01", "Is it right?", "right as it is"},
                                    {"00ff00ff00ff00fe", "B02", "Is it right?", ""}})},
              season());
  EXPECT_EQ(came.problem, "") << "answers alone are something";
  ASSERT_THAT(came.answers, SizeIs(1));
  EXPECT_EQ(came.answers[0].key, "00ff00ff00ff00ff");
  EXPECT_EQ(came.answers[0].text, "right as it is");
  EXPECT_THAT(came.visits, IsEmpty());
}

TEST(CameIn, AFileOfSomethingElseIsToldToBeThat) {
  const auto came = came_in("bill.ods", {sheet("Sheet1", {{"Item", "Price"}, {"Boots", "80"}})}, season());
  EXPECT_THAT(came.problem, HasSubstr("no table of visits"));
}

} // namespace
} // namespace wetspell
