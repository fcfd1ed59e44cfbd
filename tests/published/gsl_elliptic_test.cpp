// GNU Scientific Library, specfunc/test_sf.c: E of the modulus k.
#include "measure/ellipse.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

struct Row {
  double modulus;
  double integral;
};

TEST(Gsl, CompleteIntegralOfTheSecondKind) {
  for (const Row& row : {Row{0.99, 1.0284758090288040010}, Row{0.5, 1.4674622093394271555},
                         Row{0.01, 1.5707570561503852873}}) {
    const Measured width{.value = std::sqrt((1 - row.modulus) * (1 + row.modulus)), .uncertainty = 0};
    const auto edge = test::value_of(ellipse_edge({.value = 1, .uncertainty = 0}, width));
    EXPECT_NEAR(edge.value / 2, row.integral, 2e-15) << row.modulus;
  }
}

} // namespace
} // namespace wetspell
