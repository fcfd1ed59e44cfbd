#include "check/check.hpp"
#include "demo/gather_score.hpp"
#include "demo/mistakes.hpp"
#include "demo/programme.hpp"
#include "demo/returns.hpp"
#include "demo/rounds.hpp"
#include "demo/score.hpp"
#include "demo/season_files.hpp"
#include "exchange/csv.hpp"
#include "exchange/report.hpp"
#include "exchange/tables_json.hpp"

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

std::vector<Returned> returned(std::uint64_t seed) {
  Chance chance(seed);
  const Programme programme = invent_programme(chance);
  return invent_returns(programme, chance);
}

TEST(DemoReturns, AreOfThreePeopleAndSayTwoThingsOfOneCell) {
  const std::vector<Returned> files = returned(2026);
  ASSERT_EQ(files.size(), 4u);
  std::set<std::string> people;
  for (const Returned& file : files) {
    people.insert(file.person);
    EXPECT_FALSE(file.visits.empty()) << file.file;
  }
  EXPECT_EQ(people.size(), 3u);
  const auto& first = files[2].visits;
  const auto& second = files[3].visits;
  ASSERT_EQ(first.size(), second.size());
  std::size_t different = 0;
  for (std::size_t row = 0; row < first.size(); ++row)
    for (const auto& [field, cell] : first[row])
      different += second[row].at(field) != cell;
  EXPECT_EQ(different, 1u);
}

/// The season with more visits, as an office would hand it over.
std::string line_of(SeasonRows season, const std::vector<SheetRow>& more) {
  for (const SheetRow& row : more)
    season.tables[TableKind::visits].push_back(row);
  std::vector<Table> tables;
  for (const auto& [name, text] : csv_files_of(season))
    tables.push_back(table_from_csv(text, name.substr(0, name.find('.'))).value());
  return R"({"file": "season.ods", "tables": )" + json_from_tables(tables) + "}";
}

TEST(DemoGatherScore, CountsWhatIsMissingAndWhatWasChanged) {
  SeasonRows season = made(2026, false);
  const SheetRow came{{Field::visit_pool, Cell::of_text("T01")},
                      {Field::visit_date, Cell::of_date(46140)},
                      {Field::visit_person, Cell::of_text("ANQ")},
                      {Field::visit_depth, Cell::of_text("12 cm")}};
  const std::string put_in = R"([
    {"file": "a.ods", "person": "ANQ", "answers": [{"key": "0123456789abcdef", "answer": "right as it is"}],
     "visits": [{"pool": "T01", "date": "2026-04-28", "person": "ANQ", "depth": "12 cm"}]},
    {"file": "b.ods", "person": "ANQ", "answers": [],
     "visits": [{"pool": "T01", "date": "2026-04-28", "person": "ANQ", "depth": "13 cm"}]}])";
  const std::string before = line_of(season, {});
  const auto score_of = [&](const std::string& after) {
    return score_gathering(put_in, before, after).value();
  };

  const GatherScore gathered = score_of(line_of(season, {came}));
  EXPECT_EQ(gathered.visits, 1u);
  EXPECT_EQ(gathered.visits_found, 1u);
  EXPECT_EQ(gathered.cells_found, 4u) << in_words(gathered);
  EXPECT_EQ(gathered.contradictions, 1u);
  EXPECT_EQ(gathered.contradictions_found, 0u) << "no sheet to choose on";
  EXPECT_EQ(gathered.answers_found, 0u);
  EXPECT_EQ(gathered.answers_unasked, 0u) << "it was never asked";
  EXPECT_EQ(gathered.changed, 0u);
  EXPECT_FALSE(gathered.whole());
  EXPECT_EQ(gathered.missed.size(), 2u) << in_words(gathered);

  EXPECT_EQ(score_of(before).visits_found, 0u);

  SheetRow other = came;
  other[Field::visit_depth] = Cell::of_number(12);
  EXPECT_EQ(score_of(line_of(season, {other})).cells_found, 3u) << "12 in is not 12 cm";

  season.tables[TableKind::visits][7][Field::visit_fill] = Cell::of_number(1);
  EXPECT_EQ(score_of(line_of(season, {came})).changed, 1u);
  EXPECT_FALSE(score_gathering("no json", before, before));
  EXPECT_FALSE(score_gathering(put_in, "no json", before));
}

} // namespace
} // namespace wetspell::demo
