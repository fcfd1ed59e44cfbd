// Proposed replacements: made when asked for, each call one undo step, followed by a new check.

#include "commands/season_in_office.hpp"

#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using driver::Document;
using ::testing::HasSubstr;

class Apply : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};

  void SetUp() override { desk.check(); }
  std::string key(const std::string& rule) const { return desk.finding(rule).at("key"); }
};

TEST_F(Apply, WritesADateAsADate) {
  const std::string cell = at(Field::visit_date, 2);
  const std::string look = lookOf(document, cell);
  EXPECT_TRUE(desk.apply(key("wrong-year")));
  EXPECT_EQ(document.read(cell).value, day(4, 20));
  EXPECT_THAT(document.read(cell).text, HasSubstr("2026"));
  EXPECT_EQ(lookOf(document, cell), look);
}

TEST_F(Apply, GivesADateAFormatWhereThereWasNone) {
  const std::string cell = at(Field::visit_date, 2);
  Document plain = Document::create(office());
  plain.setText("A1", "Pool");
  plain.setText("B1", "Date");
  plain.setText("C1", "Depth (in)");
  plain.setText("D1", "Season (year)");
  plain.setText("A2", "B01");
  plain.setText("B2", "20 April 2025"); // text, as people paste it
  plain.setValue("C2", 25);
  for (unsigned row = 3; row < 6; ++row) {
    plain.setText("A" + std::to_string(row), "B01");
    plain.setText("B" + std::to_string(row), "2026-05-1" + std::to_string(row));
    plain.setValue("C" + std::to_string(row), 25);
  }
  plain.setText("F1", "Setting");
  plain.setText("G1", "Value");
  plain.setText("F2", "Season (year)");
  plain.setValue("G2", 2026);
  plain.setText("F3", "First day of the season");
  plain.setText("G3", "2026-03-15");
  plain.setText("F4", "Last day of the season");
  plain.setText("G4", "2026-08-31");
  const Desk on(plain);
  on.check();
  EXPECT_TRUE(on.apply(on.finding("wrong-year").at("key")));
  EXPECT_EQ(plain.read("B2").value, day(4, 20));
  EXPECT_EQ(plain.read("B2").text, "2026-04-20");
}

TEST_F(Apply, WritesTwoCellsWhereTwoWereSwapped) {
  EXPECT_TRUE(desk.apply(key("wider-than-long")));
  EXPECT_EQ(document.read(at(Field::visit_length, 1)).value, 62);
  EXPECT_EQ(document.read(at(Field::visit_width, 1)).value, 31);
}

TEST_F(Apply, KeepsWhatWasDoneWhileACellFunctionRefuses) {
  const std::string cell = at(Field::visit_temperature_2, 4);
  document.setFormula("Start.Y1", "=\"mud\"&" + cell);
  document.setFormula("Start.Z1", "=ORG.WETSPELL.POOL.DEPTHCLASS(Y1)");
  ASSERT_EQ(document.read("Start.Z1").error, 502) << "an exception of ours, whatever stands in the cell";
  EXPECT_TRUE(desk.apply(key("temperature-decimal-slipped")));
  EXPECT_EQ(document.read(cell).value, 51.5);
}

TEST_F(Apply, WritesTimesOfDay) {
  EXPECT_TRUE(desk.apply(key("end-before-start")));
  EXPECT_EQ(document.read(at(Field::visit_start, 3)).text, "09:40");
  EXPECT_EQ(document.read(at(Field::visit_end, 3)).text, "10:25");
}

TEST_F(Apply, WritesText) {
  EXPECT_TRUE(desk.apply(key("unknown-person")));
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUG");
}

TEST_F(Apply, IsOneUndoStepAndChecksAgain) {
  const std::string before = snapshot(document, "");
  const auto steps = document.undoTitles().size();
  desk.apply(key("wider-than-long"));
  EXPECT_EQ(document.undoTitles().size(), steps + 1);
  EXPECT_EQ(document.undoTitles().front(), "Apply proposed replacements");
  for (const FindingRow& row : rowsOnSheet(document))
    EXPECT_NE(row.at("rule"), "wider-than-long");
  EXPECT_EQ(rowsOnSheet(document), desk.findings());
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

TEST_F(Apply, MakesAllReplacementsOfALevelInOneStep) {
  const std::string before = snapshot(document, "");
  std::size_t proposed = 0;
  for (const FindingRow& row : desk.findings())
    proposed += row.at("level") == "fix" && !row.at("replacement").empty();
  ASSERT_GE(proposed, 5U);
  EXPECT_EQ(desk.applyAll("fix"), static_cast<int>(proposed));
  EXPECT_EQ(document.read(at(Field::visit_date, 2)).value, day(4, 20));
  EXPECT_EQ(document.read(at(Field::visit_width, 1)).value, 31);
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUG");
  EXPECT_EQ(document.read(at(Field::visit_temperature_2, 4)).value, 51.5);
  EXPECT_EQ(desk.open("fix"), 1) << "the count, for which nothing could be proposed";
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_THAT(refusal([&] { desk.applyAll("all"); }), HasSubstr("fix, ask or note, not 'all'"));
}

TEST_F(Apply, LeavesWhatIsRightAsItIs) {
  document.setText(cellOnSheet(document, key("wider-than-long"), "Your answer"), "right as it is");
  desk.applyAll("fix");
  EXPECT_EQ(document.read(at(Field::visit_width, 1)).value, 62);
  EXPECT_FALSE(desk.apply(key("wider-than-long")));
}

TEST_F(Apply, DoesNothingWhenTheFindingIsGoneOrProposesNothing) {
  const auto steps = document.undoTitles().size();
  EXPECT_FALSE(desk.apply("no such mark"));
  EXPECT_FALSE(desk.apply(key("both-over-either")));
  const std::string gone = key("temperature-decimal-slipped");
  document.setValue(at(Field::visit_temperature_2, 4), 51.5);
  EXPECT_FALSE(desk.apply(gone));
  EXPECT_EQ(document.undoTitles().size(), steps + 1) << "only what the test typed";
}

TEST_F(Apply, TouchesNothingButTheCellsOfTheReplacement) {
  std::string expected = snapshot(document);
  desk.apply(key("temperature-decimal-slipped"));
  const std::size_t where = expected.find("\t515\t");
  ASSERT_NE(where, std::string::npos);
  expected.replace(where, 5, "\t51.5\t");
  EXPECT_TRUE(same(snapshot(document), expected));
}

TEST(ApplyToMany, IsOneStepThatUndoTakesBackWhole) {
  std::vector<TypedRow> more;
  for (unsigned i = 0; i < 80; ++i) {
    TypedRow swapped = goodVisit("B01", day(4, 1) + i, "RW");
    swapped[Field::visit_length] = Cell::of_number(31);
    swapped[Field::visit_width] = Cell::of_number(62);
    more.push_back(swapped);
  }
  const Document document = opened(smallSeason(more));
  const Desk desk(document);
  desk.check();
  const std::string before = snapshot(document, "");
  EXPECT_GE(desk.applyAll("fix"), 80) << "160 cells, more than the office keeps in one list of changes";
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

} // namespace
} // namespace wetspell::host
