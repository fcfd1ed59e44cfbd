// What came back is taken into the season: added, recognised, set side by side; one undo step, once.

#include "gathering/came_back.hpp"

#include <gmock/gmock.h>

#include <fstream>

namespace wetspell::host {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

constexpr std::size_t held = 6; // visits of the small season

const Lines headings{{"Pool", "Date", "First person", "Water", "Depth", "Notes"}};

Lines visits(Lines rows) {
  rows.insert(rows.begin(), headings[0]);
  return rows;
}

class Gathering : public CameBack {};

TEST_F(Gathering, AddsWhatIsNewAsTypedWithItsSource) {
  send("ada.ods", visits({{"B01", "2026-06-01", "KLUG", "standing water", "about 12", "frogs"}}),
       "my visits");
  send("rowan.xlsx", visits({{"B07", "2026-06-02", "RW", "standing water", "9", ""}}));
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 2) << told.dump(2);
  EXPECT_EQ(cell(Field::visit_depth, held), "about 12");
  EXPECT_EQ(cell(Field::visit_source_file, held), "ada.ods");
  EXPECT_EQ(cell(Field::visit_source_row, held), "my visits, row 2");
  EXPECT_EQ(document.read(at(Field::visit_date, held + 1)).value, day(6, 2));
  EXPECT_EQ(lookOf(document, at(Field::visit_date, held + 1)), lookOf(document, at(Field::visit_date, 0)));
  EXPECT_THAT(cell(Field::visit_depth_class_read, held + 1), HasSubstr("6 to 12"))
      << "rows below are ready: formulas work out what was gathered";
  EXPECT_THAT(shown("Gathered"), Contains("ada.ods|1|1|0|0|0|"));
}

TEST_F(Gathering, IsOneUndoStepAndASecondTimeNothingAtAll) {
  send("ada.ods", visits({{"B01", "2026-06-01", "KLUG", "standing water", "12", ""},
                          {"B01", "2026-04-18", "RW", "", "31", "0123"}}));
  std::ofstream(folder.path() / "empty.ods");
  const std::string before = snapshot(document, "");
  const auto steps = document.undoTitles().size();
  gather();
  EXPECT_EQ(document.undoTitles().size(), steps + 1);
  EXPECT_EQ(document.undoTitles().front(), "Gather what came back");
  const std::string after = snapshot(document, "");
  const auto told = gather();
  EXPECT_EQ(told["changed"], false) << told.dump(2);
  EXPECT_EQ(told["added"]["visits"], 0);
  EXPECT_EQ(document.undoTitles().size(), steps + 1);
  EXPECT_TRUE(same(snapshot(document, ""), after));
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  document.redo();
  EXPECT_TRUE(same(snapshot(document, ""), after));
}

TEST_F(Gathering, IsUndoneWithoutAWindowToo) {
  send("ada.ods", visits({{"B01", "2026-06-01", "KLUG", "standing water", "12", ""},
                          {"B01", "2026-04-18", "RW", "", "31", ""}}));
  const driver::Document unseen = opened(smallSeason());
  const std::string before = snapshot(unseen, "");
  EXPECT_EQ(gather(Desk(unseen))["to_choose"], 1);
  EXPECT_THAT(unseen.sheetNames(), Contains("To choose"));
  unseen.undo();
  EXPECT_TRUE(same(snapshot(unseen, ""), before));
  EXPECT_EQ(gather(Desk(unseen))["added"]["visits"], 1);
}

TEST_F(Gathering, IsRememberedInTheFile) {
  send("ada.ods", visits({{"B01", "2026-06-01", "KLUG", "standing water", "12", ""},
                          {"B01", "2026-04-18", "RW", "", "31", ""}}));
  gather();
  const driver::Document stored = reopened(document, ".ods");
  EXPECT_EQ(gather(Desk(stored))["changed"], false);
}

TEST_F(Gathering, TwoVersionsStandSideBySideUntilSomebodyChooses) {
  send("rowan.ods", visits({{"B01", "2026-04-18", "RW", "", "31", ""}}));
  const auto told = gather();
  EXPECT_EQ(told["to_choose"], 1);
  EXPECT_EQ(told["added"]["visits"], 0);
  EXPECT_EQ(document.read(at(Field::visit_depth, 0)).value, 25);
  EXPECT_THAT(
      shown("To choose"),
      Contains(StartsWith("B01, 2026-04-18, RW at 09:40|Depth|25|31|rowan.ods|Visits, row 2||to choose|")));
  document.setText("To choose.G2", "take what came in");
  EXPECT_EQ(gather()["carried"], 1);
  EXPECT_EQ(document.read(at(Field::visit_depth, 0)).value, 31);
  EXPECT_THAT(shown("To choose"), Contains(HasSubstr("|take what came in|taken|")));
  EXPECT_EQ(gather()["changed"], false);
}

