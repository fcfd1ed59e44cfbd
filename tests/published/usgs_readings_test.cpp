// U.S. Geological Survey, National Field Manual 6.1.3.B: in still water three readings are made in sequence
// and their median is recorded. Ours is the mean of three places; on even readings the two agree. In numbers
// by R 4.2.2.
#include "measure/statistics.hpp"
#include "measure/three_readings.hpp"

#include "engine/measure/digits.hpp"
#include "engine/measure/quantities.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::a_value;
using test::agrees;
using test::value_of;

TEST(UsgsReadings, MeanAndMedianOfEvenReadingsAgree) {
  const std::vector<double> readings{10.2, 10.4, 10.3};
  const auto all = value_of(moments(readings));
  EXPECT_THAT(value_of(robust(readings)).median, agrees(10.3, 1e-15));
  EXPECT_THAT(all.mean, agrees(10.3, 1e-15));
  EXPECT_THAT(all.deviation, agrees(0.1, 1e-13));
  EXPECT_THAT(value_of(mean_half_width(all, 0.95)), agrees(0.24841377117503, 1e-12));
}

TEST(UsgsReadings, MeanInFahrenheitConverts) {
  const std::vector<Quantity> readings{a_value(50, Unit::fahrenheit), a_value(51, Unit::fahrenheit),
                                       a_value(52, Unit::fahrenheit)};
  EXPECT_THAT(value_of(mean_of_readings(readings)).mean, agrees(10.555555555556, 1e-13));
}

} // namespace
} // namespace wetspell
