// The run as a whole: counting, order, answers, what happens once only, progress and stopping.
#include "check/check.hpp"
#include "check/findings_table.hpp"
#include "engine/check/fixture.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace wetspell {
namespace {

using Rows = std::vector<std::vector<std::string>>;

Season season_of(std::vector<std::pair<TableKind, Rows>> tables) {
  std::vector<Table> sheets;
  for (const auto& [kind, rows] : tables)
    sheets.push_back(test::fixture_table(kind, rows));
  auto season = read_season(std::move(sheets), test::fixture_today());
  EXPECT_TRUE(season.has_value());
  return std::move(season).value();
}

const Finding* found(const CheckReport& report, std::string_view rule) {
  for (const Finding& finding : report.findings)
    if (finding.rule->name == rule)
      return &finding;
  return nullptr;
}

const Tally& tally(const CheckReport& report, std::string_view rule) {
  return report.tallies[static_cast<std::size_t>(rule_named(rule) - rules().data())];
}

const Rows people{{"person", "name"}, {"RW", "Rowan West"}, {"AL", "Ada Lund"}};
const Rows pools{
    {"pool", "deepest", "longest", "widest"}, {"B01", "31", "60", "30"}, {"B02", "40", "80", "50"}};

TEST(Check, CleanSeasonHasNothingToFixOrAsk) {
  Rows visits{{"pool", "date", "start", "end", "person", "water", "rain", "temperature_1", "temperature_2",
               "temperature_3", "probe_depth", "depth", "depth_class", "depth_tool", "fill", "fill_class"}};
  // A pool that dries as pools do, two weeks between visits, readings that scatter by a degree or two.
  const Rows course{{"2026-04-04", "46", "47", "45.5", "28", "over 24 to 36 in", "90", "75 to 100 %"},
                    {"2026-04-18", "51", "52.5", "50.5", "25.5", "over 24 to 36 in", "80", "75 to 100 %"},
                    {"2026-05-02", "56", "57", "58", "22", "over 12 to 24 in", "70", "50 to 74 %"},
                    {"2026-05-16", "60", "61.5", "60", "17", "over 12 to 24 in", "55", "50 to 74 %"},
                    {"2026-05-30", "64", "65", "63.5", "11", "over 6 to 12 in", "35", "25 to 49 %"}};
  for (const std::string pool : {"B01", "B02"})
    for (const auto& day : course)
      visits.push_back({pool, day[0], pool == "B01" ? "9:40" : "10:50", pool == "B01" ? "10:25" : "11:30",
                        "RW", "standing water", "some rain", day[1], day[2], day[3], "6", day[4], day[5],
                        "stick", day[6], day[7]});
  visits.push_back({"B01", "2026-06-13", "9:40", "9:50", "AL", "no standing water", "no rain", "", "", "", "",
                    "", "no standing water", "", "0", "0 to 24 %"});
  const Rows settings{{"setting", "value"}, {"first_day", "2026-03-15"}, {"last_day", "2026-08-31"}};
  const Season season = season_of({{TableKind::settings, settings},
                                   {TableKind::pools, pools},
                                   {TableKind::people, people},
                                   {TableKind::visits, visits}});
  const CheckReport report = check(season);
  for (const Finding& finding : report.findings)
    EXPECT_EQ(finding.rule->level, Level::note) << finding.rule->name << ": " << finding.message;
  EXPECT_EQ(report.rows_checked, 2U + 2U + 11U);
  EXPECT_EQ(report.open_fix, 0U);
  EXPECT_EQ(report.open_ask, 0U);
}

TEST(Check, MissingColumnsAreCountedRowByRow) {
  const Season season =
      season_of({{TableKind::visits, {{"pool", "date"}, {"B01", "2026-04-18"}, {"B02", "2026-04-18"}}}});
  const CheckReport report = check(season);
  EXPECT_EQ(tally(report, "end-before-start").could_not_run, 2U);
  EXPECT_EQ(tally(report, "end-before-start").total(), 2U);
  EXPECT_EQ(tally(report, "unknown-pool").could_not_run, 2U);      // no table of pools
  for (const auto rule : {"not-liquid-water", "no-temperature"}) { // any one temperature would do
    EXPECT_EQ(tally(report, rule).could_not_run, 2U) << rule;
    EXPECT_EQ(tally(report, rule).total(), 2U) << rule;
  }
  EXPECT_EQ(tally(report, "date-missing").holds, 2U);
}

TEST(Check, EveryVisitIsCountedOnceByEveryRuleOverVisits) {
  const Season season =
      season_of({{TableKind::visits,
                  {{"pool", "date", "water", "depth", "temperature_1", "start", "end", "person", "fill"},
                   {"B01", "2026-04-18", "standing water", "20", "52", "9:00", "9:30", "RW", "50"},
                   {"B01", "sometime", "dry", "2S", "", "9:00", "", "RW", "120"},
                   {"", "2026-04-18", "", "", "not measured", "", "", "", ""}}}});
  const CheckReport report = check(season);
  for (std::size_t i = 0; i < rules().size(); ++i)
    if (std::holds_alternative<VisitRule>(rules()[i].look)) {
      EXPECT_EQ(report.tallies[i].total(), 3U) << rules()[i].name;
    }
}

TEST(Check, FindingsStandByTableRowAndLevel) {
  const Season season =
      season_of({{TableKind::visits,
                  {{"pool", "date", "water", "depth", "temperature_1"},
                   {"B09", "2026-04-18", "standing water", "", "200"},
                   {"B01", "2026-04-18", "no standing water", "12", ""}}},
                 {TableKind::pools, {{"pool", "name"}, {"B01", "Alder"}, {"B01", "Birch"}}}});
  const CheckReport report = check(season);
  std::string all;
  for (const Finding& finding : report.findings)
    all += "\n" + std::string(finding.rule->name) + ": " + finding.message;
  ASSERT_GE(report.findings.size(), 5U) << all;
  EXPECT_EQ(report.findings.front().table, TableKind::pools);
  for (std::size_t i = 1; i < report.findings.size(); ++i) {
    const Finding &a = report.findings[i - 1], &b = report.findings[i];
    EXPECT_LE(std::tuple(a.table, a.place.row, a.rule->level),
              std::tuple(b.table, b.place.row, b.rule->level));
  }
  std::size_t fails = 0;
  for (const Finding& finding : report.findings)
    fails += finding.rule->level == Level::fix;
  EXPECT_EQ(report.open_fix, fails);
}

TEST(Check, OneMistakeIsOneFinding) {
  // 64 cm typed as inches is also deeper than ever, deeper than pools are, a leap and a rise.
  const Season season = season_of({{TableKind::pools, pools},
                                   {TableKind::visits,
                                    {{"pool", "date", "depth", "rain", "water"},
                                     {"B01", "2026-04-04", "26", "no rain", "standing water"},
                                     {"B01", "2026-04-18", "64", "no rain", "standing water"},
                                     {"B01", "2026-05-02", "24", "no rain", "standing water"}}}});
  const CheckReport report = check(season);
  std::size_t about_depth = 0;
  for (const Finding& finding : report.findings)
    about_depth += finding.field == Field::visit_depth;
  EXPECT_EQ(about_depth, 1U);
  ASSERT_NE(found(report, "centimetres-as-inches"), nullptr);
  EXPECT_EQ(tally(report, "deeper-than-ever").undecided, 1U);
  EXPECT_EQ(tally(report, "depth-falls-fast").undecided, 1U);
}

TEST(Check, FindingPointsToItsCell) {
  Table visits(Place{"My visits", 4, 2}, 2, 3);
  visits.at(0, 0) = Cell::of_text("Depth");
  visits.at(0, 1) = Cell::of_text("Pool");
  visits.at(0, 2) = Cell::of_text("Date");
  visits.at(1, 0) = Cell::of_text("2S");
  visits.at(1, 1) = Cell::of_text("B01");
  visits.at(1, 2) = Cell::of_date(test::fixture_today() - 200);
  auto season = read_season({visits}, test::fixture_today());
  ASSERT_TRUE(season.has_value());
  const CheckReport report = check(season.value());
  const Finding* finding = found(report, "depth-not-read");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->place, (Place{"My visits", 5, 2}));
  EXPECT_EQ(finding->value, "2S");
  EXPECT_EQ(finding->record, 0U);
}

