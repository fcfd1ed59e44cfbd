// Hyndman and Fan (1996), Sample quantiles in statistical packages, The American Statistician 50, 361-365:
// definition 7. In numbers by R 4.2.2, quantile(type = 7).
#include "measure/statistics.hpp"

#include "engine/measure/digits.hpp"

#include <utility>
#include <vector>

namespace wetspell {
namespace {

TEST(HyndmanFan, Definition7) {
  const std::vector<double> unsorted{8, 0, 2, 1, 5, 1, 2, 4, 1, 2};
  for (const auto& [p, expected] : {std::pair{0.10, 0.9}, std::pair{0.25, 1.0}, std::pair{0.50, 2.0},
                                    std::pair{0.75, 3.5}, std::pair{0.90, 5.3}}) {
    EXPECT_NEAR(test::value_of(quantile(unsorted, p)), expected, 1e-14) << p;
  }
}

} // namespace
} // namespace wetspell
