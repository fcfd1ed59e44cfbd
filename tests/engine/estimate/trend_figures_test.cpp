// Figures over the years: one value a year, each pool with itself, each month with the same month.
#include "engine/estimate/figures_of.hpp"
#include "estimate/trend_figures.hpp"

#include <gmock/gmock.h>

#include <algorithm>

namespace wetspell {
namespace {

using test::Rows;
using test::season_from;
using testing::ElementsAre;
using testing::HasSubstr;

struct Looked {
  Season season;
  SeasonSummary summary;
};

Looked looked(const Rows& visits) {
  Looked all{season_from({{TableKind::pools, {{"pool"}, {"B1"}, {"B2"}}}, {TableKind::visits, visits}}), {}};
  all.summary = summarise(all.season, CheckReport{});
  return all;
}

/// Pools B1 and B2 visited on 4 April with these lengths, in feet.
Looked season_of(const std::vector<std::string>& lengths, const std::string& year) {
  Rows visits{{"pool", "date", "depth", "length", "width", "size_tool"}};
  for (std::size_t i = 0; i < lengths.size(); ++i)
    visits.push_back({"B" + std::to_string(i + 1), year + "-04-04", "20", lengths[i], lengths[i], "tape"});
  return looked(visits);
}

std::vector<SeasonOfYear> of_years(const std::vector<Looked>& seasons, int first) {
  std::vector<SeasonOfYear> all;
  for (const Looked& season : seasons)
    all.push_back({first++, &season.season, &season.summary});
  return all;
}

const Trend& of(const std::vector<Trend>& all, const std::string& pool, std::string_view name,
                Comparison compared = Comparison::years) {
  const auto found = std::ranges::find_if(all, [&](const Trend& trend) {
    return trend.pool == pool && trend.spec->name == name && trend.compared == compared;
  });
  if (found == all.end())
    throw std::runtime_error("no such trend");
  return *found;
}

TEST(Trends, ThreeSeasonsSayHowLittleTheyCan) {
  std::vector<Looked> seasons;
  seasons.push_back(season_of({"10", "20"}, "2024"));
  seasons.push_back(season_of({"12", "20"}, "2025"));
  seasons.push_back(season_of({"15", "20"}, "2026"));
  auto years = of_years(seasons, 2024);
  std::ranges::reverse(years); // any order
  const auto all = trends(years);
  const Trend& grows = of(all, "B1", "length-largest");
  EXPECT_THAT(grows.series.front().x, ElementsAre(2024, 2025, 2026));
  EXPECT_NEAR(grows.sen->slope, 2.5 * 0.3048, 1e-12);
  EXPECT_NEAR(grows.kendall->p, 1.0 / 3, 1e-12);
  EXPECT_EQ(in_words(grows, seasons[2].season.settings),
            "rises by 2.5 ft a year (3 years, p = 0.33): no trend shown; with 3 years even a steady rise or "
            "fall has p = 0.33; it takes 5 to show a trend");
  EXPECT_EQ(of(all, "B2", "length-largest").sen->slope, 0);
}

TEST(Trends, DatesAreDaysOfTheirYear) {
  std::vector<Looked> seasons;
  for (const char* year : {"2023", "2024", "2025"}) // 2024 is a leap year: 4 April is one day later
    seasons.push_back(season_of({"10"}, year));
  const auto years = of_years(seasons, 2023);
  EXPECT_THAT(of(trends(years), "B1", "first-visit").series.front().y, ElementsAre(93, 94, 93));
  EXPECT_TRUE(trends(std::span(years).first(2)).empty());
}

TEST(Trends, EachPoolIsComparedWithItself) {
  std::vector<Looked>
      seasons; // the small pool was not measured in the last year: no pool grew, but the mean did
  seasons.push_back(season_of({"10", "40"}, "2023"));
  seasons.push_back(season_of({"10", "40"}, "2024"));
  seasons.push_back(season_of({"", "41"}, "2025"));
  const auto all = trends(of_years(seasons, 2023));
  const Trend& pools = of(all, "", "length-largest", Comparison::pools);
  EXPECT_EQ(pools.series.size(), 2u);
  EXPECT_EQ(pools.years, 3u);
  EXPECT_EQ(pools.kendall->s, 2); // of B2: two rises and a tie; of B1: a tie
  EXPECT_EQ(pools.kendall->n, 5u);
  EXPECT_THAT(pools.note, HasSubstr("rough with fewer than 10 years"));
  EXPECT_GT(pools.kendall->p, 0.05);
}

TEST(Trends, EachMonthIsComparedWithTheSameMonth) {
  std::vector<Looked> seasons;
  // Every month is one inch deeper than the year before, though the pool was visited later each year, when it
  // is low.
  const auto visit = [](const char* day, const char* depth) {
    return std::vector<std::string>{"B1", day, depth};
  };
  const std::vector<std::string> headings{"pool", "date", "depth"};
  seasons.push_back(
      looked({headings, visit("2023-03-10", "30"), visit("2023-03-20", "34"), visit("2023-04-10", "20")}));
  seasons.push_back(
      looked({headings, visit("2024-03-10", "33"), visit("2024-04-10", "21"), visit("2024-05-10", "5")}));
  seasons.push_back(looked({headings, visit("2025-04-10", "22"), visit("2025-05-10", "6")}));
  const auto years = of_years(seasons, 2023);
  const auto all = trends(years);
  const Trend& months = of(all, "B1", "depth-in-month", Comparison::months);
  EXPECT_EQ(months.series.size(), 3u);
  EXPECT_NEAR(months.sen->slope, 0.0254, 1e-12) << "the mean of March 2023 is 32 in";
  EXPECT_EQ(months.kendall->s, 5);
  EXPECT_EQ(of(all, "", "depth-in-month", Comparison::months).kendall->s, 5);
  EXPECT_LT(of(all, "B1", "deepest").sen->slope, 0) << "the deepest reading alone would say that it falls";
}

} // namespace
} // namespace wetspell
