// Six ordered bands of per cent, 100 things (R: DescTools, example of CohenKappa). Values: vcd 1.4-11
// (R 4.2.2) and statsmodels 0.13.5, which agree in twelve digits.
#include "estimate/agreement.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(DescToolsKappa, PlainLinearAndQuadratic) {
  const std::vector<double> counts{5, 8, 1, 2, 4, 2, 3, 5, 3, 5, 5, 0, 1, 2, 6, 11, 2, 1,
                                   0, 1, 5, 4, 3, 3, 0, 0, 1, 2, 5, 2, 0, 0, 1, 2,  1, 4};
  struct Expected {
    KappaWeights weights;
    double kappa, error;
  };
  for (const Expected& row : {Expected{KappaWeights::none, 0.151022360397, 0.054135627446},
                              Expected{KappaWeights::linear, 0.315668455053, 0.060642331746},
                              Expected{KappaWeights::quadratic, 0.413495488427, 0.084982964789}}) {
    const Kappa found = value_of(kappa(counts, 6, row.weights, 0.95));
    EXPECT_THAT(found.kappa, agrees(row.kappa, 1e-11));
    EXPECT_THAT(found.error, agrees(row.error, 1e-10));
    test::record("kappa_" + std::to_string(static_cast<int>(row.weights)), found.kappa, row.kappa);
  }
}

} // namespace
} // namespace wetspell
