// The check over a real workbook: what it writes, where, and that it leaves everything else alone.
// The planted mistakes are those of season_content.cpp; their cells follow from the template's layout.

#include "commands/season_in_office.hpp"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace wetspell::host {
namespace {

using driver::Document;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

class Check : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};
};

/// Rule, the cell that the finding points to, and what stands there.
using Planted = std::tuple<std::string, std::string, std::string>;
const std::vector<Planted>& planted() {
  static const std::vector<Planted> all{
      {"wider-than-long", at(Field::visit_width, 1), "62"},
      {"wrong-year", at(Field::visit_date, 2), "2025-04-20"},
      {"end-before-start", at(Field::visit_end, 3), "09:40"},
      {"temperature-decimal-slipped", at(Field::visit_temperature_2, 4), "515"},
      {"unknown-person", at(Field::visit_person, 5), "KLUUG"},
      {"both-over-either", at(Field::life_by_both, 0), "9"},
  };
  return all;
}

/// So many visits, each with a fill above all a basin can hold.
std::vector<TypedRow> overfull(unsigned visits) {
  std::vector<TypedRow> rows;
  for (unsigned i = 0; i < visits; ++i) {
    rows.push_back(goodVisit("B01", day(6, 1), "RW"));
    rows.back()[Field::visit_fill] = Cell::of_number(101 + i);
  }
  return rows;
}

TEST_F(Check, WritesWhatItFoundWithTheCellsItIsAbout) {
  desk.check();
  const auto rows = rowsOnSheet(document);
  for (const auto& [rule, where, value] : planted()) {
    const FindingRow row = only(rows, rule);
    EXPECT_EQ(row.at("where"), where);
    EXPECT_EQ(row.at("value"), value);
    EXPECT_EQ(row.at("level"), "fix");
    EXPECT_NE(row.at("message"), "");
    EXPECT_NE(row.at("advice"), "");
  }
  EXPECT_EQ(only(rows, "wrong-year").at("replacement"), "2026-04-20");
  EXPECT_EQ(only(rows, "unknown-person").at("replacement"), "KLUG");
  EXPECT_EQ(only(rows, "wider-than-long").at("pool"), "B07");
  EXPECT_EQ(only(rows, "wider-than-long").at("person"), "RW");
}

TEST_F(Check, WritesTheSameThatItTellsMacros) {
  desk.check();
  EXPECT_EQ(rowsOnSheet(document), desk.findings());
}

TEST_F(Check, ShowsTheDateOfTheRowAsADate) {
  desk.check();
  const std::string key = desk.finding("wider-than-long").at("key");
  const auto cell = document.read(cellOnSheet(document, key, "Date"));
  EXPECT_EQ(cell.value, day(4, 19));
  EXPECT_THAT(cell.text, HasSubstr("2026"));
}

TEST_F(Check, ChangesNothingOnOtherSheets) {
  const std::string before = snapshot(document);
  ASSERT_THAT(before, HasSubstr("KLUUG"));
  desk.check();
  EXPECT_TRUE(same(snapshot(document), before));
  desk.check();
  EXPECT_TRUE(same(snapshot(document), before));
}

TEST_F(Check, IsOneUndoStep) {
  const std::string before = snapshot(document, "");
  ASSERT_THAT(document.undoTitles(), ElementsAre());
  desk.check();
  EXPECT_THAT(document.undoTitles(), ElementsAre("Check the season"));
  const std::string after = snapshot(document, "");
  EXPECT_NE(after, before);
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_THAT(document.undoTitles(), ElementsAre());
  document.redo();
  EXPECT_TRUE(same(snapshot(document, ""), after));
}

/// In a window the office redraws while it undoes, change by change.
TEST_F(Check, IsUndoneInAWindow) {
  const Document seen = opened(smallSeason(overfull(400)), office(), {.hidden = false});
  Desk(seen).check();
  ASSERT_GT(rowsOnSheet(seen).size(), 400U);
  seen.undo();
  EXPECT_TRUE(rowsOnSheet(seen).empty());
}

TEST_F(Check, TakesAwayFindingsThatAreSettledInTheSheet) {
  desk.check();
  const std::size_t before = rowsOnSheet(document).size();
  document.setValue(at(Field::visit_temperature_2, 4), 51.5);
  desk.check();
  EXPECT_EQ(rowsOnSheet(document).size(), before - 1);
  for (const FindingRow& row : rowsOnSheet(document))
    EXPECT_NE(row.at("rule"), "temperature-decimal-slipped");
}

TEST_F(Check, CountsOpenFindingsOfALevel) {
  EXPECT_EQ(desk.open("fix"), 6);
  EXPECT_THAT(refusal([&] { desk.open("red"); }), HasSubstr("fix, ask or note, not 'red'"));
}

TEST_F(Check, KeepsAnAnswerAsLongAsTheValuesStayTheSame) {
  desk.check();
  const std::string key = desk.finding("wider-than-long").at("key");
  document.setText(cellOnSheet(document, key, "Your answer"), "right as it is");
  document.setText(cellOnSheet(document, key, "Your note"), "RW walked it again");
  EXPECT_EQ(desk.open("fix"), 5);
  desk.check();
  FindingRow row = only(rowsOnSheet(document), "wider-than-long");
  EXPECT_EQ(row.at("key"), key);
  EXPECT_EQ(row.at("answer"), "right as it is");
  EXPECT_EQ(row.at("note"), "RW walked it again");

  document.setText(at(Field::visit_notes, 1), "a note changes nothing");
  desk.check();
  EXPECT_EQ(only(rowsOnSheet(document), "wider-than-long").at("answer"), "right as it is");

  document.setValue(at(Field::visit_width, 1), 61);
  desk.check();
  row = only(rowsOnSheet(document), "wider-than-long");
  EXPECT_EQ(row.at("answer"), "");
  EXPECT_EQ(row.at("note"), "");
  EXPECT_EQ(desk.open("fix"), 6);
}

