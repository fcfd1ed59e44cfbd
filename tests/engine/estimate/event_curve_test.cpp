// The share that is left by moment from events between two looks: against a plain search, against Kaplan and
// Meier where that is its special case, and where its answers end.
#include "estimate/event_curve.hpp"
#include "estimate/event_fit.hpp"
#include "estimate/kaplan_meier.hpp"

#include "engine/measure/digits.hpp"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_int_distribution.hpp>

namespace wetspell {
namespace {

using test::value_of;
constexpr double inf = std::numeric_limits<double>::infinity();

/// Some seasons of pools, invented: dried between two looks, by the first, after the last, or to the day.
std::vector<Between> some_pools(std::size_t n, std::uint64_t seed, bool exact_or_not_at_all) {
  boost::random::mt19937_64 chance(seed);
  const auto any = [&](int low, int high) {
    return boost::random::uniform_int_distribution<int>(low, high)(chance);
  };
  std::vector<Between> all;
  for (std::size_t i = 0; i < n; ++i) {
    const double day = any(1, 60);
    switch (exact_or_not_at_all ? any(0, 1) : any(0, 5)) {
    case 0:
      all.push_back({day, inf});
      break;
    case 1:
      all.push_back({day, day});
      break;
    case 2:
      all.push_back({-inf, day});
      break;
    default:
      all.push_back({day, day + any(1, 20)});
    }
  }
  return all;
}

double chance_of(const EventCurve& curve, const Between& observation) {
  double sum = 0;
  for (const EventMass& mass : curve.masses) {
    const bool inside =
        observation.after == observation.by
            ? mass.where == observation
            : mass.where.by <= observation.by &&
                  (mass.where.after >= observation.after &&
                   !(mass.where.after == mass.where.by && mass.where.by == observation.after));
    sum += inside ? mass.weight : 0;
  }
  return sum;
}

/// No place gains by more weight, and all with weight gain alike: the conditions of Kuhn and Tucker, with the
/// chances worked out anew from the result.
void expect_greatest(const std::vector<Between>& pools, const EventCurve& curve) {
  double sum = 0;
  for (const EventMass& mass : curve.masses)
    sum += mass.weight;
  EXPECT_NEAR(sum, 1, 1e-9);
  for (double day = 0.5; day < 90; day += 0.5) {
    double gain = 0;
    for (const Between& each : pools) {
      const bool holds = each.after == each.by ? each.by == day : each.after < day && day <= each.by;
      gain += holds ? 1 / chance_of(curve, each) : 0;
    }
    EXPECT_LE(gain, static_cast<double>(pools.size()) * (1 + 1e-6)) << "on day " << day;
  }
}

TEST(EventCurve, NoDayGainsByMoreWeight) {
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    const auto pools = some_pools(5 + 3 * seed, seed, false);
    SCOPED_TRACE(seed);
    expect_greatest(pools, value_of(event_curve(pools)));
  }
}

TEST(EventCurve, IsKaplanAndMeiersWhereEventsAreKnownToTheDay) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const auto pools = some_pools(40, seed, true);
    std::vector<FollowedUp> followed;
    for (const Between& each : pools)
      followed.push_back({each.after, each.after == each.by});
    const EventCurve curve = value_of(event_curve(pools));
    for (const LeftStep& step : value_of(kaplan_meier(followed, 0.95)))
      EXPECT_NEAR(share_after(curve, step.moment), step.share, 1e-8) << "day " << step.moment;
  }
}

TEST(EventCurve, NoneSeenToHappenLeavesAll) {
  const EventCurve curve = value_of(event_curve(std::vector<Between>{{10, inf}, {20, inf}}));
  EXPECT_EQ(share_after(curve, 1000), 1);
  EXPECT_FALSE(event_quantile_within(curve, 0.5));
  EXPECT_EQ(event_quantile(curve, 0.5).after, 20);
}

TEST(EventCurve, AllHappenedByTheFirstLook) {
  const EventCurve curve = value_of(event_curve(std::vector<Between>{{-inf, 10}, {-inf, 4}}));
  EXPECT_EQ(share_after(curve, 4), 0);
  EXPECT_FALSE(event_quantile_within(curve, 0.5));
}

