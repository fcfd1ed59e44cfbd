// A second summary writes into the same sheets, whatever they are called, and leaves what people put beside.

#include "summary/summary_in_office.hpp"

#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeMovement.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::SizeIs;

class Again : public ::testing::Test {
protected:
  Document document = opened(season_to_summarise());
  Desk desk{document};
  void SetUp() override { desk.call("summarise"); }

  void rename(const std::string& sheet, const char* name) const {
    Reference<css::container::XNamed>(document.sheet(sheet), UNO_QUERY_THROW)
        ->setName(rtl::OUString::createFromAscii(name));
  }
};

/// The column right of everything on a sheet.
std::size_t beside(const Lines& lines) {
  std::size_t width = 0;
  for (const auto& line : lines)
    width = std::max(width, line.size());
  return width;
}

TEST_F(Again, ChangesNothing) {
  const std::string first = snapshot(document, "");
  const auto charts = chart_names(document, programme_sheet);
  desk.call("summarise");
  EXPECT_TRUE(same(snapshot(document, ""), first));
  EXPECT_EQ(chart_names(document, programme_sheet), charts);
}

TEST_F(Again, FindsSheetsThatWereRenamed) {
  rename(pools_sheet, "Our pools");
  rename(programme_sheet, "For the board");
  const auto sheets = document.sheetNames();
  document.setValue(at(Field::visit_depth, 0), 31);
  desk.call("summarise");
  EXPECT_EQ(document.sheetNames(), sheets);
  const Lines lines = lines_of(document, "Our pools");
  EXPECT_EQ(lines[find(lines, "B01").row][find(lines, "Deepest").column], Cell::of_number(31));
}

TEST_F(Again, PoolsKeepTheirRowsAndWhatStandsBeside) {
  const Lines lines = lines_of(document, pools_sheet);
  const At b07{find(lines, "B07").row, beside(lines)};
  document.setText(address(pools_sheet, b07), "ask the owner");
  // A pool before the others: a line of its own below them.
  document.setText(at(Field::pool_code, 3), "A99");
  desk.call("summarise");
  const Lines after = lines_of(document, pools_sheet);
  EXPECT_EQ(find(after, "ask the owner").row, find(after, "B07").row);
  EXPECT_EQ(find(after, "A99").row, find(after, "B12").row + 1);
}

TEST_F(Again, APoolThatIsGoneLeavesItsLineOnlyToWhatStandsBeside) {
  const Lines lines = lines_of(document, pools_sheet);
  document.setText(address(pools_sheet, {find(lines, "B07").row, beside(lines)}), "ask the owner");
  for (const std::size_t row : {std::size_t{1}, std::size_t{2}})
    document.setText(at(Field::pool_code, row), "");
  desk.call("summarise");
  const Lines after = lines_of(document, pools_sheet);
  EXPECT_EQ(find(after, "no longer one of the pools").row, find(after, "B07").row);
  EXPECT_EQ(find(after, "ask the owner").row, find(after, "B07").row);
  for (const auto& line : after)
    EXPECT_NE(to_text(line[0]), "B12");
}

TEST_F(Again, WordsBelowTheProgrammeMoveWithItsEnd) {
  const Lines lines = lines_of(document, programme_sheet);
  document.setText(address(programme_sheet, {lines.size() + 1, 0}), "Seen by the board");
  document.setText(at(Field::visit_depth, 0), "one of many"); // one more reading is left out
  desk.call("summarise");
  const Lines after = lines_of(document, programme_sheet);
  EXPECT_EQ(find(after, "Seen by the board").row, lines.size() + 2);
}

/// What stands on the sheets of the summary, what is empty at the end of a row or a sheet aside.
std::string contents(const Document& document) {
  std::string all;
  for (const char* sheet : {pools_sheet, programme_sheet, numbers_sheet}) {
    std::string text = "== " + std::string(sheet) + "\n";
    for (const auto& line : lines_of(document, sheet)) {
      for (const Cell& cell : line)
        text += to_text(cell) + "\t";
      text.erase(text.find_last_not_of('\t') + 1);
      text += "\n";
    }
    all += text.erase(text.find_last_not_of('\n') + 1) + "\n";
  }
  return all;
}

