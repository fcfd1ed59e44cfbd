// Bland and Altman 1986, Lancet i:307-310: peak flow by two meters, 17 people. Printed with the factor 2 and
// rounded steps: -2.1, 38.8, -79.7, 75.5 (from memory). With 1.96: vignette of the R package blandr.
// Concordance: R 4.2.2, moments over n as in Lin 1989.
#include "estimate/agreement.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(BlandAltman, DifferencesOfTwoMeters) {
  const std::vector<double> wright{494, 395, 516, 434, 476, 557, 413, 442, 650,
                                   433, 417, 656, 267, 478, 178, 423, 427};
  const std::vector<double> mini{512, 430, 520, 428, 500, 600, 364, 380, 658,
                                 445, 432, 626, 260, 477, 259, 350, 451};
  const Differences found = value_of(differences(wright, mini, 0.95));
  EXPECT_EQ(found.n, 17u);
  EXPECT_NEAR(found.mean, -2.117647, 5e-7);
  EXPECT_NEAR(found.deviation, 38.76513, 5e-6);
  EXPECT_NEAR(found.mean_interval.low, -22.04884, 5e-6);
  EXPECT_NEAR(found.mean_interval.high, 17.81354, 5e-6);
  // The vignette takes 1.96 for 1.959964.
  EXPECT_NEAR(found.limits.low, -78.0973, 0.002);
  EXPECT_NEAR(found.limits.high, 73.86201, 0.002);
  EXPECT_NEAR(found.mean - 1.96 * found.deviation, -78.0973, 5e-5);
  EXPECT_NEAR(found.mean - 2 * found.deviation, -79.7, 0.1);
  EXPECT_NEAR(found.mean + 2 * found.deviation, 75.5, 0.1);
  EXPECT_THAT(found.concordance, agrees(0.942742431427, 1e-11));
  std::vector<double> apart;
  for (std::size_t i = 0; i < wright.size(); ++i)
    apart.push_back(wright[i] - mini[i]);
  EXPECT_THAT(value_of(scatter_within_pairs(apart, 0.95)).deviation,
              agrees(26.634784863142, 1e-13)); // R 4.2.2
}

TEST(RelativeDifference, OfTwoLaboratoryReadings) { // formula: svl.net, duplicates; value: R 4.2.2
  EXPECT_THAT(value_of(relative_difference(10.2, 9.6)), agrees(0.060606060606, 1e-10));
}

} // namespace
} // namespace wetspell