Season with_visits(const Rows& rows) {
  Rows visits{{"pool", "date", "person", "temperature_1"}};
  visits.insert(visits.end(), rows.begin(), rows.end());
  return season_of({{TableKind::people, people}, {TableKind::visits, visits}});
}

TEST(Answers, StayWhileTheValuesStayAndSurviveSorting) {
  const std::vector<std::string> warm{"B01", "2026-07-18", "RW", "90"},
      usual{"B02", "2026-07-18", "AL", "70"};
  const CheckReport first = check(with_visits({warm, usual}));
  ASSERT_NE(found(first, "warmer-than-usual"), nullptr);
  const std::string key = found(first, "warmer-than-usual")->key;
  const std::vector<GivenAnswer> answers{{key, "right as it is", "asked RW: full sun"}};
  CheckOptions options;
  options.answers = answers;

  const CheckReport again = check(with_visits({warm, usual}), options);
  const Finding* same = found(again, "warmer-than-usual");
  ASSERT_NE(same, nullptr);
  EXPECT_FALSE(same->open());
  EXPECT_EQ(same->note, "asked RW: full sun");
  EXPECT_EQ(again.answered, 1U);
  EXPECT_EQ(again.open_ask + 1, first.open_ask);

  EXPECT_FALSE(found(check(with_visits({usual, warm}), options), "warmer-than-usual")->open());

  auto warmer = warm;
  warmer[3] = "91";
  EXPECT_TRUE(found(check(with_visits({warmer, usual}), options), "warmer-than-usual")->open());
  auto elsewhere = warm;
  elsewhere[0] = "B07";
  EXPECT_TRUE(found(check(with_visits({elsewhere, usual}), options), "warmer-than-usual")->open());
}

