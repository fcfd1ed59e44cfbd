// Venables and Ripley, MASS: 24 determinations of copper in wholemeal flour (dataset "chem", Debian package
// r-cran-mass). The reference page of huber() prints s = 0.526323 for their scaled median absolute deviation.
#include "measure/statistics.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

TEST(MassChem, MedianAbsoluteDeviation) {
  const std::vector<double> copper{2.9,  3.1,  3.4,  3.4,  3.7,   3.7,  2.8, 2.5, 2.4, 2.4, 2.7, 2.2,
                                   5.28, 3.37, 3.03, 3.03, 28.95, 3.77, 3.4, 2.2, 3.5, 3.6, 3.7, 3.7};
  const auto found = test::value_of(robust(copper));
  EXPECT_NEAR(found.deviation, 0.526323, 5e-7);
  EXPECT_NEAR(found.median, (3.37 + 3.4) / 2, 1e-15); // the two middle ones of the sorted twenty-four
}

} // namespace
} // namespace wetspell
