// University of Kentucky Cooperative Extension, FOR-47, "Pacing": feet a pace from paces over a 66-ft course.
// The chart cuts some values off and rounds others, so it holds to 0.01 ft.
#include "measure/pacing.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::value_of;

constexpr double foot = 0.3048;

struct Row {
  double paces;
  double feet;
};

TEST(PacingChart, FeetAPaceOver66Feet) {
  for (const Row& row :
       {Row{10.0, 6.60}, Row{10.5, 6.28}, Row{11.0, 6.00}, Row{11.5, 5.74}, Row{12.0, 5.50},
        Row{14.5, 4.55}, Row{15.0, 4.40}, Row{15.5, 4.26}, Row{16.0, 4.13}, Row{16.5, 4.00},
        Row{19.0, 3.47}, Row{19.5, 3.38}, Row{20.0, 3.30}, Row{20.5, 3.22}, Row{21.0, 3.14},
        Row{23.5, 2.81}, Row{24.0, 2.75}, Row{24.5, 2.70}, Row{25.0, 2.64}, Row{25.5, 2.59}}) {
    const std::vector<CalibrationRun> run{{.distance = 66 * foot, .count = row.paces}};
    EXPECT_NEAR(value_of(pace_from_runs(run, CountedAs::paces)).pace.value / foot, row.feet, 0.01)
        << row.paces;
  }
}

TEST(PacingChart, TenPacesOfTheExample) {
  const Measured pace{.value = 4.26 * foot, .uncertainty = 0};
  EXPECT_NEAR(value_of(paced_length(10, CountedAs::paces, pace)).value / foot, 42.6, 1e-12);
}

} // namespace
} // namespace wetspell
