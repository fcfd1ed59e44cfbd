// Coverage of the intervals of the day by which half were dry, of Kaplan and Meier's shares, and of limits of
// agreement.
#include "coverage/simulated.hpp"
#include "estimate/agreement.hpp"
#include "estimate/event_curve.hpp"
#include "estimate/kaplan_meier.hpp"

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

TEST(Coverage, LimitsOfAgreement) {
  for (const auto& [pairs, low, high] : {std::tuple{10, 0.89, 0.93}, std::tuple{40, 0.935, 0.955}}) {
    Chance chance(20260405);
    double held = 0, mean_held = 0;
    constexpr int seasons = 4000;
    for (int i = 0; i < seasons; ++i) {
      std::vector<double> first, second;
      for (int pair = 0; pair < pairs; ++pair) {
        first.push_back(chance.normal(3, 1));
        second.push_back(chance.normal(2.5, 1));
      }
      const Differences found = differences(first, second, 0.95).value();
      const double next = chance.normal(3, 1) - chance.normal(2.5, 1);
      held += found.limits.low <= next && next <= found.limits.high;
      mean_held += found.mean_interval.low <= 0.5 && 0.5 <= found.mean_interval.high;
    }
    RecordProperty(fmt::format("next_difference_of_{}_per_thousand", pairs),
                   static_cast<int>(1000 * held / seasons));
    EXPECT_GE(held / seasons, low) << pairs;
    EXPECT_LE(held / seasons, high) << pairs;
    EXPECT_NEAR(mean_held / seasons, 0.95, 0.012);
  }
}

} // namespace
} // namespace wetspell
