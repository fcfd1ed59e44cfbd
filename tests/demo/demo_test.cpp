#include "check/check.hpp"
#include "demo/mistakes.hpp"
#include "demo/programme.hpp"
#include "demo/rounds.hpp"
#include "demo/score.hpp"
#include "demo/season_files.hpp"
#include "exchange/csv.hpp"
#include "exchange/report.hpp"

#include <gtest/gtest.h>

#include <set>

namespace wetspell::demo {
namespace {

SeasonRows made(std::uint64_t seed, bool spoiled) {
  Chance chance(seed);
  const Programme programme = invent_programme(chance);
  SeasonRows season = write_season(programme, chance);
  if (spoiled)
    spoil(season, programme, chance);
  return season;
}

Season read(const SeasonRows& rows) {
  std::vector<Table> tables;
  for (const auto& [name, text] : csv_files_of(rows))
    tables.push_back(table_from_csv(text, name.substr(0, name.find('.'))).value());
  return read_season(std::move(tables), 0).value(); // the season's own settings say what today is
}

TEST(DemoSeason, IsTheSameForTheSameSeed) {
  EXPECT_EQ(csv_files_of(made(7, true)), csv_files_of(made(7, true)));
  EXPECT_NE(csv_files_of(made(7, true)), csv_files_of(made(8, true)));
}

TEST(DemoSeason, HasTheProgrammesSize) {
  const Season season = read(made(2026, false));
  EXPECT_EQ(season.pools.size(), 40u);
  EXPECT_EQ(season.people.size(), 25u);
  EXPECT_EQ(season.visits.size(), 200u);
  EXPECT_GT(season.life.size(), 100u);
}

TEST(DemoSeason, RaisesNothingToFixOrAskWhenNothingWasSpoiled) {
  for (const std::uint64_t seed : {1, 2, 3, 2026}) {
    const Season season = read(made(seed, false));
    const CheckReport report = check(season);
    EXPECT_EQ(report.open_fix + report.open_ask, 0u) << "seed " << seed << "\n"
                                                     << report_text(season, report, "demo");
  }
}

TEST(DemoSeason, SpoilsCellsOfEveryFamily) {
  std::set<std::string> families;
  for (const Spoiled& each : made(2026, true).spoiled)
    families.insert(each.family);
  EXPECT_EQ(families, (std::set<std::string>{"identity and time", "temperature", "depth", "fill", "size",
                                             "setting", "life", "among pools"}));
}

// The summary of the demo is only worth something while the check finds most of what was spoiled.
TEST(DemoSeason, HasItsMistakesFoundWithoutFalseAlarms) {
  for (const std::uint64_t seed : {1, 2, 3, 2026}) {
    const SeasonRows rows = made(seed, true);
    const Season season = read(rows);
    const auto result = score(spoiled_csv(rows), report_json(season, check(season), "demo"));
    ASSERT_TRUE(result) << result.error().text;
    EXPECT_GE(result.value().found, result.value().spoiled * 9 / 10) << in_words(result.value());
    EXPECT_EQ(result.value().false_alarms, 0u) << in_words(result.value());
  }
}

TEST(DemoScore, CountsWhatWasMissedAndWhatWasRaisedWithoutCause) {
  const char* spoiled = "table,row,field,pool,family,how,before,after\n"
                        "visits,1,depth,P1,depth,typed wrong,20,200\n"
                        "visits,2,fill,P2,fill,typed wrong,50,150\n";
  const char* findings = R"({"findings": [
    {"rule": "depth-decimal-slipped", "level": "fix", "table": "visits", "record": 1, "field": "depth", "pool": "P1",
     "column": "E", "row": 2, "message": "m"},
    {"rule": "overfull", "level": "fix", "table": "visits", "record": 9, "field": "fill", "pool": "P3",
     "column": "F", "row": 10, "message": "m"}]})";
  const auto result = score(spoiled, findings);
  ASSERT_TRUE(result);
  EXPECT_EQ(result.value().spoiled, 2u);
  EXPECT_EQ(result.value().found, 1u);
  EXPECT_EQ(result.value().missed.size(), 1u);
  EXPECT_EQ(result.value().false_alarms, 1u);
  EXPECT_FALSE(score(spoiled, "no json"));
}

} // namespace
} // namespace wetspell::demo
