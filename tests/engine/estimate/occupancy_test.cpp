// The share of pools used when looks overlook: where the estimate ends and what the data cannot carry.
#include "estimate/occupancy.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

std::vector<Looks> alike(std::size_t pools, Looks looks) {
  return std::vector<Looks>(pools, looks);
}

std::vector<Looks> together(std::vector<Looks> one, const std::vector<Looks>& other) {
  one.insert(one.end(), other.begin(), other.end());
  return one;
}

TEST(Occupancy, FoundInEveryPoolLeavesNoneOverlooked) {
  const Occupancy found = value_of(occupancy(alike(40, {3, 2}), 0.95));
  EXPECT_EQ(found.used, 1);
  EXPECT_NEAR(found.found_per_look, 2.0 / 3, 1e-12);
  EXPECT_NE(found.caution.find("found in every pool"), std::string::npos) << found.caution;
}

TEST(Occupancy, OverlookedPoolsRaiseTheShare) {
  const auto pools = together(together(alike(50, {3, 0}), alike(45, {3, 1})), alike(25, {3, 2}));
  const Occupancy found = value_of(occupancy(pools, 0.95));
  EXPECT_GT(found.used, found.found_in);
  EXPECT_THAT(found.found_in, agrees(14.0 / 24, 1e-15));
  EXPECT_LT(found.used_interval.low, found.used);
  EXPECT_GT(found.used_interval.high, found.used);
  EXPECT_LE(found.used_interval.high, 1);
  EXPECT_TRUE(found.caution.empty());
  // Where the slope is 0 the expected finds are those made.
  EXPECT_NEAR(found.used * found.found_per_look * 120 * 3, 95, 1e-6);
}

TEST(Occupancy, PoolsNeverLookedAtSayNothing) {
  const auto pools = together(together(alike(10, {3, 0}), alike(9, {3, 1})), alike(5, {3, 2}));
  const Occupancy with = value_of(occupancy(together(pools, alike(8, {0, 0})), 0.95));
  EXPECT_EQ(with.pools, 24u);
  EXPECT_EQ(with.used, value_of(occupancy(pools, 0.95)).used);
}

TEST(Occupancy, FoundAtEveryLook) {
  const Occupancy found = value_of(occupancy(together(alike(6, {3, 3}), alike(4, {3, 0})), 0.95));
  EXPECT_THAT(found.used, agrees(0.6, 1e-15));
  EXPECT_EQ(found.found_per_look, 1);
  EXPECT_EQ(found.used_error, 0);
  EXPECT_FALSE(found.caution.empty());
  EXPECT_LT(found.used_interval.low, 0.6);
}

TEST(Occupancy, FoundSoSeldomThatItMayBeEverywhere) {
  const Occupancy found = value_of(occupancy(together(alike(3, {2, 1}), alike(5, {2, 0})), 0.95));
  EXPECT_EQ(found.used, 1);
  EXPECT_THAT(found.found_per_look, agrees(3.0 / 16, 1e-15));
  EXPECT_EQ(found.used_interval.high, 1);
  EXPECT_FALSE(found.caution.empty());
}

TEST(Occupancy, RefusesWhatTheDataCannotCarry) {
  EXPECT_EQ(occupancy({}, 0.95).error().text, "no pool was looked at");
  EXPECT_EQ(occupancy(alike(5, {1, 1}), 0.95).error().text,
            "every pool was looked at once: how often a look finds it cannot be told");
  EXPECT_EQ(
      occupancy(alike(4, {3, 0}), 0.95).error().text,
      "never found in 12 looks at 4 pools: that it is absent cannot be told from that it was overlooked");
  EXPECT_EQ(occupancy(alike(4, {3, 4}), 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(occupancy(alike(4, {3, 1}), 0).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(looks_to_be_sure(0, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(looks_to_be_sure(0.3, 1).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
