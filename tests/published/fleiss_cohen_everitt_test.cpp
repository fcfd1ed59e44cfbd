// Fleiss, Cohen and Everitt 1969, Psychol. Bull. 72:323-327: the variance of a weighted kappa. Table and
// weights as in the help of R's package psych; errors: statsmodels 0.13.5, cohens_kappa (psych 2.2.9 reports
// another one for the weighted case).
#include "estimate/agreement.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(FleissCohenEveritt, ErrorOfKappaAndOfWeightedKappa) {
  const std::vector<double> counts{106, 10, 4, 22, 28, 10, 2, 12, 6};
  const Kappa plain = value_of(kappa(counts, 3, KappaWeights::none, 0.95));
  EXPECT_THAT(plain.kappa, agrees(0.428571428571, 1e-11));
  EXPECT_THAT(plain.error, agrees(0.0537110048692, 1e-11));
  const std::vector<double> similarity{1, 0, .4444, 0, 1, .6667, .4444, .6667, 1};
  const Kappa weighted = value_of(kappa(counts, similarity, 0.95));
  EXPECT_THAT(weighted.kappa, agrees(0.507069964867, 1e-11));
  EXPECT_THAT(weighted.error, agrees(0.0569938847, 1e-8));
  test::record("weighted_error", weighted.error, 0.0569938847);
}

} // namespace
} // namespace wetspell
