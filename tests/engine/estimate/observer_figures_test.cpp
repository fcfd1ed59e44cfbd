// Figures of people: pairs of visits, what they say of two people, of one, and when they say nothing.
#include "engine/estimate/figures_of.hpp"

#include "engine/measure/digits.hpp"
#include "estimate/pairs.hpp"

#include <fmt/format.h>

namespace wetspell {
namespace {

using test::agrees;
using test::programme_figure;
using test::programme_words;
using test::Rows;

Season season_of(Rows visits, Rows life = {}) {
  visits.insert(visits.begin(), {"pool", "date", "person", "depth (cm)", "temperature_1 (°C)", "length (m)",
                                 "width (m)", "size_tool"});
  std::vector<std::pair<TableKind, Rows>> tables{
      {TableKind::settings, {{"setting", "value"}, {"Unit system", "metric"}}},
      {TableKind::pools, {{"pool", "notes"}, {"B01", ""}, {"B02", ""}}},
      {TableKind::people,
       {{"person", "counts", "course (m)", "run_1"},
        {"RW", "paces", "30", "20"},
        {"LM", "paces", "30", "20"},
        {"KT", "paces", "30", "20"}}},
      {TableKind::visits, visits}};
  if (!life.empty())
    tables.emplace_back(TableKind::life, life);
  return test::season_from(tables);
}

/// RW and LM at one pool on six days; LM always reads 2 cm less and later ever colder.
Rows six_days() {
  Rows rows;
  constexpr std::array depths{30, 60, 100, 20, 34, 62};
  for (int i = 0; i < 6; ++i) {
    const std::string day = fmt::format("2026-04-{:02}", 1 + 5 * i);
    const int depth = depths.at(static_cast<std::size_t>(i));
    rows.push_back(
        {"B01", day, "LM", std::to_string(depth - 2), fmt::format("{}", 10 - 0.5 * i), "8 m", "4 m", "tape"});
    rows.push_back({"B01", day, "RW", std::to_string(depth), "10", "6 paces", "3 paces", "paces"});
  }
  return rows;
}

TEST(VisitPairs, AreDifferentPeopleAtOnePoolOnOneDay) {
  const Season season = season_of({{"B01", "2026-04-01", "LM", "30", "", "", "", ""},
                                   {"B01", "2026-04-01", "RW", "31", "", "", "", ""},
                                   {"B01", "2026-04-01", "RW", "32", "", "", "", ""},
                                   {"B02", "2026-04-01", "KT", "50", "", "", "", ""},
                                   {"B01", "2026-04-02", "KT", "50", "", "", "", ""}});
  const SeasonHistory history = counted_history(season, {});
  const auto pairs = visit_pairs(history);
  ASSERT_EQ(pairs.size(), 2u) << "LM with each of RW's two, not RW with RW";
  for (const VisitPair& pair : pairs) {
    EXPECT_EQ(pair.first_person, 0) << "RW stands further up in the table of people";
    EXPECT_EQ(pair.second_person, 1);
    EXPECT_NEAR(pair.second->depth->value, 0.30, 1e-12);
  }
}

TEST(ObserverFigures, TwoPeoplesDepths) {
  const Season season = season_of(six_days());
  const SeasonSummary summary = summarise(season, {});
  const Figure* apart = programme_figure(summary, "depth-difference: RW and LM");
  ASSERT_NE(apart, nullptr);
  EXPECT_NEAR(*apart->value, 0.02, 1e-12);
  EXPECT_EQ(apart->n, 6u);
  const Figure* limits = programme_figure(summary, "depth-limits: RW and LM");
  ASSERT_NE(limits, nullptr);
  EXPECT_FALSE(limits->value);
  EXPECT_NEAR(*limits->low, 0.02, 1e-9);
  const Figure* scatter = programme_figure(summary, "depth-scatter");
  ASSERT_NE(scatter, nullptr);
  EXPECT_NEAR(*scatter->value, 0.02 / std::sqrt(2), 1e-12);
}

TEST(ObserverFigures, ClassesOfTwoPeople) {
  const Season season = season_of(six_days());
  const SeasonSummary summary = summarise(season, {});
  // 30 and 28, 60 and 58, 100 and 98, 20 and 18, 34 and 32 cm share a class; 62 and 60 do not (24 in
  // is 60.96).
  const Figure* same = programme_figure(summary, "depth-class-same");
  ASSERT_NE(same, nullptr);
  EXPECT_THAT(*same->value, agrees(5.0 / 6, 1e-12));
  const Figure* kappa = programme_figure(summary, "depth-class-kappa: RW and LM");
  ASSERT_NE(kappa, nullptr);
  EXPECT_GT(*kappa->value, 0.8);
  EXPECT_LT(*kappa->value, 1);
}

TEST(ObserverFigures, DriftOfOnePersonAgainstTheRest) {
  const Season season = season_of(six_days());
  const SeasonSummary summary = summarise(season, {});
  const Figure* drift = programme_figure(summary, "temperature-drift: LM");
  ASSERT_NE(drift, nullptr);
  EXPECT_NEAR(*drift->value, -2.5, 1e-9);
  EXPECT_NEAR(*programme_figure(summary, "temperature-drift: RW")->value, 2.5, 1e-9);
  EXPECT_NEAR(*programme_figure(summary, "depth-drift: RW")->value, 0, 1e-9);
}

TEST(ObserverFigures, PacesAgainstTape) {
  const Season season = season_of(six_days());
  const SeasonSummary summary = summarise(season, {});
  // A pace of 30/20 m: 6 paces are 9 m against 8 m taped, 3 paces 4.5 m against 4 m.
  const Figure* paces = programme_figure(summary, "paces-against-tape: RW");
  ASSERT_NE(paces, nullptr);
  EXPECT_NEAR(*paces->value, 0.125, 1e-9);
  EXPECT_EQ(paces->n, 12u);
  EXPECT_EQ(programme_figure(summary, "paces-against-tape: LM"), nullptr);
}

TEST(ObserverFigures, CountsOfTwoPeople) {
  Rows life{{"pool", "date", "person", "second_person", "species", "seen_as", "by_first", "by_second"}};
  for (int day = 1; day <= 5; ++day)
    life.push_back({"B01", fmt::format("2026-04-{:02}", day), day % 2 == 0 ? "RW" : "LM",
                    day % 2 == 0 ? "LM" : "RW", "wood frog", "egg masses", "9", "11"});
  life.push_back({"B01", "2026-04-09", "RW", "LM", "wood frog", "egg masses", "0", "0"});
  const Season season = season_of(six_days(), life);
  const SeasonSummary summary = summarise(season, {});
  const Figure* apart = programme_figure(summary, "counts-apart: RW and LM");
  ASSERT_NE(apart, nullptr);
  EXPECT_THAT(*apart->value, agrees(0.2, 1e-12));
  EXPECT_EQ(apart->n, 5u) << "nothing can be said of 0 and 0";
}

TEST(ObserverFigures, TooFewPairsSaySo) {
  Rows rows = six_days();
  rows.resize(4);
  const Season season = season_of(rows);
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(programme_words(season, summary, "depth-difference: RW and LM"), "two pairs: no estimate");
  EXPECT_EQ(programme_words(season, summary, "depth-scatter"), "two pairs: no estimate");
  EXPECT_EQ(programme_words(season, summary, "depth-drift"), "two pairs: no estimate");
  rows.resize(1);
  const Season alone = season_of(rows);
  EXPECT_EQ(programme_words(alone, summarise(alone, {}), "depth-scatter"),
            "no pool was visited by two people on one day");
}

} // namespace
} // namespace wetspell
