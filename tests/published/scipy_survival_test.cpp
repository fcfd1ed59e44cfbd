// A set with events and last looks from SciPy's test suite (scipy/stats/tests/test_survival.py), with the
// shares left that it expects.
#include "estimate/kaplan_meier.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

TEST(ScipySurvival, SharesLeft) {
  const std::vector<FollowedUp> all{{37, false}, {43, false}, {47, true}, {56, true}, {60, false},
                                    {62, false}, {71, false}, {77, true}, {80, true}, {81, true}};
  const auto steps = test::value_of(kaplan_meier(all, 0.95));
  const std::vector<std::pair<double, double>> expected{{47, .875}, {56, .75}, {77, .5}, {80, .25}, {81, 0}};
  ASSERT_EQ(steps.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(steps[i].moment, expected[i].first);
    EXPECT_NEAR(steps[i].share, expected[i].second, 1e-15);
  }
}

} // namespace
} // namespace wetspell
