// The sheet 'Ask list': the engine's texts, one undo step, no part of the season.

#include "summary/summary_in_office.hpp"

#include "base/text.hpp"
#include "gather/ask_list.hpp"

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

TEST_F(Asked, ShowsOneTextForEveryPerson) {
  const auto engine = expected(document);
  const auto lists = ask_lists(engine->season, engine->report);
  ASSERT_GE(lists.size(), 2U);
  EXPECT_EQ(ask(), static_cast<long>(lists.size()));
  const Lines lines = lines_of(document, "Ask list");
  const std::size_t first = find(lines, "Person").row + 1;
  ASSERT_EQ(lines.size(), first + lists.size());
  for (std::size_t i = 0; i < lists.size(); ++i) {
    EXPECT_EQ(lines[first + i][2], Cell::of_number(static_cast<double>(lists[i].questions.size())));
    EXPECT_EQ(lines[first + i][3], Cell::of_text(ask_text(engine->season, lists[i])));
  }
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