TEST(Answers, OnlyRightAsItIsCloses) {
  const Rows rows{{"B01", "2026-07-18", "RW", "90"}};
  const std::string key = found(check(with_visits(rows)), "warmer-than-usual")->key;
  for (const auto& [answer, closes] : {std::pair{"right as it is", true}, std::pair{"Right as it is", true},
                                       std::pair{"corrected", false}, std::pair{"will ask", false}}) {
    const std::vector<GivenAnswer> answers{{key, answer, ""}};
    CheckOptions options;
    options.answers = answers;
    const CheckReport report = check(with_visits(rows), options);
    EXPECT_EQ(found(report, "warmer-than-usual")->open(), !closes) << answer;
    EXPECT_EQ(found(report, "warmer-than-usual")->answer, answer);
    EXPECT_EQ(report.answered, closes ? 1U : 0U);
  }
}

TEST(Answers, FollowTheOtherRowOfAComparison) {
  const auto season = [](const char* before) {
    return season_of({{TableKind::visits,
                       {{"pool", "date", "depth", "rain"},
                        {"B01", "2026-04-04", before, "no rain"},
                        {"B01", "2026-04-18", "30", "no rain"}}}});
  };
  const auto key = [&](const char* before) {
    return found(check(season(before)), "depth-rises-without-rain")->key;
  };
  EXPECT_EQ(key("10"), key("10"));
  EXPECT_NE(key("10"), key("11"));
}

TEST(Answers, GoThroughTheFindingsTable) {
  const Rows rows{{"B01", "2026-07-18", "RW", "90"}};
  const Season season = with_visits(rows);
  const CheckReport report = check(season);
  Table body = findings_table(season, report, Place{"Findings", 2, 0});
  const auto columns = fields(TableKind::findings);
  Table findings(Place{"Findings", 1, 0}, body.rows() + 1, columns.size());
  std::size_t answered_row = 0;
  for (std::size_t c = 0; c < columns.size(); ++c) {
    findings.at(0, c) = Cell::of_text(std::string(columns[c].heading));
    for (std::size_t r = 0; r < body.rows(); ++r) {
      findings.at(r + 1, c) = body.at(r, c);
      if (columns[c].field == Field::finding_rule && body.at(r, c).text() == "warmer-than-usual")
        answered_row = r + 1;
    }
  }
  ASSERT_GT(answered_row, 0U);
  for (std::size_t c = 0; c < columns.size(); ++c)
    if (columns[c].field == Field::finding_answer)
      findings.at(answered_row, c) = Cell::of_text("right as it is");

  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::people, people));
  sheets.push_back(
      test::fixture_table(TableKind::visits, {{"pool", "date", "person", "temperature_1"}, rows[0]}));
  sheets.push_back(findings);
  auto with_answers = read_season(std::move(sheets), test::fixture_today());
  ASSERT_TRUE(with_answers.has_value());
  const auto answers = answers_in(with_answers.value());
  ASSERT_EQ(answers.size(), 1U);
  CheckOptions options;
  options.answers = answers;
  EXPECT_EQ(check(with_answers.value(), options).answered, 1U);
}

TEST(FindingsTable, HoldsWhatAPersonNeeds) {
  const Season season = season_of(
      {{TableKind::visits,
        {{"pool", "date", "person", "start", "end"}, {"B01", "2026-04-18", "RW", "10:25", "9:40"}}}});
  const CheckReport report = check(season);
  const Finding* finding = found(report, "end-before-start");
  ASSERT_NE(finding, nullptr);
  const Table table = findings_table(season, report, Place{"Findings", 2, 0});
  const auto columns = fields(TableKind::findings);
  ASSERT_EQ(table.columns(), columns.size());
  ASSERT_EQ(table.rows(), report.findings.size());
  const auto row = static_cast<std::size_t>(finding - report.findings.data());
  const auto cell = [&](Field field) {
    for (std::size_t c = 0; c < columns.size(); ++c)
      if (columns[c].field == field)
        return to_text(table.at(row, c));
    return std::string("no such column");
  };
  EXPECT_EQ(cell(Field::finding_level), "fix");
  EXPECT_EQ(cell(Field::finding_rule), "end-before-start");
  EXPECT_EQ(cell(Field::finding_where), "Visits.E2");
  EXPECT_EQ(cell(Field::finding_pool), "B01");
  EXPECT_EQ(cell(Field::finding_date), "2026-04-18");
  EXPECT_EQ(cell(Field::finding_person), "RW");
  EXPECT_EQ(cell(Field::finding_value), "9:40");
  EXPECT_EQ(cell(Field::finding_replacement), "Start: 09:40; End: 10:25");
  EXPECT_EQ(cell(Field::finding_answer), "");
  EXPECT_EQ(cell(Field::finding_key), finding->key);
}