TEST_F(Check, KeepsTheAnswerInTheLastRow) {
  desk.check();
  const std::string key = rowsOnSheet(document).back().at("key");
  document.setText(cellOnSheet(document, key, "Your answer"), "right as it is");
  desk.check();
  EXPECT_EQ(rowsOnSheet(document).back().at("answer"), "right as it is");
}

TEST_F(Check, ReportsWithoutWriting) {
  const std::string before = snapshot(document, "");
  EXPECT_THAT(desk.report("text"), HasSubstr("62"));
  EXPECT_THAT(desk.report("csv"), HasSubstr("wider-than-long"));
  const auto json = nlohmann::json::parse(desk.report("json"));
  EXPECT_EQ(json.at("file"), "season.ods");
  EXPECT_EQ(json.at("rows_checked"), 3 + 2 + 6 + 1);
  const auto& all = json.at("findings");
  const auto swapped = std::find_if(all.begin(), all.end(),
                                    [](const auto& each) { return each.at("rule") == "wider-than-long"; });
  ASSERT_NE(swapped, all.end());
  EXPECT_EQ(swapped->at("sheet"), "Visits");
  EXPECT_EQ(swapped->at("row"), headingRow(TableKind::visits) + 2);
  EXPECT_EQ(onVisits(swapped->at("column").get<std::string>(), swapped->at("row").get<std::size_t>()),
            at(Field::visit_width, 1));
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_THAT(document.undoTitles(), ElementsAre());
  EXPECT_THAT(refusal([&] { desk.report("html"); }), HasSubstr("text, csv or json, not 'html'"));
}

TEST_F(Check, GivesTheFindingsAsJson) {
  const auto json = nlohmann::json::parse(desk.check());
  EXPECT_EQ(json.at("file"), "season.fods");
  EXPECT_EQ(json.at("findings").size(), desk.findings().size());
}

TEST_F(Check, SaysWhereAFindingIs) {
  desk.check();
  EXPECT_EQ(desk.cellOf(desk.finding("unknown-person").at("key")), at(Field::visit_person, 5));
  EXPECT_EQ(desk.cellOf("no such mark"), "");
}

TEST_F(Check, ClearsFindingsAndAnswersInOneStep) {
  desk.check();
  document.setText(cellOnSheet(document, desk.finding("wrong-year").at("key"), "Your note"), "asked KL");
  const std::string before = snapshot(document, "");
  const std::string others = snapshot(document);
  desk.clear();
  EXPECT_TRUE(rowsOnSheet(document).empty());
  EXPECT_TRUE(same(snapshot(document), others));
  EXPECT_EQ(document.undoTitles().front(), "Clear the findings");
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

TEST_F(Check, PrintsTheFindingsAndNotTheRowsBelow) {
  const Document longer = opened(smallSeason(overfull(60)));
  Desk(longer).check();
  const std::size_t rows = rowsOnSheet(longer).size();
  ASSERT_GT(rows, 60U);
  EXPECT_EQ(printedRows(longer, "Findings"), headingRow(TableKind::findings) + rows);
}

TEST_F(Check, MakesRoomForMoreFindingsThanWereReady) {
  const Document longer = opened(smallSeason(overfull(1100)));
  const std::string others = snapshot(longer);
  Desk on(longer);
  on.check();
  const auto rows = rowsOnSheet(longer);
  ASSERT_GT(rows.size(), 1100U);
  // What the first sheet says counts all of them.
  EXPECT_THAT(longer.dumpSheet("Start"), HasSubstr("Season check: " + std::to_string(on.open("fix"))));
  // The last row has the drop-down and the look of the first.
  const std::string last = cellOnSheet(longer, rows.back().at("key"), "Your answer");
  const std::string first = cellOnSheet(longer, rows.front().at("key"), "Your answer");
  EXPECT_EQ(lookOf(longer, last), lookOf(longer, first));
  longer.undo();
  EXPECT_TRUE(same(snapshot(longer), others));
  EXPECT_THAT(longer.undoTitles(), ElementsAre());
}

TEST(CheckOfAForeignWorkbook, GetsAFindingsSheetAtItsEnd) {
  // With a window: without one the office itself cannot undo the making of a sheet.
  const Document document = Document::create(office(), {.hidden = false});
  typeForeignSeason(document);
  const std::string before = snapshot(document);
  Desk(document).check();
  EXPECT_EQ(document.sheetNames(), (std::vector<std::string>{"Sheet1", "Findings"}));
  const FindingRow row = only(rowsOnSheet(document), "wider-than-long");
  EXPECT_EQ(row.at("where"), "Sheet1.D2");
  EXPECT_THAT(document.read(cellOnSheet(document, row.at("key"), "Date")).text, "2026-04-18");
  EXPECT_TRUE(same(snapshot(document), before));
  document.undo();
  EXPECT_EQ(document.sheetNames(), (std::vector<std::string>{"Sheet1"}));
}

} // namespace
} // namespace wetspell::host
