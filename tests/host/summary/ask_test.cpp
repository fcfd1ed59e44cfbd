// The sheet 'Ask list': the engine's texts, one undo step, no part of the season.

#include "summary/summary_in_office.hpp"

#include "base/text.hpp"
#include "gather/ask_table.hpp"
#include "harness/row_height.hpp"

#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using driver::Document;
using ::testing::Contains;
using ::testing::Not;

class Asked : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};

  long ask() const {
    sal_Int32 people = -1;
    EXPECT_TRUE(desk.call("askList") >>= people);
    return people;
  }
};

TEST_F(Asked, ShowsEveryQuestionAndOneTextForEveryPerson) {
  const auto engine = expected(document);
  const auto lists = ask_lists(engine->season, engine->report);
  ASSERT_GE(lists.size(), 2U);
  EXPECT_EQ(ask(), static_cast<long>(lists.size()));
  const Table table = ask_table(engine->season, lists, Place{});
  const Lines lines = lines_of(document, "Ask list");
  const std::size_t headings = find(lines, "Person").row;
  ASSERT_EQ(lines.size(), headings + table.rows());
  for (std::size_t row = 0; row < table.rows(); ++row)
    for (std::size_t column = 0; column < ask_columns; ++column)
      EXPECT_EQ(to_text(lines[headings + row][column]), to_text(table.at(row, column)))
          << row << ", " << column;
}

TEST_F(Asked, LeadsToTheCellsAndKeepsRowsLow) {
  ask();
  const std::string cells = document.dumpStored("Ask list.A3:H12");
  EXPECT_THAT(cells, ::testing::HasSubstr("HYPERLINK"));
  ASSERT_NE(document.read("Ask list.I3").text, "");
  ASSERT_EQ(document.read("Ask list.I4").text, "");
  EXPECT_LT(rowHeight(document, "Ask list.I3"), 3 * rowHeight(document, "Ask list.I4"))
      << "a letter of many lines makes no row tall";
}

TEST_F(Asked, KeepsNotesBesideIt) {
  ask();
  document.setText("Ask list.K3", "asked on Monday");
  ask();
  EXPECT_EQ(document.read("Ask list.K3").text, "asked on Monday");
}

TEST_F(Asked, LeavesAPersonsOwnSheetOfThatNameAlone) {
  document.model()->getSheets()->insertNewByName("Ask list", 0);
  document.setText("Ask list.A1", "mine");
  ask();
  EXPECT_EQ(document.read("Ask list.A1").text, "mine");
  EXPECT_THAT(document.sheetNames(), Contains("Ask list 2"));
}

TEST_F(Asked, IsTheSameAgain) {
  ask();
  const std::string once = snapshot(document, "");
  ask();
  EXPECT_TRUE(same(snapshot(document, ""), once));
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), once)) << "the second list alone is taken back";
}

TEST(AskedInAWindow, IsOneStep) {
  // With a window: without one the office itself cannot undo the making of a sheet.
  const Document document = opened(smallSeason(), office(), {.hidden = false});
  const std::string before = snapshot(document, "");
  const auto sheets = document.sheetNames();
  const auto steps = document.undoTitles();
  Desk(document).call("askList");
  EXPECT_EQ(document.undoTitles().size(), steps.size() + 1);
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.sheetNames(), sheets);
}

TEST_F(Asked, IsNoPartOfTheSeason) {
  const std::string report = desk.report("json");
  ask();
  EXPECT_EQ(desk.report("json"), report);
}

TEST_F(Asked, StaysWhenItIsProtected) {
  ask();
  protect(document, "Ask list");
  EXPECT_THAT(refusal([&] { desk.call("askList"); }), ::testing::HasSubstr("'Ask list' is protected"));
}

TEST_F(Asked, IsInTheMenu) {
  EXPECT_THAT(document.sheetNames(), Not(Contains("Ask list")));
  document.dispatch("org.wetspell.command:askList");
  EXPECT_THAT(document.sheetNames(), Contains("Ask list"));
}

} // namespace
} // namespace wetspell::host