TEST(Verdict, CountsInOneSentence) {
  CheckReport report;
  report.open_fix = 3;
  report.open_ask = 12;
  report.open_note = 4;
  report.rows_checked = 187;
  report.answered = 2;
  EXPECT_EQ(verdict(report), "3 to fix, 12 to ask, 4 notes in 187 rows; 2 answered.");
  report.open_note = report.rows_checked = 1;
  EXPECT_EQ(verdict(report), "3 to fix, 12 to ask, 1 note in 1 row; 2 answered.");
  report.cancelled = true;
  EXPECT_NE(verdict(report).find("Stopped"), std::string::npos);
}

Season long_season(std::size_t visits) {
  Rows rows{{"pool", "date", "depth"}};
  for (std::size_t i = 0; i < visits; ++i)
    rows.push_back({"B01", "2026-04-18", i % 2 == 0 ? "2S" : "20"});
  return season_of({{TableKind::visits, rows}});
}

TEST(Progress, RisesToTheEnd) {
  const Season season = long_season(3000);
  std::vector<double> shares;
  CheckOptions options;
  options.progress = [&](double share) {
    shares.push_back(share);
    return true;
  };
  const CheckReport report = check(season, options);
  EXPECT_FALSE(report.cancelled);
  ASSERT_GE(shares.size(), 4U);
  EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
  EXPECT_EQ(shares.back(), 1.0);
}

TEST(Progress, StoppingKeepsWhatWasFound) {
  const Season season = long_season(6000);
  CheckOptions options;
  double stopped_at = 0;
  options.progress = [&](double share) {
    stopped_at = share;
    return share < 0.5;
  };
  const CheckReport report = check(season, options);
  EXPECT_TRUE(report.cancelled);
  EXPECT_LT(stopped_at, 1.0);
  EXPECT_FALSE(report.findings.empty());
  EXPECT_LT(report.findings.size(), check(season).findings.size());
}

// More rows than one processor is given: what is found, its order and the tallies are the same.
TEST(Check, ManyRowsAreLookedAtSideBySideAndToldInTheirOrder) {
  constexpr std::size_t rounds = 40, places = 300;
  Rows rows{{"pool", "date", "depth", "temperature_1"}};
  std::vector<std::string> wrong;
  for (std::size_t pool = 0; pool < places; ++pool)
    for (std::size_t visit = 0; visit < rounds; ++visit) {
      const bool bad = rows.size() % 997 == 0;
      if (bad)
        wrong.push_back(std::to_string(rows.size() + 1));
      rows.push_back({fmt::format("B{:03}", pool),
                      fmt::format("2026-{:02}-{:02}", 3 + visit / 20, 1 + visit % 20), "20",
                      bad ? "200" : "52"});
    }
  const CheckReport report = check(season_of({{TableKind::visits, rows}}));
  std::vector<std::string> found;
  for (const Finding& finding : report.findings)
    if (finding.message.find("200 °F cannot be") != std::string::npos)
      found.push_back(std::to_string(finding.place.row));
  EXPECT_EQ(found, wrong);
  EXPECT_TRUE(std::ranges::is_sorted(report.findings, {}, [](const Finding& f) { return f.place.row; }));
  for (std::size_t i = 0; i < rules().size(); ++i)
    if (std::holds_alternative<VisitRule>(rules()[i].look)) {
      const Tally& tally = report.tallies[i];
      EXPECT_EQ(tally.total(), places * rounds) << rules()[i].name;
    }
}

TEST(DoubtsInWords, SayWhatIsDoubtfulAboutOneRow) {
  const Season season = season_of({{TableKind::visits,
                                    {{"pool", "date", "water", "depth", "temperature_1"},
                                     {"B01", "2026-04-18", "standing water", "20", "52"},
                                     {"B02", "2026-04-18", "standing water", "0", "200"}}}});
  const SeasonView view(season);
  EXPECT_EQ(doubts_in_words(view, 0), "");
  const std::string words = doubts_in_words(view, 1);
  EXPECT_NE(words.find("200 °F cannot be the temperature of a pool"), std::string::npos) << words;
  EXPECT_NE(words.find("Standing water is noted, but the depth is 0."), std::string::npos) << words;
}

} // namespace
} // namespace wetspell
