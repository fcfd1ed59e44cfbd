// Two-sample counts from textbooks, with the published results, as in the validation of FSA (fishR-Core-Team/
// FSA, tests/testthat/testthat_mrClosed.R). More digits: R 4.2.2.
#include "estimate/two_counts.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

struct Published {
  const char* source;
  double first, second, both;
  double estimate, error;           // as printed; 0: not printed
  double full_estimate, full_error; // R
};

constexpr std::array<Published, 5> chapman{{
    {"Krebs 1989, box 2.1", 948, 421, 167, 2383, 0, 2382.7976190476, 129.0562592991},
    {"Ricker 1975", 109, 177, 57, 337, 0, 336.58620689655, 24.811021163921},
    {"Pine et al. 2013, box 11.2", 421, 332, 88, 1578, 0, 1577.9438202247, 126.55639951141},
    {"Seber 2002, tables 3.7 and 3.8", 500, 149, 7, 9393, 3022, 9392.75, 3022.1838647739},
    {"Seber 2002, tables 3.7 and 3.8", 1000, 243, 21, 11101, 2184, 11101, 2183.7010664984},
}};

TEST(FishrCounts, Chapman) {
  for (const Published& row : chapman) {
    SCOPED_TRACE(row.source);
    const TwoCounts found = value_of(two_counts(row.first, row.second, row.both, 0.95));
    EXPECT_NEAR(found.estimate, row.estimate, 0.5);
    EXPECT_THAT(found.estimate, agrees(row.full_estimate, 1e-12));
    EXPECT_THAT(found.error, agrees(row.full_error, 1e-12));
    if (row.error > 0) {
      EXPECT_NEAR(found.error, row.error, 0.5);
    }
    test::record(std::to_string(static_cast<int>(row.first)) + "_error", found.error, row.full_error);
  }
}

// Pine et al. print 1330 to 1826, Seber 3470 to 15316 and 6820 to 15382, normal intervals; a likelihood's
// reaches further up and less far down.
TEST(FishrCounts, TheIntervalLiesAboutTheNormalOneAndLeansUpwards) {
  const TwoCounts many = value_of(two_counts(421, 332, 88, 0.95));
  EXPECT_NEAR(many.interval.low, 1330, 45);
  EXPECT_NEAR(many.interval.high, 1826, 75);
  EXPECT_GT(many.interval.high - many.estimate, many.estimate - many.interval.low);
  const TwoCounts few = value_of(two_counts(500, 149, 7, 0.95));
  EXPECT_GT(few.interval.low, 3470);
  EXPECT_GT(few.interval.high, 15316);
}

TEST(FishrCounts, EdgeCases) { // R 4.2.2
  const TwoCounts none = value_of(two_counts(8, 10, 0, 0.95));
  EXPECT_EQ(none.estimate, 98);
  EXPECT_NEAR(none.error, 62.93, 5e-3);
  const TwoCounts all = value_of(two_counts(12, 12, 12, 0.95));
  EXPECT_EQ(all.estimate, 12);
  EXPECT_EQ(all.error, 0);
}

} // namespace
} // namespace wetspell