TEST_F(Gathering, WhatSomebodyWroteIntoTheChoiceStays) {
  send("rowan.ods", visits({{"B01", "2026-04-18", "RW", "", "31", ""}}));
  gather();
  document.setText("To choose.G2", "asked Rowan on Monday");
  send("ada.ods", visits({{"B01", "2026-06-01", "KLUG", "standing water", "12", ""}}));
  gather();
  EXPECT_EQ(document.read("To choose.G2").text, "asked Rowan on Monday");
  EXPECT_EQ(document.read(at(Field::visit_depth, 0)).value, 25);
}

TEST_F(Gathering, MakesRoomForMoreRowsThanWereReady) {
  Lines rows;
  const std::size_t ready = lastReadyRow(TableKind::visits) - headingRow(TableKind::visits) - held;
  for (std::size_t i = 0; i < ready + 3; ++i)
    rows.push_back({"B01", "2026-06-01", "P" + std::to_string(i), "standing water", "12", ""});
  std::string csv = "Pool,Date,First person,Water,Depth,Notes\n";
  for (const auto& row : rows)
    for (std::size_t c = 0; c < row.size(); ++c)
      csv += row[c] + (c + 1 == row.size() ? "\n" : ",");
  std::ofstream(folder.path() / "many.csv") << csv;
  const std::string before = snapshot(document, "");
  EXPECT_EQ(gather()["added"]["visits"], ready + 3);
  EXPECT_EQ(cell(Field::visit_person, held + ready + 2), "P" + std::to_string(ready + 2));
  EXPECT_THAT(cell(Field::visit_depth_class_read, held + ready + 2), HasSubstr("6 to 12"));
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

/// Rows beyond those that the season workbook has ready are as ready as they.
TEST_F(Gathering, RowsBeyondThoseThatWereReadyLookLikeThem) {
  const std::size_t visitsReady = lastReadyRow(TableKind::visits) - headingRow(TableKind::visits);
  const std::size_t lifeReady = lastReadyRow(TableKind::life) - headingRow(TableKind::life);
  const auto lookOfRow = [&](TableKind table, std::size_t row) {
    std::string all;
    for (const FieldSpec& field : fields(table))
      if (field.field != Field::visit_source_file && field.field != Field::visit_source_row &&
          field.field != Field::life_source_file && field.field != Field::life_source_row)
        all += std::string(field.name) + ": " + lookOf(document, at(field.field, row)) + "\n";
    return all;
  };
  const std::string visit = lookOfRow(TableKind::visits, 0), count = lookOfRow(TableKind::life, 0);
  ASSERT_NE(lookOfRow(TableKind::visits, visitsReady), visit);
  ASSERT_NE(lookOfRow(TableKind::life, lifeReady), count);
  std::string rows = "Pool,Date,First person,Water,Depth\n",
              counts = "Pool,Date,Person,Species,Seen as,Count\n";
  for (std::size_t i = 0; i < visitsReady; ++i)
    rows += "B01,2026-06-01,V" + std::to_string(i) + ",standing water,12\n";
  for (std::size_t i = 0; i < lifeReady; ++i)
    counts += "B01,2026-06-01,L" + std::to_string(i) + ",wood frog,egg masses,12\n";
  std::ofstream(folder.path() / "visits.csv") << rows;
  std::ofstream(folder.path() / "counts.csv") << counts;
  const std::string before = snapshot(document, "");
  const auto told = gather();
  ASSERT_EQ(told["added"]["visits"], visitsReady) << told.dump(2);
  ASSERT_EQ(told["added"]["life"], lifeReady);
  std::size_t last = lifeReady;
  while (cell(Field::life_pool, last).empty())
    --last;
  ASSERT_GE(last, lifeReady) << "there were counts before";
  EXPECT_EQ(cell(Field::life_person, last), "L" + std::to_string(lifeReady - 1));
  EXPECT_EQ(lookOfRow(TableKind::life, last), count);
  EXPECT_EQ(lookOfRow(TableKind::visits, held + visitsReady - 1), visit);
  EXPECT_NE(lookOfRow(TableKind::life, last + 1), count) << "no more than are needed";
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

TEST_F(Gathering, AnswersGoToTheirFindings) {
  desk.check();
  const std::string right = only(rowsOnSheet(document), "temperature-decimal-slipped").at("key");
  const std::string other = only(rowsOnSheet(document), "unknown-person").at("key");
  send("rowan.ods",
       {{"Key", "Pool", "Question", "Answer"},
        {"'" + right, "B07", "", "right as it is"},
        {"'" + other, "B12", "", "that was me"},
        {"'0000000000000000", "B12", "", "an old question"}},
       "Questions");
  const auto told = gather();
  EXPECT_EQ(told["answered"], 2) << told.dump(2);
  EXPECT_THAT(shown("Gathered"),
              Contains(HasSubstr("1 answer is to a question that is no longer asked: 'an old "
                                 "question'.")));
  const auto rows = rowsOnSheet(document);
  EXPECT_EQ(only(rows, "temperature-decimal-slipped").at("answer"), "right as it is");
  EXPECT_EQ(only(rows, "unknown-person").at("note"), "rowan.ods: that was me");
  EXPECT_EQ(gather()["changed"], false);
  document.undo();
  EXPECT_EQ(only(rowsOnSheet(document), "unknown-person").at("note"), "");
}

TEST_F(Gathering, FilesThatCannotBeReadAreListedWithTheReason) {
  std::ofstream(folder.path() / "empty.ods");
  std::ofstream(folder.path() / "form.xlsx") << "Dear all, here is my form";
  std::ofstream(folder.path() / "photo.jpg") << "\xFF\xD8\xFF";
  send("bill.ods", {{"Item", "Price"}, {"Boots", "80"}});
  const auto told = gather();
  EXPECT_EQ(told["not_read"], 3) << told.dump(2);
  EXPECT_THAT(shown("Gathered"), Contains(HasSubstr("empty.ods||||||Not read: the file is empty")));
  EXPECT_THAT(shown("Gathered"), Contains(HasSubstr("bill.ods||||||Not read: no table of visits")));
  EXPECT_THAT(told["remarks"].dump(), HasSubstr(".jpg"));
  EXPECT_THAT(told.dump(), Not(HasSubstr("photo.jpg")));
}

TEST_F(Gathering, FoldersInsideAreToldAndNotRead) {
  std::filesystem::create_directory(folder.path() / "last year");
  std::ofstream(folder.path() / "last year" / "old.csv") << "Pool,Date,Depth\nB01,2026-06-01,12\n";
  EXPECT_THAT(refusal([&] { gather(); }), ::testing::AllOf(HasSubstr("holds no workbook"),
                                                           HasSubstr("1 folder inside it was not opened")));
  std::filesystem::copy(folder.path() / "last year" / "old.csv", folder.path() / "new.csv");
  std::filesystem::create_directory(folder.path() / "pictures");
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 1);
  EXPECT_THAT(told["remarks"].dump(), HasSubstr("2 folders inside it were not opened"));
}

TEST_F(Gathering, RefusesInWordsAndChangesNothing) {
  const std::string before = snapshot(document, "");
  EXPECT_THAT(refusal([&] { gather(); }), HasSubstr("holds no workbook"));
  {
    const driver::TemporaryFolder full("wetspell-test-");
    for (int i = 0; i <= 5000; ++i)
      std::ofstream(full.path() / ("form" + std::to_string(i) + ".csv"));
    EXPECT_THAT(refusal([&] { desk.call("gather", {any(full.path().string())}); }),
                HasSubstr("5000 are the most that are read at once; nothing was read"));
  }
  EXPECT_THAT(refusal([&] { desk.call("gather", {any("/no/such/folder")}); }), HasSubstr("/no/such/folder"));
  send("ada.ods", visits({{"B01", "2026-06-01", "KLUG", "standing water", "12", ""}}));
  protect(document, "Visits");
  EXPECT_THAT(refusal([&] { gather(); }), HasSubstr("'Visits' is protected"));
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

TEST_F(Gathering, AWorkbookWithoutColumnsForTheSourceGetsThem) {
  const driver::Document plain = driver::Document::create(office());
  plain.setText("A1", "Pool");
  plain.setText("B1", "Date");
  plain.setText("C1", "Depth (in)");
  plain.setText("A2", "B01");
  plain.type("B2", "2026-04-18");
  plain.setValue("C2", 25);
  send("ada.ods", {{"Depth", "Day", "Pool"}, {"12", "2026-06-01", "B01"}});
  const Desk on(plain);
  EXPECT_EQ(gather(on)["added"]["visits"], 1);
  EXPECT_EQ(plain.read("D1").text, "Source file");
  EXPECT_EQ(plain.read("D3").text, "ada.ods");
  EXPECT_EQ(plain.read("B3").text, "2026-06-01");
  EXPECT_EQ(gather(on)["changed"], false);
}

TEST_F(Gathering, TakesDaysAsTheyAreTypedWhereTheOfficeRuns) {
  driver::Office german(withExtension("de-DE"));
  const driver::Document plain = driver::Document::create(german);
  for (const auto& [at, words] :
       {std::pair{"A1", "Pool"}, {"B1", "Date"}, {"C1", "Depth (in)"}, {"D1", "Start"}, {"A2", "B01"}})
    plain.setText(at, words);
  plain.type("B2", "18.04.2026");
  plain.type("C2", "25,5");
  send("ada.ods", {{"Pool", "Date", "Start", "Depth"}, {"B01", "2026-06-01", "09:40", "12.5"}});
  EXPECT_EQ(gather(Desk(plain))["added"]["visits"], 1);
  EXPECT_EQ(plain.read("B3").text, "2026-06-01");
  EXPECT_EQ(plain.read("C3").text, "12,5");
  EXPECT_EQ(plain.read("D3").text, "09:40");
  plain.type("B3", "02.06.2026");
  EXPECT_EQ(plain.read("B3").value, day(6, 2));
}

} // namespace
} // namespace wetspell::host
