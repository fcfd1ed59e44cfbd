// Gentleman and Geyer 1994, Biometrika 81:618-623 (the example from memory): half, nothing, half reproduces
// itself under EM, and is not the greatest. Values: R 4.2.2, npsurv 0.5-0.
#include "estimate/event_curve.hpp"

#include "engine/measure/digits.hpp"

#include <cmath>

namespace wetspell {
namespace {

TEST(GentlemanGeyer, IsNotCaughtByWhatReproducesItself) {
  const std::vector<Between> all{{0, 1}, {1, 3}, {1, 3}, {0, 2}, {0, 2}, {2, 3}};
  const EventCurve curve = test::value_of(event_curve(all));
  ASSERT_EQ(curve.masses.size(), 3u);
  for (std::size_t i = 0; i < 3; ++i) {
    const auto begin = static_cast<double>(i);
    EXPECT_EQ(curve.masses[i].where, (Between{begin, begin + 1}));
    EXPECT_NEAR(curve.masses[i].weight, 1.0 / 3, 1e-10);
  }
  EXPECT_NEAR(curve.log_likelihood, -3.819085, 5e-7);
  EXPECT_NEAR(curve.log_likelihood, 2 * std::log(1.0 / 3) + 4 * std::log(2.0 / 3), 1e-12);
  EXPECT_LE(curve.gap, 1e-9);
}

} // namespace
} // namespace wetspell
