// NIST/SEMATECH e-Handbook of Statistical Methods.
#include "measure/statistics.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

struct Row {
  std::size_t freedom;
  double printed;
  double computed; ///< R 4.2.2, qt(0.975, freedom)
};

// Section 1.3.6.7.2, upper critical values of Student's t, column 0.975.
TEST(NistHandbook, StudentT) {
  for (const Row& row :
       {Row{1, 12.706, 12.7062047361747}, Row{2, 4.303, 4.30265272974946}, Row{3, 3.182, 3.18244630528371},
        Row{4, 2.776, 2.77644510519779}, Row{5, 2.571, 2.57058183563631}, Row{10, 2.228, 2.22813885198627},
        Row{20, 2.086, 2.08596344726586}, Row{30, 2.042, 2.04227245630124}}) {
    Moments unit;
    unit.n = row.freedom + 1;
    unit.mean_uncertainty = 1;
    const double t = value_of(mean_half_width(unit, 0.95));
    EXPECT_NEAR(t, row.printed, 0.0005) << row.freedom;
    EXPECT_THAT(t, agrees(row.computed, 1e-12)) << row.freedom;
  }
}

TEST(NistHandbook, StudentTOfVeryManyValuesIsNormal) {
  Moments unit;
  unit.n = 2000000000;
  unit.mean_uncertainty = 1;
  EXPECT_NEAR(value_of(mean_half_width(unit, 0.95)), 1.960, 0.0005);
}

// Section 1.3.5.2, ZARR13.DAT: the printed limits are quoted from memory; they were worked out from digits
// that the page does not print, hence the tolerance.
TEST(NistHandbook, ConfidenceLimitsOfTheMean) {
  Moments zarr13;
  zarr13.n = 195;
  zarr13.mean = 9.261460;
  zarr13.deviation = 0.022789;
  zarr13.mean_uncertainty = zarr13.deviation / std::sqrt(195.0);
  const double half = value_of(mean_half_width(zarr13, 0.95));
  EXPECT_NEAR(zarr13.mean - half, 9.258242, 1e-6);
  EXPECT_NEAR(zarr13.mean + half, 9.264679, 1e-6);
  EXPECT_THAT(zarr13.mean + half, agrees(9.26467865025659, 1e-13)); // R 4.2.2
}

} // namespace
} // namespace wetspell