TEST(EventCurve, OneIsTheIntervalItself) {
  const EventCurve curve = value_of(event_curve(std::vector<Between>{{10, 20}}));
  EXPECT_EQ(curve.masses.at(0).where, (Between{10, 20}));
  EXPECT_EQ(event_quantile_within(curve, 0.5), 15);
  EXPECT_EQ(share_after(curve, 19), 1) << "it falls at the latest moment";
  EXPECT_EQ(share_after(curve, 20), 0);
}

// (10, 20] does not hold 10 itself, and one last seen without its event at 10 may have it right after.
TEST(EventCurve, AnIntervalDoesNotHoldItsBeginning) {
  const EventCurve curve = value_of(event_curve(std::vector<Between>{{10, 10}, {10, 20}}));
  ASSERT_EQ(curve.masses.size(), 2u);
  EXPECT_EQ(curve.masses[0].where, (Between{10, 10}));
  EXPECT_EQ(curve.masses[1].where, (Between{10, 20}));
  const EventCurve end = value_of(event_curve(std::vector<Between>{{20, 20}, {10, 20}}));
  EXPECT_EQ(end.masses.size(), 1u) << "but its end";
}

TEST(EventCurve, RefusesWhatCannotBe) {
  EXPECT_EQ(event_curve({}).error().kind, ProblemKind::not_enough);
  for (const Between& wrong : {Between{20, 10}, Between{inf, inf}, Between{-inf, -inf}, Between{NAN, 3}})
    EXPECT_EQ(event_curve(std::vector<Between>{wrong}).error().kind, ProblemKind::bad_argument);
}

TEST(EventFit, EveryDrawIsFittedToItsTolerance) {
  const auto pools = some_pools(300, 7, false);
  EventFit fit(pools);
  boost::random::mt19937_64 chance(3);
  boost::random::uniform_int_distribution<std::size_t> any(0, pools.size() - 1);
  for (int draw = 0; draw < 200; ++draw) {
    std::vector<double> weights(fit.distinct(), 0.0);
    for (std::size_t i = 0; i < pools.size(); ++i)
      ++weights[fit.which()[any(chance)]];
    fit.fit(weights, 1e-3);
    EXPECT_LE(fit.gap(), 1e-3);
    EXPECT_LT(fit.turns(), 200u);
  }
}

TEST(EventBootstrap, TheSameSeedGivesTheSameAnswerAndItsEndsAreInOrder) {
  const auto pools = some_pools(60, 11, false);
  const std::vector<double> days{10, 20, 40};
  const BootstrapOptions options{.draws = 400, .seed = 5, .level = 0.9};
  const EventBootstrap one = value_of(event_bootstrap(pools, 0.5, days, options));
  const EventBootstrap other = value_of(event_bootstrap(pools, 0.5, days, options));
  EXPECT_EQ(one.quantile.low, other.quantile.low);
  EXPECT_EQ(one.quantile.high, other.quantile.high);
  const EventCurve curve = value_of(event_curve(pools));
  EXPECT_LT(one.quantile.low, *event_quantile_within(curve, 0.5));
  EXPECT_GT(one.quantile.high, *event_quantile_within(curve, 0.5));
  ASSERT_EQ(one.band.size(), days.size());
  for (std::size_t i = 0; i < days.size(); ++i) {
    EXPECT_LT(one.band[i].low, share_after(curve, days[i]));
    EXPECT_GT(one.band[i].high, share_after(curve, days[i]));
  }
  const auto wide = value_of(event_bootstrap(pools, 0.5, days, {.draws = 400, .seed = 5, .level = 0.99}));
  EXPECT_LT(wide.quantile.low, one.quantile.low);
}

TEST(KaplanMeier, RefusesAndEnds) {
  EXPECT_EQ(kaplan_meier({}, 0.95).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(kaplan_meier(std::vector<FollowedUp>{{1, true}}, 1).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(kaplan_meier(std::vector<FollowedUp>{{NAN, true}}, 0.9).error().kind, ProblemKind::not_a_number);
  const auto steps = value_of(kaplan_meier(std::vector<FollowedUp>{{1, true}, {2, false}, {2, false}}, 0.95));
  ASSERT_EQ(steps.size(), 1u);
  EXPECT_FALSE(median_of(steps).median) << "two in three are left";
}

} // namespace
} // namespace wetspell
