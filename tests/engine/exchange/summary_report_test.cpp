// A summary in its three forms: every figure with its unit and interval, groups, and what was left out.
#include "exchange/summary_report.hpp"

#include "engine/check/fixture.hpp"
#include "estimate/say_figure.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace wetspell {
namespace {

using ::testing::HasSubstr;

constexpr FigureSpec deepest{"deepest-test", "Deepest", Figured::depth, "", ""};
constexpr FigureSpec dried{"dried-test", "Dried", Figured::date, "", ""};
constexpr FigureSpec spell{"spell-test", "Class", Figured::words, "", ""};
constexpr FigureSpec share{"share-test", "Bred", Figured::share, "", ""};

Season season() {
  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::pools, {{"pool"}, {"B01"}}));
  sheets.push_back(test::fixture_table(TableKind::visits, {{"pool", "date"}, {"B01", "2026-04-18"}}));
  auto read = read_season(std::move(sheets), test::fixture_today());
  EXPECT_TRUE(read);
  return std::move(read).value();
}

SeasonSummary summary() {
  SeasonSummary all;
  PoolSummary pool;
  pool.figures.push_back(measured_figure(deepest, {0.508, 0.0254}, 3, 0.95));
  Figure interval = cannot_say(dried, "", 3);
  interval.low = 46187;
  interval.high = 46201;
  pool.figures.push_back(interval);
  Figure words = cannot_say(spell, "", 3);
  words.words = "short";
  pool.figures.push_back(words);
  pool.figures.push_back(cannot_say(deepest, "two visits: no estimate", 2));
  all.pools.push_back(pool);
  Figure bred = plain_figure(share, 0.25, 8);
  bred.of = "wood frog";
  all.programme.push_back({"", "", bred});
  all.programme.push_back({"Owner", "town forest", bred});
  LeftOut out;
  out.table = TableKind::visits;
  out.field = Field::visit_depth;
  out.place = {"Visits", 4, 13};
  out.pool = "B01";
  out.value = "400";
  out.why = "It reads 400 in.";
  all.left_out.push_back(out);
  return all;
}

TEST(SummaryReport, JsonHoldsEveryFigureInTheWorkbooksUnits) {
  const auto all = nlohmann::json::parse(summary_json(season(), summary(), "season.ods"));
  EXPECT_EQ(all["file"], "season.ods");
  EXPECT_EQ(all["pools"][0]["pool"], "B01");
  const auto& figures = all["pools"][0]["figures"];
  EXPECT_EQ(figures[0]["name"], "deepest-test");
  EXPECT_NEAR(figures[0]["value"].get<double>(), 20, 1e-9);
  EXPECT_NEAR(figures[0]["low"].get<double>(), 18.04, 0.005);
  EXPECT_EQ(figures[0]["unit"], "in");
  EXPECT_EQ(figures[0]["level"], 0.95);
  EXPECT_EQ(figures[0]["n"], 3);
  EXPECT_TRUE(figures[1]["value"].is_null());
  EXPECT_EQ(figures[1]["low"], "2026-06-14");
  EXPECT_EQ(figures[1]["high"], "2026-06-28");
  EXPECT_TRUE(figures[1]["level"].is_null()) << "bounds that hold for certain";
  EXPECT_EQ(figures[2]["value"], "short");
  EXPECT_EQ(figures[3]["note"], "two visits: no estimate");
  EXPECT_TRUE(all["programme"][0]["group"].is_null());
  EXPECT_EQ(all["programme"][0]["name"], "share-test: wood frog");
  EXPECT_EQ(all["programme"][1]["group"], "Owner: town forest");
  EXPECT_EQ(all["left_out"][0]["column"], "N");
  EXPECT_EQ(all["left_out"][0]["why"], "It reads 400 in.");
}

TEST(SummaryReport, TextTellsThePoolsAndWhatWasLeftOut) {
  const std::string text = summary_text(season(), summary(), "season.ods");
  EXPECT_THAT(text, HasSubstr("season.ods: 1 pool, 1 visit; 1 reading left out."));
  EXPECT_THAT(text, HasSubstr("Owner: town forest"));
  EXPECT_THAT(text, HasSubstr("20 in (18 to 22; n 3)"));
  EXPECT_THAT(text, HasSubstr("2026-06-14 to 2026-06-28 (n 3)"));
  EXPECT_THAT(text, HasSubstr("two visits: no estimate"));
  EXPECT_THAT(text, HasSubstr("Visits.N4  400  It reads 400 in."));
}

TEST(SummaryReport, CsvIsOneRowAFigure) {
  const std::string text = summary_csv(season(), summary());
  EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 7);
  EXPECT_THAT(text, HasSubstr("B01,,dried-test,Dried,,,2026-06-14,2026-06-28,,3,"));
  EXPECT_THAT(text, HasSubstr(",Owner: town forest,share-test: wood frog,Bred: wood frog,25,%,"));
}

} // namespace
} // namespace wetspell
