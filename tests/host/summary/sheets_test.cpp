// The sheets of a summary: the engine's figures in real cells, what was left out, the typed cells as they
// were.

#include "exchange/summary_report.hpp"
#include "summary/summary_in_office.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <gmock/gmock.h>

#include <algorithm>

namespace wetspell::host {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::Contains;
using ::testing::HasSubstr;

class Summary : public ::testing::Test {
protected:
  Document document = opened(season_to_summarise());
  Desk desk{document};
};

std::size_t row_of(const Lines& lines, const std::string& pool) {
  for (std::size_t row = find(lines, "Pool").row + 1; row < lines.size(); ++row)
    if (lines[row][0].kind() == CellKind::text && lines[row][0].text() == pool)
      return row;
  ADD_FAILURE() << "no line of " << pool;
  return 0;
}

TEST_F(Summary, EveryFigureOfAPoolStandsAsANumberAndInWords) {
  const auto engine = expected(document);
  desk.call("summarise");
  const Lines lines = lines_of(document, pools_sheet);
  std::size_t numbers = 0;
  for (const PoolSummary& pool : engine->summary.pools) {
    const std::size_t row = row_of(lines, engine->season.pools[pool.pool].code);
    for (const Figure& figure : pool.figures) {
      const std::size_t at = find(lines, full_title(figure)).column;
      const Settings& settings = engine->season.settings;
      EXPECT_EQ(to_text(lines[row][at + 1]), in_words(figure, settings)) << full_name(figure);
      if (figure.spec->figured == Figured::words) {
        EXPECT_EQ(to_text(lines[row][at]), figure.words);
      } else if (!figure.value) {
        EXPECT_TRUE(lines[row][at].empty()) << full_name(figure) << ": a blank is never zero";
      } else {
        ASSERT_EQ(lines[row][at].kind(), CellKind::number) << full_name(figure);
        EXPECT_DOUBLE_EQ(lines[row][at].number(), shown(*figure.value, figure.spec->figured, settings));
        ++numbers;
      }
    }
  }
  EXPECT_GT(numbers, 10U);
}

TEST_F(Summary, UnitsStandBelowTheHeadingsAndDatesLookLikeDates) {
  desk.call("summarise");
  const Lines lines = lines_of(document, pools_sheet);
  const At deepest = find(lines, "Deepest");
  EXPECT_EQ(to_text(lines[deepest.row + 1][deepest.column]), "in");
  const At first = find(lines, "First visit");
  EXPECT_EQ(document.read(address(pools_sheet, {row_of(lines, "B01"), first.column})).text, "2026-04-18");
}

TEST_F(Summary, ThePictureShowsWetAndDry) {
  desk.call("summarise");
  const Lines lines = lines_of(document, pools_sheet);
  const std::string picture =
      to_text(lines[row_of(lines, "B01")][find(lines, "Depth over the season").column]);
  EXPECT_THAT(picture, HasSubstr("█"));
  EXPECT_THAT(picture, HasSubstr("○"));
  EXPECT_THAT(picture, HasSubstr("·"));
}

TEST_F(Summary, TheVisitsAreLinkedToTheirFirstRow) {
  desk.call("summarise");
  const Lines lines = lines_of(document, pools_sheet);
  const At rows{row_of(lines, "B07"), find(lines, "Visit rows").column};
  EXPECT_EQ(lines[rows.row][rows.column], Cell::of_number(2));
  const std::string formula = document.read(address(pools_sheet, rows)).formula;
  EXPECT_THAT(formula, HasSubstr("HYPERLINK"));
  const std::string place = at(Field::visit_pool, 1); // "Visits.A6"
  const std::string column = place.substr(7, 1), row = place.substr(8);
  EXPECT_THAT(formula, HasSubstr("$Visits.$" + column + "$" + row));
}

TEST_F(Summary, WhatIsLeftOutIsListedWithItsCellAndTheReason) {
  const auto engine = expected(document);
  desk.call("summarise");
  ASSERT_EQ(engine->summary.left_out.size(), 6U);
  const Lines lines = lines_of(document, programme_sheet);
  for (const LeftOut& out : engine->summary.left_out) {
    const At where = find(lines, to_text(out.place));
    EXPECT_THAT(document.read(address(programme_sheet, where)).formula, HasSubstr("HYPERLINK"));
    const std::vector<Cell>& line = lines[where.row];
    const auto says = [&](const std::string& words) {
      return std::any_of(line.begin(), line.end(), [&](const Cell& cell) { return to_text(cell) == words; });
    };
    EXPECT_TRUE(says(out.value)) << to_text(out.place);
    EXPECT_TRUE(says(out.why)) << out.why;
  }
}

TEST_F(Summary, TheProgrammesFiguresAreTheEngines) {
  const auto engine = expected(document);
  desk.call("summarise");
  const Lines lines = lines_of(document, programme_sheet);
  const std::size_t first = find(lines, "Figure").row + 1;
  for (std::size_t i = 0; i < engine->summary.programme.size(); ++i) {
    const ProgrammeFigure& each = engine->summary.programme[i];
    const std::vector<Cell>& line = lines.at(first + i);
    EXPECT_EQ(to_text(line[0]), full_title(each.figure));
    if (each.figure.value && each.figure.spec->figured != Figured::words) {
      EXPECT_DOUBLE_EQ(line[2].number(),
                       shown(*each.figure.value, each.figure.spec->figured, engine->season.settings));
    }
    EXPECT_EQ(line[7], Cell::of_number(static_cast<double>(each.figure.n)));
  }
  EXPECT_THAT(to_text(lines[1][0]), HasSubstr("3 pools; 8 visits that count, of 9 rows of visits"));
}

TEST(SummaryInAWindow, ChangesNothingThatWasTypedAndIsOneStep) {
  // With a window: without one the office itself cannot undo the making of a sheet.
  const Document document = opened(season_to_summarise(), office(), {.hidden = false});
  const Desk desk(document);
  const std::string before = snapshot(document, "");
  const auto sheets = document.sheetNames();
  const auto steps = document.undoTitles();
  desk.call("summarise");
  EXPECT_EQ(document.sheetNames().size(), sheets.size() + 3);
  EXPECT_EQ(document.undoTitles().size(), steps.size() + 1);
  EXPECT_EQ(document.undoTitles().front(), "Summarise the season");
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.sheetNames(), sheets);
  document.redo();
  EXPECT_THAT(document.sheetNames(), Contains(pools_sheet));
}

