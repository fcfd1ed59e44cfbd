// Two observers who search without help from each other (Magnusson et al. 1978, J. Wildl. Manage. 42:174-176;
// reference from memory): only A saw 10, only B saw 6, both saw 44. Closed form; Chapman's: R 4.2.2.
#include "estimate/two_counts.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(DoubleObserver, DetectionOfEachAndOfBoth) {
  const TwoCounts found = value_of(two_counts(54, 50, 44, 0.95));
  EXPECT_EQ(found.seen, 60);
  EXPECT_THAT(found.first_finds->share, agrees(0.88, 1e-15));
  EXPECT_THAT(found.second_finds->share, agrees(0.814814814815, 1e-12));
  const double either = 1 - (1 - found.first_finds->share) * (1 - found.second_finds->share);
  EXPECT_THAT(either, agrees(0.977777777778, 1e-12));
  EXPECT_THAT(found.seen / either, agrees(61.3636363636, 1e-11));
  EXPECT_THAT(found.estimate, agrees(61.3333333333, 1e-11));
  EXPECT_THAT(found.error, agrees(1.34415895080, 1e-11));
}

} // namespace
} // namespace wetspell
