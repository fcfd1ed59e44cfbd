// What is new, what is there already, what is to be chosen; and that a second gathering changes nothing.
#include "season_of_two.hpp"

#include <gmock/gmock.h>

namespace wetspell {
namespace {

using test::came;
using test::Rows;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const Rows& headings() {
  static const Rows rows{{"Pool", "Date", "Start", "First person", "Water", "Depth", "Notes"}};
  return rows;
}

Rows sent(Rows rows) {
  rows.insert(rows.begin(), headings()[0]);
  return rows;
}

Season season() {
  return test::season_of(test::season_visits());
}

TEST(Gathering, ANewVisitIsAddedAsTypedWithItsFileAndRow) {
  const Season before = season();
  const auto plan = plan_gathering(
      before, {},
      {came(before, "ada.ods",
            sent({{"B01", "2026-05-02", "", "AL", "standing water", "about 12", "heard frogs"}}))});
  ASSERT_THAT(plan.visits, SizeIs(1));
  const Season later = test::season_of(test::after(before, plan));
  ASSERT_EQ(later.visits.size(), 3U);
  const std::uint32_t row = later.visits[2].row;
  EXPECT_EQ(to_text(later.cell(Field::visit_depth, row)), "about 12");
  EXPECT_EQ(to_text(later.cell(Field::visit_notes, row)), "heard frogs");
  EXPECT_EQ(to_text(later.cell(Field::visit_source_file, row)), "ada.ods");
  EXPECT_EQ(to_text(later.cell(Field::visit_source_row, row)), "Visits, row 2");
  EXPECT_EQ(plan.files[0].added, 1U);
  EXPECT_THAT(plan.lines, IsEmpty());
}

TEST(Gathering, AVisitThatIsThereIsKnownHoweverItIsWritten) {
  const Season before = season();
  const auto plan =
      plan_gathering(before, {},
                     {came(before, "rowan.ods",
                           sent({{"alder", "18 April 2026", "", "rw", "Standing Water", "20 in", ""}}))});
  EXPECT_THAT(plan.visits, IsEmpty());
  EXPECT_THAT(plan.lines, IsEmpty());
  EXPECT_EQ(plan.files[0].there, 1U);
}

TEST(Gathering, TwoVersionsAreSetSideBySideAndNothingIsChanged) {
  const Season before = season();
  const auto plan = plan_gathering(
      before, {},
      {came(before, "rowan.ods", sent({{"B01", "2026-04-18", "", "RW", "", "26", "edge frozen"}}))});
  EXPECT_THAT(plan.visits, IsEmpty());
  EXPECT_THAT(plan.carried, IsEmpty());
  ASSERT_THAT(plan.lines, SizeIs(2)) << "the blank says nothing about the water";
  EXPECT_EQ(plan.lines[0].column, "Depth");
  EXPECT_EQ(plan.lines[0].season, "20");
  EXPECT_EQ(to_text(plan.lines[0].came), "26");
  EXPECT_EQ(plan.lines[0].where, "Visits, row 2");
  EXPECT_EQ(plan.lines[1].season, "");
  EXPECT_EQ(plan.files[0].to_choose, 1U);
  EXPECT_EQ(plan.open_lines(), 2U);
}

TEST(Gathering, AnotherStartIsAnotherVisitAndNoStartIsAny) {
  const Season before = season();
  const auto plan = plan_gathering(before, {},
                                   {came(before, "ada.ods",
                                         sent({{"B02", "2026-04-19", "16:00", "AL", "", "15", ""},
                                               {"B02", "2026-04-19", "", "AL", "", "14", ""},
                                               {"B02", "2026-04-19", "09:40", "RW", "", "14", ""}}))});
  ASSERT_THAT(plan.visits, SizeIs(2)) << "the afternoon, and the visit of another person";
  EXPECT_EQ(plan.files[0].there, 1U);
  EXPECT_THAT(plan.lines, IsEmpty());
}

TEST(Gathering, AFileSentTwiceAddsItsRowsOnce) {
  const Season before = season();
  const Rows rows =
      sent({{"B01", "2026-05-02", "", "AL", "", "12", ""}, {"", "2026-05-03", "", "AL", "", "9", ""}});
  const auto plan =
      plan_gathering(before, {}, {came(before, "ada (1).ods", rows), came(before, "ada.ods", rows)});
  EXPECT_THAT(plan.visits, SizeIs(2));
  EXPECT_EQ(plan.files[1].added, 0U);
  EXPECT_EQ(plan.files[1].there, 2U);
}

TEST(Gathering, ASecondGatheringChangesNothing) {
  const Season before = season();
  const Rows rows = sent({{"B01", "2026-05-02", "", "AL", "", "12", ""},
                          {"B01", "2026-04-18", "", "RW", "", "26", ""},
                          {"", "some day", "", "AL", "", "n/a", "no idea which pool"},
                          {"B02", "2026-05-02", "", "AL", "", "7 frogs", ""}});
  const auto first = plan_gathering(before, {}, {came(before, "ada.ods", rows)});
  EXPECT_THAT(first.visits, SizeIs(3));
  const Season later = test::season_of(test::after(before, first));
  const auto second = plan_gathering(later, first.lines, {came(later, "ada.ods", rows)});
  EXPECT_THAT(second.visits, IsEmpty());
  EXPECT_THAT(second.carried, IsEmpty());
  EXPECT_EQ(second.lines, first.lines);
  EXPECT_EQ(second.files[0].from_here, first.files[0].from_here);
  EXPECT_EQ(second.files[0].there, first.files[0].there);
  EXPECT_EQ(second.files[0].to_choose, 1U);
}

class Choosing : public ::testing::Test {
protected:
  Season before = season();
  CameFile file = came(before, "rowan.ods", sent({{"B01", "2026-04-18", "", "RW", "", "26", ""}}));
  std::vector<ChooseLine> lines = plan_gathering(before, {}, {file}).lines;
};

TEST_F(Choosing, WhatCameInIsCarriedIntoTheSeasonOnce) {
  lines[0].choice = "Take what came in";
  const auto taken = plan_gathering(before, lines, {file});
  ASSERT_THAT(taken.carried, SizeIs(1));
  EXPECT_EQ(taken.carried[0].field, Field::visit_depth);
  EXPECT_EQ(taken.carried[0].cell, Cell::of_number(26));
  EXPECT_EQ(taken.carried[0].row, before.visits[0].row);
  EXPECT_EQ(taken.lines[0].state, LineState::taken);
  const Season later = test::season_of(test::after(before, taken));
  EXPECT_EQ(to_text(later.cell(Field::visit_depth, later.visits[0].row)), "26");
  // The version that was turned down is in the folder still, and does not come up again.
  const auto old = came(later, "rowan old.ods", sent({{"B01", "2026-04-18", "", "RW", "", "20", ""}}));
  const auto again = plan_gathering(later, taken.lines, {file, old});
  EXPECT_EQ(again.lines, taken.lines);
  EXPECT_THAT(again.carried, IsEmpty());
}

TEST_F(Choosing, AChoiceIsCarriedOutWithoutTheFile) {
  lines[0].choice = std::string(choose_came);
  EXPECT_THAT(plan_gathering(before, lines, {}).carried, SizeIs(1));
}

TEST_F(Choosing, TheSeasonsIsKeptAndNotAskedAboutAgain) {
  lines[0].choice = std::string(choose_season);
  const auto kept = plan_gathering(before, lines, {file});
  EXPECT_THAT(kept.carried, IsEmpty());
  ASSERT_THAT(kept.lines, SizeIs(1));
  EXPECT_EQ(kept.lines[0].state, LineState::kept);
  EXPECT_EQ(kept.open_lines(), 0U);
  // A third value is another matter.
  const auto third = came(before, "rowan 3.ods", sent({{"B01", "2026-04-18", "", "RW", "", "31", ""}}));
  EXPECT_EQ(plan_gathering(before, kept.lines, {file, third}).open_lines(), 1U);
}

TEST_F(Choosing, OtherWordsChooseNothingAndStay) {
  lines[0].choice = "ask Rowan";
  const auto plan = plan_gathering(before, lines, {file});
  EXPECT_EQ(plan.lines, lines);
  EXPECT_THAT(plan.carried, IsEmpty());
}

TEST_F(Choosing, NothingIsCarriedOverAValueThatWasNotShown) {
  lines[0].choice = std::string(choose_came);
  Rows visits = test::season_visits();
  visits[1][5] = "22"; // somebody typed into the season since
  const Season edited = test::season_of(visits);
  const auto plan = plan_gathering(edited, lines, {file});
  EXPECT_THAT(plan.carried, IsEmpty());
  EXPECT_EQ(plan.lines[0].state, LineState::again);
  EXPECT_EQ(plan.lines[0].choice, "");
  EXPECT_EQ(plan.lines[0].season, "22");
}

TEST_F(Choosing, ALineIsClosedWhenTheSeasonSaysTheSame) {
  Rows visits = test::season_visits();
  visits[1][5] = "26";
  const Season edited = test::season_of(visits);
  EXPECT_EQ(plan_gathering(edited, lines, {file}).lines[0].state, LineState::no_longer);
}

TEST_F(Choosing, LinesComeBackFromTheirSheet) {
  lines[0].choice = "ask Rowan";
  lines.push_back(lines[0]);
  lines.back().came = Cell::of_date(46130);
  lines.back().state = LineState::kept;
  lines.push_back(lines[0]);
  lines.back().came = Cell::of_date(0.4027777777777778);
  const auto back = choose_lines(choose_table(lines));
  ASSERT_THAT(back, SizeIs(3));
  EXPECT_EQ(back[0], lines[0]);
  EXPECT_EQ(back[1], lines[1]);
  EXPECT_NEAR(back[2].came.number(), lines[2].came.number(), 1e-9);
}

TEST(Gathering, ARowWhoseDayWasCorrectedInTheSeasonIsTheSameVisit) {
  Rows visits = test::season_visits();
  visits[1][7] = "rowan.ods";
  visits[1][8] = "Visits, row 2";
  const Season corrected = test::season_of(visits);
  const auto plan = plan_gathering(
      corrected, {}, {came(corrected, "rowan.ods", sent({{"B01", "2026-04-08", "", "RW", "", "20", ""}}))});
  EXPECT_THAT(plan.visits, IsEmpty());
  ASSERT_THAT(plan.lines, SizeIs(1));
  EXPECT_EQ(plan.lines[0].column, "Date");
}

TEST(Gathering, ARowPutInAboveOthersDoesNotMoveThem) {
  const Season before = season();
  const Rows one = sent({{"B01", "2026-05-02", "", "AL", "", "12", ""}});
  const auto first = plan_gathering(before, {}, {came(before, "ada.ods", one)});
  const Season later = test::season_of(test::after(before, first));
  const Rows two =
      sent({{"B01", "2026-04-25", "", "AL", "", "15", ""}, {"B01", "2026-05-02", "", "AL", "", "12", ""}});
  const auto second = plan_gathering(later, first.lines, {came(later, "ada.ods", two)});
  ASSERT_THAT(second.visits, SizeIs(1));
  EXPECT_EQ(to_text(second.visits[0].cells[1]), "2026-04-25");
  EXPECT_THAT(second.lines, IsEmpty());
}

TEST(Gathering, CountsOfLifeAreToldApartByAnimalAndForm) {
  const Rows life{{"pool", "date", "person", "species", "seen_as", "by_first", "source_file", "source_row"},
                  {"B01", "2026-04-18", "RW", "wood frog", "egg masses", "14", "", ""}};
  const Season before = test::season_of(test::season_visits(), life);
  const Rows rows{{"Pool", "Date", "First person", "Species", "Seen as", "Count of first"},
                  {"B01", "2026-04-18", "RW", "wood frog", "adults", "2"},
                  {"B01", "2026-04-18", "RW", "Wood Frog", "egg masses", "17"}};
  const auto plan = plan_gathering(before, {}, {came_in("r.ods", {test::sheet("Animals", rows)}, before)});
  ASSERT_THAT(plan.life, SizeIs(1));
  ASSERT_THAT(plan.lines, SizeIs(1));
  EXPECT_EQ(plan.lines[0].visit, "B01, 2026-04-18, RW, wood frog, egg masses");
  EXPECT_EQ(plan.lines[0].season, "14");
}

} // namespace
} // namespace wetspell