TEST_F(Summary, IsNoPartOfTheSeason) {
  const std::string before = desk.report("json");
  desk.call("summarise");
  EXPECT_EQ(desk.report("json"), before);
}

TEST_F(Summary, AsTextCsvAndJsonWritesNothing) {
  const auto engine = expected(document);
  const std::string before = snapshot(document, "");
  const auto steps = document.undoTitles();
  const auto summary = [&](const char* format) {
    return text(desk.call("summary", {any(format), any("season.ods")}));
  };
  EXPECT_EQ(summary("text"), summary_text(engine->season, engine->summary, "season.ods"));
  EXPECT_EQ(summary("csv"), summary_csv(engine->season, engine->summary));
  EXPECT_EQ(summary("json"), summary_json(engine->season, engine->summary, "season.ods"));
  EXPECT_THAT(refusal([&] { summary("pdf"); }), HasSubstr("text, csv or json"));
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.undoTitles(), steps);
}

TEST_F(Summary, IsPrintedWithItsHeadingsOnEveryPage) {
  desk.call("summarise");
  const Reference<css::sheet::XPrintAreas> print(document.sheet(pools_sheet), UNO_QUERY_THROW);
  EXPECT_TRUE(print->getPrintTitleRows());
  EXPECT_TRUE(print->getPrintTitleColumns());
  EXPECT_EQ(print->getTitleRows().StartRow,
            static_cast<sal_Int32>(find(lines_of(document, pools_sheet), "Pool").row));
  rtl::OUString style;
  Reference<css::beans::XPropertySet>(document.sheet(pools_sheet), UNO_QUERY_THROW)
      ->getPropertyValue("PageStyle") >>= style;
  EXPECT_EQ(style, "Wetspell wide list");
}

TEST(SummaryOfALoneTable, MakesItsPoolsFromTheVisits) {
  const Document document = Document::create(office());
  const std::vector<std::vector<std::string>> rows{{"Pool", "Date", "Depth (in)", "Water"},
                                                   {"B1", "2026-04-18", "25", "standing water"},
                                                   {"B1", "2026-05-18", "12", "standing water"},
                                                   {"B2", "2026-05-18", "0", "no standing water"}};
  for (std::size_t r = 0; r < rows.size(); ++r)
    for (std::size_t c = 0; c < rows[r].size(); ++c)
      document.type("Sheet1." + column_letters(c) + std::to_string(r + 1), rows[r][c]);
  Desk(document).call("summarise");
  const Lines lines = lines_of(document, pools_sheet);
  const std::size_t deepest = find(lines, "Deepest").column;
  EXPECT_EQ(lines[row_of(lines, "B1")][deepest], Cell::of_number(25));
  EXPECT_EQ(lines[row_of(lines, "B2")][deepest], Cell::of_number(0));
}

} // namespace
} // namespace wetspell::host
