// Figures of wet spells: bounds instead of made-up dates, classes from bounds, the programme's curve.
#include "engine/estimate/figures_of.hpp"

#include "quantity/print.hpp"

#include <fmt/format.h>

#include <cmath>

namespace wetspell {
namespace {

using test::pool_figure;
using test::programme_figure;
using test::programme_words;
using test::Rows;

/// Pools with their visits' days in April and June and what each saw.
Season season_of(const Rows& visits, const Rows& pools = {{"pool", "notes"}, {"B01", ""}, {"B02", ""}}) {
  Rows rows{{"pool", "date", "person", "water"}};
  for (const auto& visit : visits)
    rows.push_back({visit.at(0), visit.at(1), "RW", visit.at(2)});
  return test::season_from({{TableKind::pools, pools}, {TableKind::visits, rows}});
}

constexpr const char* wet = "standing water";
constexpr const char* dry = "no standing water";

TEST(WetSpellFigures, FilledAndDriedBetweenTwoVisitsEach) {
  const Season season = season_of({{"B01", "2026-03-01", dry},
                                   {"B01", "2026-03-20", wet},
                                   {"B01", "2026-06-14", wet},
                                   {"B01", "2026-06-28", dry}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(pool_figure(season, summary, 0, "water-course"), "filled, dried (n 4)");
  EXPECT_EQ(pool_figure(season, summary, 0, "filled-between"), "2026-03-01 to 2026-03-20 (n 4)");
  EXPECT_EQ(pool_figure(season, summary, 0, "dried-between"), "2026-06-14 to 2026-06-28 (n 4)");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-days"), "86 to 119 days (n 4)");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-class"), "medium (n 4)");
  EXPECT_EQ(pool_figure(season, summary, 0, "filled-again"), "0 (n 4)");
  EXPECT_EQ(pool_figure(season, summary, 1, "water-course"), "no visit says whether there was water");
}

TEST(WetSpellFigures, OpenEndsStayOpen) {
  const Season season = season_of({{"B01", "2026-03-01", wet}, {"B01", "2026-05-20", wet}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(pool_figure(season, summary, 0, "water-course"), "wet at every visit (n 2)");
  const Figure* filled = test::figure_in(summary.pools[0].figures, "filled-between");
  ASSERT_NE(filled, nullptr);
  EXPECT_FALSE(filled->low);
  EXPECT_FALSE(filled->value);
  EXPECT_TRUE(filled->high);
  EXPECT_EQ(filled->note, "wet at the first visit already");
  const Figure* dried = test::figure_in(summary.pools[0].figures, "dried-between");
  EXPECT_FALSE(dried->high);
  EXPECT_EQ(dried->note, "never seen dry again");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-days"), "80 or more days (n 2)");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-class"), "medium or longer (n 2)");
}

TEST(WetSpellFigures, EverySpellCountsInTheirSum) {
  const Season season = season_of({{"B01", "2026-03-01", dry},
                                   {"B01", "2026-03-11", wet},
                                   {"B01", "2026-03-21", dry},
                                   {"B01", "2026-04-01", wet},
                                   {"B01", "2026-04-11", wet},
                                   {"B01", "2026-04-21", dry}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(pool_figure(season, summary, 0, "water-course"),
            "filled, dried, filled again, dried again (n 6)");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-days"), "0 to 20 days (n 6)");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-days-all"), "10 to 51 days (n 6)");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-days-least"), "10 days (n 6)");
  EXPECT_EQ(pool_figure(season, summary, 0, "filled-again"), "1 (n 6)");
}

TEST(WetSpellFigures, NeverSeenWetHasNoSpell) {
  const Season season = season_of({{"B01", "2026-03-01", dry}, {"B01", "2026-03-11", dry}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(pool_figure(season, summary, 0, "water-course"), "dry at every visit (n 2)");
  EXPECT_EQ(pool_figure(season, summary, 0, "wet-days"), "never seen wet");
}

/// Twelve pools that dried in the weeks after 1 April, one a week, half of them somebody else's.
Season twelve_pools() {
  Rows pools{{"pool", "owner"}};
  Rows visits;
  for (int i = 0; i < 12; ++i) {
    const std::string code = fmt::format("B{:02}", i + 1);
    pools.push_back({code, i % 2 == 0 ? "town forest" : "Town Forest "});
    if (i >= 6)
      pools.back().back() = "trust";
    visits.push_back({code, "2026-04-01", wet});
    visits.push_back({code, fmt::format("2026-{:02}-{:02}", 4 + i / 4, 4 + 7 * (i % 4)), wet});
    visits.push_back({code, fmt::format("2026-{:02}-{:02}", 4 + i / 4, 9 + 7 * (i % 4) - 1), dry});
  }
  return season_of(visits, pools);
}

TEST(WetSpellFigures, HalfOfThePoolsDryBy) {
  const Season season = twelve_pools();
  const SeasonSummary summary = summarise(season, {});
  const Figure* half = programme_figure(summary, "half-dry-by");
  ASSERT_NE(half, nullptr);
  ASSERT_TRUE(half->value);
  EXPECT_EQ(print_date(std::round(*half->value)), "2026-05-15") << "the sixth pool dried by 15 May";
  EXPECT_LT(*half->low, *half->value);
  EXPECT_GT(*half->high, *half->value);
  EXPECT_EQ(half->level, 0.95);
  EXPECT_EQ(half->n, 12u);
  const Figure* seen = programme_figure(summary, "half-seen-dry-by");
  ASSERT_NE(seen, nullptr);
  EXPECT_EQ(print_date(*seen->value), "2026-05-15");
  EXPECT_EQ(programme_words(season, summary, "pools-seen-wet"), "100% (75.8 to 100; n 12)");
  ASSERT_FALSE(summary.still_wet.empty());
  EXPECT_EQ(summary.still_wet.front().share, 1);
  EXPECT_LT(summary.still_wet.front().low, 1) << "twelve pools do not say that all of all pools were wet";
  EXPECT_EQ(summary.still_wet.back().share, 0);
  for (std::size_t i = 1; i < summary.still_wet.size(); ++i) {
    EXPECT_GT(summary.still_wet[i].day, summary.still_wet[i - 1].day);
    EXPECT_LE(summary.still_wet[i].share, summary.still_wet[i - 1].share);
    EXPECT_LE(summary.still_wet[i].low, summary.still_wet[i].share);
    EXPECT_GE(summary.still_wet[i].high, summary.still_wet[i].share);
  }
}

TEST(WetSpellFigures, GroupsAreToldApartWhateverTheirCapitals) {
  const Season season = twelve_pools();
  const SeasonSummary summary = summarise(season, {});
  const Figure* town = programme_figure(summary, "half-dry-by", "town forest");
  const Figure* trust = programme_figure(summary, "half-dry-by", "trust");
  ASSERT_NE(town, nullptr);
  ASSERT_NE(trust, nullptr);
  EXPECT_EQ(town->n, 6u);
  EXPECT_LT(*town->value, *trust->value);
  SummaryOptions options;
  options.group_by.clear();
  EXPECT_EQ(programme_figure(summarise(season, {}, options), "half-dry-by", "trust"), nullptr);
}

TEST(WetSpellFigures, TooFewPoolsSaySo) {
  const Season season = season_of({{"B01", "2026-03-01", wet}, {"B02", "2026-03-01", wet}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(programme_words(season, summary, "half-dry-by"), "two pools: no estimate");
}

TEST(WetSpellFigures, NoneSeenDryHasNoHalf) {
  Rows visits;
  Rows pools{{"pool", "notes"}};
  for (const char* code : {"B01", "B02", "B03", "B04", "B05", "B06"}) {
    pools.push_back({code, "by the path"});
    visits.push_back({code, "2026-03-01", wet});
    visits.push_back({code, "2026-04-20", wet});
  }
  const Season season = season_of(visits, pools);
  const SeasonSummary summary = summarise(season, {});
  const Figure* half = programme_figure(summary, "half-dry-by");
  ASSERT_NE(half, nullptr);
  EXPECT_FALSE(half->value);
  EXPECT_EQ(print_date(*half->low), "2026-04-20");
  EXPECT_EQ(half->note, "more than half were not seen dry");
  EXPECT_EQ(summary.still_wet.back().share, 1);
}

} // namespace
} // namespace wetspell
