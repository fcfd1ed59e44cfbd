// Basins: what their uncertainty follows, what they refuse. Values are checked in
// tests/published/hayashi_basin_test.cpp.
#include "measure/basin.hpp"

#include "engine/measure/digits.hpp"

#include <cmath>
#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

const std::vector<BasinReading> visits{{{0.2, 0.015}, {50, 2}}, {{0.5, 0.015}, {120, 4}}};

/// The volume at the last visit's depth with one input moved.
double volume_with(std::vector<BasinReading> readings) {
  const double depth = readings.back().depth.value;
  return value_of(volume_at(value_of(basin_from_readings(readings)), {depth, 0})).value;
}

TEST(Basin, UncertaintyIsTheChangeWithEachReading) {
  const Basin basin = value_of(basin_from_readings(visits));
  const auto volume = value_of(volume_at(basin, visits.back().depth, 1));
  double squares = 0;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    for (Measured BasinReading::*what : {&BasinReading::depth, &BasinReading::area}) {
      constexpr double step = 1e-6;
      auto more = visits;
      auto less = visits;
      (more[i].*what).value += step;
      (less[i].*what).value -= step;
      const double slope = (volume_with(more) - volume_with(less)) / (2 * step);
      squares += std::pow(slope * (visits[i].*what).uncertainty, 2);
    }
  }
  EXPECT_THAT(volume.uncertainty, agrees(std::sqrt(squares), 1e-6));
}

TEST(Basin, DrawsAgreeWithTheFirstOrderWhereItIsSmall) {
  const Basin basin = value_of(basin_from_readings(visits));
  const auto volume = value_of(volume_at(basin, visits.back().depth, 1));
  ASSERT_LT(volume.uncertainty / volume.value, 0.1);
  const auto drawn = value_of(volume_drawn(basin, visits.back().depth, 1, 0.95, 20000, 3));
  EXPECT_THAT(drawn.volume.value, agrees(volume.value, 0.005));
  EXPECT_THAT(drawn.volume.uncertainty, agrees(volume.uncertainty, 0.03));
  const Interval ends = spread_of(volume, 0.95);
  EXPECT_THAT(drawn.interval.low, agrees(ends.low, 0.01));
  EXPECT_THAT(drawn.interval.high, agrees(ends.high, 0.01));
}

TEST(Basin, OneReadingTakesAShapeAndItsDoubt) {
  const Basin basin = value_of(basin_with_shape({{0.5, 0.015}, {120, 4}}, 2));
  EXPECT_TRUE(basin.shape_given);
  const auto volume = value_of(volume_at(basin, {0.5, 0.015}, 0));
  EXPECT_THAT(volume.value, agrees(30, 1e-14)); // A h / 2
  // V = A h / (1 + b): the three inputs in quadrature.
  const double expected = std::sqrt(std::pow(4.0 / 120, 2) + std::pow(0.015 / 0.5, 2) +
                                    std::pow(given_exponent_uncertainty() / 2, 2));
  EXPECT_THAT(volume.uncertainty / volume.value, agrees(expected, 1e-12));
  EXPECT_NEAR(given_exponent_uncertainty(), 0.459, 0.001);
  EXPECT_EQ(value_of(volume_at(value_of(basin_with_shape({{0.5, 0}, {120, 0}}, 2)), {0.5, 0})).uncertainty,
            0);
}

TEST(Basin, ReadingsThatScatterTooMuchStretchTheErrors) {
  std::vector<BasinReading> steady;
  std::vector<BasinReading> scattered;
  const double off[] = {1.3, 0.75, 1.35, 0.7, 1.0};
  for (int i = 0; i < 5; ++i) {
    const double depth = 0.2 + 0.1 * i;
    steady.push_back({{depth, 0.01}, {200 * depth, 4 * depth}});
    scattered.push_back({{depth, 0.01}, {200 * depth * off[i], 4 * depth}});
  }
  EXPECT_EQ(value_of(basin_from_readings(steady)).stretch, 1);
  EXPECT_GT(value_of(basin_from_readings(scattered)).stretch, 3);
}

TEST(Basin, DryIsNothing) {
  const Basin basin = value_of(basin_from_readings(visits));
  EXPECT_EQ(value_of(volume_at(basin, {0, 0})).value, 0);
  EXPECT_EQ(value_of(area_at(basin, {0, 0.01})).value, 0);
  EXPECT_EQ(value_of(fill_from_depth(basin, {0, 0}, {0.9, 0.015})).value, 0);
}

TEST(Basin, Refuses) {
  using Readings = std::vector<BasinReading>;
  EXPECT_EQ(basin_from_readings(Readings{{{0.2, 0}, {50, 0}}}).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(basin_from_readings(Readings{{{0.2, 0}, {50, 0}}, {{0.2, 0}, {60, 0}}}).error().text,
            "All 2 depths are 0.2 m; the shape of a basin needs two different depths.");
  EXPECT_EQ(basin_from_readings(Readings{{{0.2, 0}, {50, 0}}, {{0.5, 0}, {40, 0}}}).error().text,
            "The area does not grow with depth: 50 m² at 0.2 m, and 40 m² at 0.5 m.");
  EXPECT_EQ(basin_from_readings(Readings{{{0, 0}, {50, 0}}, {{0.5, 0}, {40, 0}}}).error().kind,
            ProblemKind::bad_argument);
  EXPECT_EQ(basin_with_shape({{0.2, 0}, {50, 0}}, 0).error().kind, ProblemKind::bad_argument);
  const Basin basin = value_of(basin_from_readings(visits));
  EXPECT_EQ(volume_at(basin, {-0.1, 0}).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(volume_at(basin, {NAN, 0}).error().kind, ProblemKind::not_a_number);
  EXPECT_EQ(fill_from_depth(basin, {0.3, 0}, {0, 0}).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(volume_drawn(basin, {0.5, 0}, {}, 0.95, 100, 1).error().kind, ProblemKind::not_enough);
}

} // namespace
} // namespace wetspell
