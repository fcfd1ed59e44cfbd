// Abramowitz and Stegun, table 17.1: the complete elliptic integral E of the parameter m = k^2 (DLMF 19.2.8).
//
// An ellipse of length 1 and width sqrt(1 - m) has the edge 2 E(m). Whoever takes the modulus k for the
// parameter m misses these by per cents.
#include "measure/ellipse.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

struct Row {
  double parameter;
  double integral;
};

TEST(AbramowitzStegun, Table17_1CompleteIntegralOfTheSecondKind) {
  // To more digits than the table's by mpmath 1.2.1.
  for (const Row& row : {Row{0, 1.570796326794897}, Row{0.1, 1.530757636897763}, Row{0.25, 1.467462209339427},
                         Row{0.5, 1.350643881047676}, Row{0.75, 1.21105602756846},
                         Row{0.9, 1.104774732704073}, Row{0.99, 1.015993545025224}, Row{1, 1}}) {
    const Measured width{.value = std::sqrt(1 - row.parameter), .uncertainty = 0};
    const auto edge = test::value_of(ellipse_edge({.value = 1, .uncertainty = 0}, width));
    EXPECT_NEAR(edge.value / 2, row.integral, 2e-15) << row.parameter;
  }
}

} // namespace
} // namespace wetspell
