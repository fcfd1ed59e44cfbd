// Anscombe (1973), Graphs in statistical analysis, The American Statistician 27, 17-21: four sets with one
// and the same line, 3.00 + 0.500 x, r² .667. In numbers by R 4.2.2 (data set anscombe).
#include "measure/line.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;

struct Set {
  std::vector<double> x, y;
  double slope, intercept, r_squared;
};

TEST(Anscombe, FourSetsOneLine) {
  const std::vector<double> x{10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
  const std::vector<double> eights{8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8};
  for (const Set& set : {Set{x,
                             {8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68},
                             0.50009090909,
                             3.00009090909,
                             0.66654245951},
                         Set{x,
                             {9.14, 8.14, 8.74, 8.77, 9.26, 8.10, 6.13, 3.10, 9.13, 7.26, 4.74},
                             0.5,
                             3.00090909091,
                             0.66624203373},
                         Set{x,
                             {7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73},
                             0.49972727273,
                             3.00245454545,
                             0.66632404107},
                         Set{eights,
                             {6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.50, 5.56, 7.91, 6.89},
                             0.49990909091,
                             3.00172727273,
                             0.66670725690}}) {
    const auto line = test::value_of(least_squares(set.x, set.y));
    EXPECT_THAT(line.slope, agrees(set.slope, 1e-10));
    EXPECT_THAT(line.intercept, agrees(set.intercept, 1e-10));
    EXPECT_THAT(line.r_squared, agrees(set.r_squared, 1e-10));
    EXPECT_NEAR(line.slope, 0.500, 0.0005);
    EXPECT_NEAR(line.intercept, 3.00, 0.005);
    EXPECT_NEAR(line.r_squared, .667, 0.001);
  }
}

} // namespace
} // namespace wetspell
