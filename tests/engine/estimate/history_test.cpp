// Which readings count: what an open `fix` takes out, what is derived from what is left, and the order of
// days.
#include "engine/check/fixture.hpp"
#include "estimate/history.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace wetspell {
namespace {

using Rows = std::vector<std::vector<std::string>>;

Season season_of(const Rows& visits) {
  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::pools, {{"pool"}, {"B01"}, {"B02"}}));
  sheets.push_back(test::fixture_table(
      TableKind::people, {{"person", "counts", "course", "run_1"}, {"RW", "paces", "100", "20"}}));
  sheets.push_back(test::fixture_table(TableKind::visits, visits));
  auto season = read_season(std::move(sheets), test::fixture_today());
  EXPECT_TRUE(season.has_value());
  return std::move(season).value();
}

const Rows headings{
    {"pool", "date", "person", "water", "depth", "depth_class", "fill", "length", "width", "size_tool"}};

Season season_with(Rows visits) {
  visits.insert(visits.begin(), headings.front());
  return season_of(visits);
}

/// A report with one open `fix` on a visit's field.
CheckReport doubted(std::uint32_t visit, Field field, TableKind table = TableKind::visits) {
  static const RuleSpec* fix = [] {
    for (const RuleSpec& rule : rules())
      if (rule.level == Level::fix)
        return &rule;
    return static_cast<const RuleSpec*>(nullptr);
  }();
  CheckReport report;
  Finding finding;
  finding.rule = fix;
  finding.table = table;
  finding.record = visit;
  finding.field = field;
  finding.value = "400";
  finding.message = "It reads 400.";
  report.findings.push_back(finding);
  return report;
}

const std::vector<std::string> ordinary{"B01", "2026-04-18", "RW",  "standing water", "25", "", "60",
                                        "62",  "31",         "tape"};

TEST(History, VisitsStandByPoolInTheOrderOfDays) {
  const Season season = season_with({ordinary,
                                     {"B02", "2026-04-20", "RW", "", "", "", "", "", "", ""},
                                     {"B01", "2026-04-04", "RW", "", "30", "", "", "", "", ""}});
  const SeasonHistory history = counted_history(season, {});
  ASSERT_EQ(history.pools.size(), 2u);
  ASSERT_EQ(history.pools[0].visits.size(), 2u);
  EXPECT_EQ(history.pools[0].visits[0].visit, 2u);
  EXPECT_EQ(history.pools[0].visits[1].visit, 0u);
  EXPECT_NEAR(history.pools[0].visits[1].depth->value, 25 * 0.0254, 1e-12);
  EXPECT_NEAR(history.pools[0].visits[1].fill->value, 0.6, 1e-12);
  EXPECT_TRUE(*history.pools[0].visits[1].wet);
  EXPECT_TRUE(*history.pools[0].visits[0].wet) << "a depth says that water stood";
  EXPECT_FALSE(history.pools[1].visits[0].wet) << "nothing was said of the water";
  EXPECT_TRUE(history.left_out.empty());
}

TEST(History, ADoubtedReadingTakesOutWhatIsDerivedFromIt) {
  const Season season = season_with({ordinary});
  const SeasonHistory history = counted_history(season, doubted(0, Field::visit_length));
  const CountedVisit& visit = history.pools[0].visits.at(0);
  EXPECT_FALSE(visit.length);
  EXPECT_FALSE(visit.area);
  EXPECT_FALSE(visit.edge);
  EXPECT_TRUE(visit.width);
  EXPECT_TRUE(visit.depth);
  ASSERT_EQ(history.left_out.size(), 1u);
  EXPECT_EQ(history.left_out[0].pool, "B01");
  EXPECT_EQ(history.left_out[0].value, "400");
  EXPECT_EQ(history.left_out[0].why, "It reads 400.");
}

TEST(History, ADoubtedDateTakesTheWholeVisitOut) {
  const Season season = season_with({ordinary});
  EXPECT_TRUE(counted_history(season, doubted(0, Field::visit_date)).pools[0].visits.empty());
}

TEST(History, AnAnsweredFindingTakesNothingOut) {
  const Season season = season_with({ordinary});
  CheckReport report = doubted(0, Field::visit_length);
  report.findings[0].settled = true;
  const SeasonHistory history = counted_history(season, report);
  EXPECT_TRUE(history.pools[0].visits.at(0).area);
  EXPECT_TRUE(history.left_out.empty());
}

TEST(History, DoubtsThatAskTakeNothingOut) {
  const Season season = season_with({ordinary});
  CheckReport report = doubted(0, Field::visit_length);
  for (const RuleSpec& rule : rules())
    if (rule.level == Level::ask)
      report.findings[0].rule = &rule;
  EXPECT_TRUE(counted_history(season, report).pools[0].visits.at(0).area);
}

TEST(History, ADoubtedCalibrationTakesOutLengthsByPaces) {
  const Season season =
      season_with({{"B01", "2026-04-18", "RW", "", "", "", "", "12 paces", "6 paces", "paces"}, ordinary});
  const SeasonHistory sure = counted_history(season, {});
  EXPECT_TRUE(sure.pools[0].visits.at(0).area);
  const SeasonHistory doubtful = counted_history(season, doubted(0, Field::person_run_1, TableKind::people));
  EXPECT_FALSE(doubtful.pools[0].visits.at(0).area);
  EXPECT_TRUE(doubtful.pools[0].visits.at(1).area) << "a tape needs no calibration";
}

TEST(History, ADryPoolIsEmptyAndAJudgedClassIsItsMiddle) {
  const Season season =
      season_with({{"B01", "2026-04-18", "RW", "no standing water", "", "", "", "", "", ""},
                   {"B01", "2026-04-25", "RW", "", "", "over 24 to 36 in", "", "", "", ""}});
  const SeasonHistory history = counted_history(season, {});
  const auto& visits = history.pools[0].visits;
  EXPECT_FALSE(*visits.at(0).wet);
  EXPECT_EQ(visits.at(0).depth->value, 0);
  EXPECT_EQ(visits.at(0).fill->value, 0);
  EXPECT_NEAR(visits.at(1).depth->value, 30 * 0.0254, 1e-12);
  EXPECT_NEAR(visits.at(1).depth->uncertainty, 6 * 0.0254 / std::sqrt(3), 1e-12);
  EXPECT_TRUE(*visits.at(1).wet);
}

} // namespace
} // namespace wetspell
