// Cohen 1960, Educ. Psychol. Meas. 20:37-46, and Cohen 1968, Psychol. Bull. 70:213-220: three classes, 200
// things. Printed .492, .348 and .353, as the help of R's package psych has them.
#include "estimate/agreement.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

const std::vector<double> counts{88, 14, 18, 10, 40, 10, 2, 6, 12};

std::vector<double> similarity(const std::vector<double>& disagreement) {
  std::vector<double> all;
  for (const double each : disagreement)
    all.push_back(1 - each / 6);
  return all;
}

TEST(Cohen, KappaOf1960) {
  const Kappa found = value_of(kappa(counts, 3, KappaWeights::none, 0.95));
  EXPECT_THAT(found.agreement, agrees(.70, 1e-14));
  EXPECT_THAT(found.by_chance, agrees(.41, 1e-14));
  EXPECT_NEAR(found.kappa, .492, 5e-4);
  EXPECT_THAT(found.kappa, agrees(0.491525423729, 1e-11)); // R 4.2.2
}

TEST(Cohen, WeightedKappaOf1968) {
  const Kappa found = value_of(kappa(counts, similarity({0, 1, 3, 1, 0, 6, 3, 6, 0}), 0.95));
  EXPECT_NEAR(found.kappa, .348, 5e-4);
  EXPECT_THAT(found.kappa, agrees(0.347826086957, 1e-11)); // R 4.2.2
  EXPECT_NEAR(value_of(kappa(counts, similarity({0, 1, 4, 1, 0, 6, 2, 2, 0}), 0.95)).kappa, .353, 5e-4);
}

} // namespace
} // namespace wetspell