TEST_F(Again, IsUndoneWithNothingLeftBehind) {
  const std::string first = contents(document);
  const std::string visits = document.dumpStored("Visits.A1:Z20");
  const auto charts = chart_names(document, programme_sheet);
  document.setText(at(Field::pool_code, 3), "A99");
  document.setText(at(Field::visit_depth, 0), ""); // a chart with one depth less is another one
  desk.call("summarise");
  EXPECT_NE(contents(document), first);
  document.undo();
  EXPECT_TRUE(same(contents(document), first));
  EXPECT_EQ(chart_names(document, programme_sheet), charts);
  document.undo();
  EXPECT_EQ(document.dumpStored("Visits.A1:Z20"), visits);
}

TEST_F(Again, AfterTheFileWasStoredAndOpened) {
  for (const char* ending : {".ods", ".xlsx"}) {
    const Document stored = reopened(document, ending);
    const auto sheets = stored.sheetNames();
    const std::size_t charts = chart_names(stored, programme_sheet).size();
    EXPECT_GE(charts, 1U) << ending;
    const std::string before = stored.dumpSheet(pools_sheet);
    Desk(stored).call("summarise");
    EXPECT_EQ(stored.sheetNames(), sheets) << ending;
    EXPECT_TRUE(same(stored.dumpSheet(pools_sheet), before)) << ending;
    EXPECT_THAT(chart_names(stored, programme_sheet), SizeIs(charts)) << ending;
  }
}

TEST_F(Again, ProtectedSheetsAreRefused) {
  for (const char* sheet : {pools_sheet, programme_sheet, numbers_sheet}) {
    const Reference<css::util::XProtectable> guard(document.sheet(sheet), UNO_QUERY_THROW);
    guard->protect("");
    const std::string before = snapshot(document, "");
    const auto steps = document.undoTitles();
    EXPECT_THAT(refusal([&] { desk.call("summarise"); }),
                AllOf(HasSubstr(sheet), HasSubstr("is protected; nothing was written")));
    EXPECT_TRUE(same(snapshot(document, ""), before));
    EXPECT_EQ(document.undoTitles(), steps);
    guard->unprotect("");
  }
}

TEST(WithoutAWindow, ASummaryIsUndoneWithItsSheetsAndCharts) {
  const Document document = opened(season_to_summarise());
  const std::string before = snapshot(document, "");
  const auto sheets = document.sheetNames();
  const Desk desk(document);
  desk.call("summarise");
  document.undo();
  EXPECT_EQ(document.sheetNames(), sheets);
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_THAT(refusal([&] { document.redo(); }), HasSubstr("run the command again"));
  desk.call("summarise");
  EXPECT_THAT(chart_names(document, programme_sheet), SizeIs(::testing::Gt(2U)));
}

TEST(Refused, NewSheetsInAWorkbookWhoseStructureIsProtected) {
  const Document document = opened(season_to_summarise());
  Reference<css::util::XProtectable>(document.model(), UNO_QUERY_THROW)->protect("");
  const auto sheets = document.sheetNames();
  EXPECT_THAT(refusal([&] { Desk(document).call("summarise"); }),
              HasSubstr("sheets are protected against changes; nothing was written"));
  EXPECT_EQ(document.sheetNames(), sheets);
}

TEST(Refused, ASheetOfTheSameNameThatIsSomebodyElses) {
  const Document document = opened(season_to_summarise());
  document.model()->getSheets()->insertNewByName("Pools this season", 0);
  document.setText("Pools this season.A1", "mine");
  Desk(document).call("summarise");
  EXPECT_EQ(document.read("Pools this season.A1").text, "mine");
  EXPECT_EQ(find(lines_of(document, "Pools this season 2"), "Pool").column, 0U);
}

} // namespace
} // namespace wetspell::host
