// Intervals of shares and counts: their ends, and what they refuse. Values are in tests/published.
#include "estimate/proportion.hpp"

#include "engine/measure/digits.hpp"

#include <limits>

namespace wetspell {
namespace {

using test::value_of;

TEST(Proportion, NeverLeavesZeroToOne) {
  for (const double all : {1.0, 2.0, 10.0, 38.0, 77.0, 1e6})
    for (const auto interval : {wilson_interval, exact_interval}) {
      const Interval none = value_of(interval(0, all, 0.95));
      EXPECT_EQ(none.low, 0);
      EXPECT_GT(none.high, 0);
      const Interval every = value_of(interval(all, all, 0.95));
      EXPECT_EQ(every.high, 1);
      EXPECT_NEAR(every.low, 1 - none.high, 1e-12) << "the same seen from the other side";
    }
}

TEST(Proportion, TheExactOneIsTheWider) {
  for (double some = 1; some < 30; ++some) {
    const Interval wilson = value_of(wilson_interval(some, 30, 0.95));
    const Interval exact = value_of(exact_interval(some, 30, 0.95));
    EXPECT_LT(exact.high - exact.low, 1);
    EXPECT_GT(exact.high - exact.low, wilson.high - wilson.low);
  }
}

TEST(Proportion, Refuses) {
  EXPECT_EQ(wilson_interval(0, 0, 0.95).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(exact_interval(5, 4, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(wilson_interval(-1, 4, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(exact_interval(1.5, 4, 0.95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(wilson_interval(1, 4, 95).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(poisson_interval(std::numeric_limits<double>::infinity(), 0.95).error().kind,
            ProblemKind::not_a_number);
  EXPECT_EQ(poisson_interval(3, 0).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
