// The page of one pool.

#include "summary/summary_in_office.hpp"

#include "driver/files.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <gmock/gmock.h>

#include <fstream>
#include <iterator>

namespace wetspell::host {
namespace {

using driver::Document;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::SizeIs;

class Page : public ::testing::Test {
protected:
  Document document = opened(season_to_summarise());
  Desk desk{document};

  std::string page(const std::string& code) const { return text(desk.call("poolPage", {any(code)})); }
};

TEST_F(Page, ShowsFiguresVisitsFindingsAndPhotographs) {
  const auto engine = expected(document);
  ASSERT_EQ(page("B01"), "Page of B01");
  const Lines lines = lines_of(document, "Page of B01");
  EXPECT_EQ(to_text(lines[0][0]), "Pool B01");
  for (const Figure& figure : engine->summary.pools[0].figures) {
    const At title = find(lines, full_title(figure));
    EXPECT_EQ(to_text(lines[title.row][title.column + 1]), in_words(figure, engine->season.settings));
  }
  EXPECT_EQ(find(lines, "pond_6.jpg").row, find(lines, "no standing water").row - 1);
  const At dry = find(lines, "Dry");
  const std::size_t row = find(lines, "no standing water").row;
  EXPECT_EQ(lines[row][dry.column], Cell::of_number(0));
  EXPECT_EQ(document.read(address("Page of B01", {row, dry.column})).text, "dry");
  EXPECT_TRUE(lines[row - 1][dry.column].empty());
  for (const Finding& finding : engine->report.findings) {
    if (finding.table != TableKind::visits || finding.rule->level != Level::fix ||
        engine->season.visits[finding.record].pool.index != 0)
      continue;
    EXPECT_EQ(to_text(lines[find(lines, to_text(finding.place)).row][2]), finding.message);
  }
}

TEST_F(Page, HasItsDepthsAsAChart) {
  page("B01");
  const auto depths = chart(document, "Page of B01", "Wetspell depth of the pool");
  ASSERT_TRUE(depths.is());
  EXPECT_EQ(words_of(depths).up, "Depth (in)");
  const auto values = values_of(depths);
  ASSERT_THAT(values, SizeIs(2));
  EXPECT_THAT(values[0], ElementsAre(25, 25, 14, 6, 0));
  EXPECT_EQ(values[1].back(), 0) << "the mark of a dry visit";
}

TEST_F(Page, FitsOnOnePrintedPage) {
  page("B01");
  const driver::TemporaryFolder folder("wetspell-test-");
  const auto file = folder.path() / "page.pdf";
  document.storeSheet("Page of B01", file);
  std::ifstream in(file, std::ios::binary);
  const std::string pdf{std::istreambuf_iterator<char>(in), {}};
  std::size_t pages = 0;
  for (std::size_t at = pdf.find("/Type/Page/"); at != std::string::npos;
       at = pdf.find("/Type/Page/", at + 1))
    ++pages;
  EXPECT_EQ(pages, 1U);
  document.storeSheet("Page of B01", folder.path() / "page.png");
  EXPECT_GT(std::filesystem::file_size(folder.path() / "page.png"), 5000U);
}

TEST_F(Page, IsWrittenIntoTheSameSheetAgain) {
  page("B01");
  const std::string first = snapshot(document, "");
  page("B01");
  EXPECT_TRUE(same(snapshot(document, ""), first));
  EXPECT_THAT(chart_names(document, "Page of B01"), SizeIs(1));
}

TEST(PageInAWindow, IsOneStep) {
  // With a window: without one the office itself cannot undo the making of a sheet.
  const Document document = opened(season_to_summarise(), office(), {.hidden = false});
  const std::string before = snapshot(document, "");
  const auto sheets = document.sheetNames();
  const auto steps = document.undoTitles();
  Desk(document).call("poolPage", {any("B01")});
  EXPECT_EQ(document.undoTitles().front(), "Page of B01");
  EXPECT_EQ(document.undoTitles().size(), steps.size() + 1);
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.sheetNames(), sheets);
}

TEST_F(Page, OfAPoolWithoutVisitsSaysSo) {
  document.setText(at(Field::pool_code, 3), "B/99 [new]");
  const std::string sheet = page("B/99 [new]");
  EXPECT_EQ(sheet, "Page of B-99 -new-");
  EXPECT_THAT(to_text(lines_of(document, sheet)[1][0]), HasSubstr("0 visits that count"));
  EXPECT_THAT(chart_names(document, sheet), SizeIs(0));
  EXPECT_EQ(page("B/99 [new]"), sheet);
}

TEST_F(Page, OfNoPoolOrOnAProtectedSheetIsRefused) {
  EXPECT_THAT(refusal([&] { page("Z1"); }), HasSubstr("no pool with the code 'Z1'"));
  page("B01");
  protect(document, "Page of B01");
  EXPECT_THAT(refusal([&] { page("B01"); }), HasSubstr("'Page of B01' is protected; nothing was written"));
}

TEST_F(Page, OfTheSelectedRow) {
  desk.call("summarise");
  const std::string command = "org.wetspell.command:poolPage";
  select(document, at(Field::visit_depth, 1)); // B07
  document.dispatch(command);
  EXPECT_THAT(document.sheetNames(), Contains("Page of B07"));
  select(document, at(Field::pool_name, 2));
  document.dispatch(command);
  EXPECT_THAT(document.sheetNames(), Contains("Page of B12"));
  const Lines lines = lines_of(document, pools_sheet);
  select(document, address(pools_sheet, find(lines, "B01")));
  document.dispatch(command);
  EXPECT_THAT(document.sheetNames(), Contains("Page of B01"));
  select(document, "Start.A1");
  const auto steps = document.undoTitles();
  EXPECT_THAT(refusal([&] { document.dispatch(command); }), HasSubstr("Put the cursor on a pool first"));
  EXPECT_EQ(document.undoTitles(), steps);
}

TEST_F(Page, AndTheSummaryAreCommands) {
  document.dispatch("org.wetspell.command:summarise");
  EXPECT_THAT(document.sheetNames(), Contains(pools_sheet));
}

} // namespace
} // namespace wetspell::host
