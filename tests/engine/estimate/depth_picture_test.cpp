// The picture of a pool's depth: heights, the signs without a bar, the common axis and scale.
#include "estimate/depth_picture.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

CountedVisit visit(double day, std::optional<double> depth, std::optional<bool> wet = true) {
  CountedVisit visit;
  visit.day = day;
  if (depth)
    visit.depth = Measured{*depth, 0.01};
  visit.wet = wet;
  return visit;
}

constexpr DepthScale eight_weeks{100, 7, 8, 0.8};

TEST(DepthPicture, BarsGrowByEighthsOfTheDeepest) {
  PoolHistory pool;
  for (int week = 0; week < 8; ++week)
    pool.visits.push_back(visit(100 + 7 * week, 0.1 * (week + 1) - 0.05));
  EXPECT_EQ(depth_picture(pool, eight_weeks), "▁▂▃▄▅▆▇█");
  pool.visits = {visit(100, 0.001), visit(107, 0.8), visit(114, 0.4001)};
  EXPECT_EQ(depth_picture(pool, eight_weeks), "▁█▅·····") << "a little water is not dry";
}

TEST(DepthPicture, DryAndUnknownAndNoVisitDiffer) {
  PoolHistory pool;
  pool.visits = {visit(100, 0, false), visit(107, std::nullopt, false), visit(114, std::nullopt, true),
                 visit(121, std::nullopt, std::nullopt)};
  EXPECT_EQ(depth_picture(pool, eight_weeks), "○○~?····");
}

TEST(DepthPicture, TheLastVisitOfAStretchThatSaysSomethingCounts) {
  PoolHistory pool;
  pool.visits = {visit(100, 0.8), visit(106, 0, false), visit(106, std::nullopt, std::nullopt),
                 visit(113, std::nullopt, std::nullopt), visit(155, 0.8)};
  EXPECT_EQ(depth_picture(pool, eight_weeks), "○?·····█");
}

TEST(DepthPicture, TheSeasonsDaysAndTheDeepestReadingMakeTheScale) {
  Season season;
  season.settings.first_day = 100;
  season.settings.last_day = 155;
  SeasonHistory history{season, {{}, {}}, {}};
  history.pools[0].visits = {visit(110, 0.3), visit(120, 0.9)};
  history.pools[1].visits = {visit(98, 0.5)};
  const DepthScale scale = depth_scale(history);
  EXPECT_EQ(scale.first_day, 98) << "no visit is cut off";
  EXPECT_EQ(scale.sign_days, 7u);
  EXPECT_EQ(scale.signs, 9u) << "58 days";
  EXPECT_EQ(scale.deepest, 0.9);
  EXPECT_EQ(depth_picture(history.pools[1], scale), "▅········");
}

TEST(DepthPicture, ALongSeasonTakesMoreDaysASign) {
  Season season;
  SeasonHistory history{season, {{}}, {}};
  history.pools[0].visits = {visit(1, 0.3), visit(365, 0.3)};
  const DepthScale scale = depth_scale(history);
  EXPECT_EQ(scale.sign_days, 14u);
  EXPECT_EQ(scale.signs, 27u);
}

TEST(DepthPicture, NothingToShowIsAnEmptyPicture) {
  Season season;
  SeasonHistory history{season, {{}}, {}};
  EXPECT_EQ(depth_picture(history.pools[0], depth_scale(history)), "");
}

TEST(DepthPicture, SaysWhatItsSignsMean) {
  Settings settings;
  settings.depth = Unit::centimetre;
  EXPECT_EQ(
      explained({46096, 7, 2, 0.8}, settings),
      "▁ to █ depth, a full bar is 80 cm; ○ dry; ~ water, its depth not read; ? a visit that says neither; · "
      "no visit. 7 days a sign, 2026-03-15 to 2026-03-28.");
}

} // namespace
} // namespace wetspell
