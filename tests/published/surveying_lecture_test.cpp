// MAGM 230 Field Surveying (lecture): twelve counts over 100 ft, the highest and the lowest dropped, 303 in
// all.
#include "measure/pacing.hpp"
#include "measure/statistics.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

constexpr double foot = 0.3048;

TEST(SurveyingLecture, TenCountsOver100Feet) {
  const std::vector<double> counts{30.5, 30, 31, 30, 30, 30, 30.5, 30, 31, 30}; // without the 29 and the 32
  const auto found = value_of(moments(counts));
  EXPECT_THAT(found.mean, agrees(30.3, 1e-15));
  // R 4.2.2.
  EXPECT_THAT(found.deviation, agrees(0.42163702135578, 1e-13));
  EXPECT_THAT(found.mean_uncertainty, agrees(0.13333333333333, 1e-13));

  std::vector<CalibrationRun> runs;
  for (const double count : counts) {
    runs.push_back({.distance = 100 * foot, .count = count});
  }
  const auto pace = value_of(pace_from_runs(runs, CountedAs::paces));
  EXPECT_THAT(pace.pace.value / foot, agrees(100 / 30.3, 1e-14));
  EXPECT_EQ(pace.runs, 10);
  // Scatter 0.014522904435658 ft (R 4.2.2); rounding of ten counts, 303 in all, of half a pace:
  // 0.00301277534381279 of the pace (mpmath 1.2.1).
  EXPECT_THAT(pace.pace.uncertainty / foot,
              agrees(std::hypot(0.014522904435658, 100 / 30.3 * 0.00301277534381279490), 1e-12));
}

TEST(SurveyingLecture, AllTwelveCounts) {
  const std::vector<double> counts{30.5, 30, 31, 30, 29, 30, 30, 30.5, 30, 31, 32, 30};
  const auto found = value_of(moments(counts));
  // R 4.2.2.
  EXPECT_THAT(found.mean, agrees(30.3333333333, 1e-11));
  EXPECT_THAT(found.deviation, agrees(0.748736309128, 1e-11));
}

} // namespace
} // namespace wetspell
