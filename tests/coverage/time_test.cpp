// Coverage of the intervals of the day by which half were dry, of Kaplan and Meier's shares, of two people's
// differences, and of trends.
#include "coverage/simulated.hpp"
#include "estimate/agreement.hpp"
#include "estimate/event_curve.hpp"
#include "estimate/kaplan_meier.hpp"
#include "measure/sen_line.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {
namespace {

using test::Chance;
using test::Held;

constexpr double half_dry = 70; // days into the season

/// A pool that dries some day and is visited now and then for 110 days.
Between visited(Chance& chance, double between_visits) {
  const double dried = chance.normal(half_dry, 25);
  Between seen;
  for (double day = chance.between(0, between_visits); day < 110;
       day += between_visits * chance.between(0.7, 1.3)) {
    if (std::floor(day) >= dried) {
      seen.by = std::floor(day);
      break;
    }
    seen.after = std::floor(day);
  }
  return seen;
}

TEST(Coverage, DayByWhichHalfWereDry) {
  for (const int pools : {20, 60})
    for (const double between_visits : {7.0, 21.0}) {
      Chance chance(20260403);
      Held held;
      for (int i = 0; i < 500; ++i) {
        std::vector<Between> all;
        for (int pool = 0; pool < pools; ++pool)
          all.push_back(visited(chance, between_visits));
        const auto draws = event_bootstrap(all, 0.5, {}, {.draws = 200, .seed = 7, .level = 0.95});
        ASSERT_TRUE(draws);
        held.count(draws.value().quantile, half_dry);
      }
      held.expect(fmt::format("half_of_{}_every_{}", pools, between_visits));
    }
}

TEST(Coverage, KaplanAndMeiersShares) {
  Chance chance(20260404);
  Held held;
  for (int i = 0; i < 4000; ++i) {
    std::vector<FollowedUp> all;
    for (int pool = 0; pool < 50; ++pool) {
      const double dried = chance.normal(half_dry, 25);
      const double last_seen = chance.between(40, 140);
      all.push_back({std::min(dried, last_seen), dried <= last_seen});
    }
    const auto steps = kaplan_meier(all, 0.95).value();
    const auto after =
        std::find_if(steps.begin(), steps.end(), [](const LeftStep& step) { return step.moment > half_dry; });
    ASSERT_NE(after, steps.begin());
    held.count((after - 1)->interval, 0.5);
  }
  held.expect("log_log");
}

TEST(Coverage, DifferencesBetweenTwoPeople) {
  for (const int pairs : {5, 10, 40}) {
    Chance chance(20260405);
    Held next, mean;
    for (int i = 0; i < 4000; ++i) {
      std::vector<double> first, second;
      for (int pair = 0; pair < pairs; ++pair) {
        first.push_back(chance.normal(3, 1));
        second.push_back(chance.normal(2.5, 1));
      }
      const Differences found = differences(first, second, 0.95).value();
      next.count(found.next, chance.normal(3, 1) - chance.normal(2.5, 1));
      mean.count(found.mean_interval, 0.5);
    }
    next.expect(fmt::format("next_difference_of_{}", pairs));
    mean.expect(fmt::format("mean_difference_of_{}", pairs));
  }
}

/// Pools that share the weather of a year: a test that takes them for independent sees a trend far too often.
TEST(Coverage, TrendOverPoolsThatShareTheWeather) {
  constexpr int years = 12, pools = 20, programmes = 1500;
  for (const double slope : {0.0, 0.2}) {
    Chance chance(20260406);
    int found = 0, found_as_if_independent = 0;
    Held held;
    for (int i = 0; i < programmes; ++i) {
      std::vector<Series> all(pools);
      for (int year = 0; year < years; ++year) {
        const double weather = chance.normal(0, 1);
        for (Series& pool : all) {
          if (chance.happens(0.1))
            continue; // not visited
          pool.x.push_back(year);
          pool.y.push_back(slope * year + weather + chance.normal(0, 1));
        }
      }
      found += seasonal_kendall(all, Together::dependent).value().p <= 0.05;
      found_as_if_independent += seasonal_kendall(all).value().p <= 0.05;
      const SenLine line = seasonal_sen(all, 0.95, Together::dependent).value();
      held.count({line.low.value(), line.high.value()}, slope);
    }
    const auto share = [](int some) { return static_cast<double>(some) / programmes; };
    RecordProperty(fmt::format("found_with_slope_{}_per_thousand", slope),
                   static_cast<int>(1000 * share(found)));
    if (slope == 0) {
      EXPECT_GE(share(found), 0.02);
      EXPECT_LE(share(found), 0.07);
      EXPECT_GE(share(found_as_if_independent), 0.3);
    }
    held.expect(fmt::format("slope_{}", slope));
  }
}

} // namespace
} // namespace wetspell
