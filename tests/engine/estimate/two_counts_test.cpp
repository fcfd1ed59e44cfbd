// Two people's counts of the same things: the corners. Published values are in tests/published.
#include "estimate/two_counts.hpp"

#include "engine/measure/digits.hpp"

#include <cmath>

namespace wetspell {
namespace {

using test::value_of;

TEST(TwoCounts, NothingSeenByBothHasNoUpperEnd) {
  const TwoCounts counts = value_of(two_counts(8, 10, 0, 0.95));
  EXPECT_EQ(counts.seen, 18);
  EXPECT_EQ(counts.estimate, 98);
  EXPECT_EQ(counts.interval.low, 18);
  EXPECT_TRUE(std::isinf(counts.interval.high));
  EXPECT_EQ(counts.first_finds->share, 0);
}

TEST(TwoCounts, AllSeenByBothStillLeavesRoomForMore) {
  const TwoCounts counts = value_of(two_counts(12, 12, 12, 0.95));
  EXPECT_EQ(counts.estimate, 12);
  EXPECT_EQ(counts.error, 0);
  EXPECT_EQ(counts.log_interval.high, 12);
  EXPECT_EQ(counts.interval.low, 12);
  EXPECT_GE(counts.interval.high, 12);
  EXPECT_TRUE(std::isfinite(counts.interval.high));
  // One saw half of what the other saw, and nothing else: the other may well have missed as much.
  EXPECT_GT(value_of(two_counts(12, 6, 6, 0.95)).interval.high, 12);
}

TEST(TwoCounts, OneWhoSawNothingSaysNothingOfTheOther) {
  const TwoCounts counts = value_of(two_counts(7, 0, 0, 0.95));
  EXPECT_EQ(counts.seen, 7);
  EXPECT_FALSE(counts.first_finds);
  EXPECT_EQ(counts.second_finds->share, 0);
  EXPECT_EQ(value_of(two_counts(0, 0, 0, 0.95)).estimate, 0);
}

TEST(TwoCounts, TheIntervalHoldsTheEstimateAndNoFewerThanWereSeen) {
  for (double first = 1; first <= 20; first += 3)
    for (double second = 1; second <= 20; second += 2)
      for (double both = 1; both <= std::min(first, second); ++both) {
        const TwoCounts counts = value_of(two_counts(first, second, both, 0.95));
        EXPECT_GE(counts.interval.low, counts.seen);
        EXPECT_LE(counts.interval.low, std::ceil(counts.estimate));
        EXPECT_GE(counts.interval.high, std::floor(counts.estimate));
        const TwoCounts other_way = value_of(two_counts(second, first, both, 0.95));
        EXPECT_EQ(counts.interval.high, other_way.interval.high) << "who is first makes no difference";
      }
}

TEST(TwoCounts, Refuses) {
  EXPECT_EQ(two_counts(5, 6, 7, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(two_counts(5.5, 6, 2, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(two_counts(-5, 6, 0, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(two_counts(NAN, 6, 0, 0.95).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(two_counts(5, 6, 2, 1).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
