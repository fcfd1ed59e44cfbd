#include "check/neighbours.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace wetspell {
namespace {

constexpr FarTest test{1.5, -1e9, 1e9, 4, 5};

double middle(std::vector<double> values) {
  std::ranges::sort(values);
  const std::size_t half = values.size() / 2;
  return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

/// What levels_apart promises, said in the plainest way: every reading looks at every other.
Aparts plainly(const PoolReadings& readings) {
  Aparts found;
  std::size_t first = 0;
  for (const std::size_t end : readings.ends) {
    for (std::size_t here = first; here < end; ++here) {
      const PoolReading& reading = readings.all[here];
      std::vector<double> around, others;
      for (std::size_t i = 0; i < readings.all.size(); ++i)
        if (std::abs(std::floor(readings.all[i].day) - std::floor(reading.day)) <= 1) {
          around.push_back(readings.all[i].value);
          if (i < first || i >= end)
            others.push_back(readings.all[i].value);
        }
      if (static_cast<double>(others.size()) < test.least) {
        ++found.undecided;
        continue;
      }
      const double usual = middle(around);
      for (double& value : around)
        value = std::abs(value - usual);
      if (std::abs(reading.value - usual) > test.far * std::max(test.floor, 1.4826 * middle(around)))
        found.failing.push_back({reading.visit, SeasonView::nowhere, middle(others), others.size()});
      else
        ++found.holding;
    }
    first = end;
  }
  return found;
}

void expect_same(const Aparts& found, const Aparts& plain) {
  EXPECT_EQ(found.holding, plain.holding);
  EXPECT_EQ(found.undecided, plain.undecided);
  ASSERT_EQ(found.failing.size(), plain.failing.size());
  for (std::size_t i = 0; i < plain.failing.size(); ++i) {
    EXPECT_EQ(found.failing[i].visit, plain.failing[i].visit);
    EXPECT_EQ(found.failing[i].usual, plain.failing[i].usual);
    EXPECT_EQ(found.failing[i].others, plain.failing[i].others);
  }
}

/// Pools with up to four readings in three days, in steps of `step` so that many are alike, some of them
/// wild.
PoolReadings season_of_chance(std::mt19937& chance, int pools, double step) {
  std::uniform_real_distribution<double> part(0, 1);
  PoolReadings readings;
  for (int pool = 0; pool < pools; ++pool) {
    for (double day = 100; day < 112; day += part(chance) < 0.5 ? 0.4 : 3 * part(chance)) {
      const double wild = part(chance) < 0.2 ? 40 : 3;
      const double value = step * std::round(wild * (part(chance) - 0.5) / step);
      readings.all.push_back({static_cast<std::uint32_t>(readings.all.size()), day, value});
    }
    readings.ends.push_back(readings.all.size());
  }
  return readings;
}

TEST(Levels, AreWhatThePlainWaySays) {
  std::mt19937 chance(11);
  std::size_t even = 0, odd = 0, undecided = 0;
  for (int season = 0; season < 60; ++season) {
    const PoolReadings readings = season_of_chance(chance, 1 + season / 2, season % 3 == 0 ? 1 : 0.01);
    const Aparts plain = plainly(readings);
    expect_same(levels_apart(readings, test), plain);
    undecided += plain.undecided;
    for (const Apart& apart : plain.failing)
      ++(apart.others % 2 == 0 ? even : odd);
  }
  EXPECT_GT(even, 100U); // all of these came up
  EXPECT_GT(odd, 100U);
  EXPECT_GT(undecided, 100U);
}

TEST(Levels, APoolsOwnEqualReadingsAreAllLeftOut) {
  PoolReadings readings;
  for (const double value : {1.0, 1.0, 2.0, 2.0, 3.0}) {
    readings.all.push_back({static_cast<std::uint32_t>(readings.all.size()), 50, value});
    readings.ends.push_back(readings.all.size());
  }
  for (int again = 0; again < 3; ++again)
    readings.all.push_back({static_cast<std::uint32_t>(readings.all.size()), 50, 30});
  readings.ends.push_back(readings.all.size());
  const Aparts found = levels_apart(readings, test);
  ASSERT_EQ(found.failing.size(), 3U);
  EXPECT_EQ(found.failing[0].usual, 2);
  EXPECT_EQ(found.failing[0].others, 5U);
}

// Days too far from the middle of the season are not compared; a pool may have been looked at on both sides
// of the brim.
TEST(Levels, AtTheBrimOfASeason) {
  PoolReadings readings;
  const auto pool = [&](std::initializer_list<PoolReading> of_it) {
    for (const PoolReading& reading : of_it)
      readings.all.push_back({static_cast<std::uint32_t>(readings.all.size()), reading.day, reading.value});
    readings.ends.push_back(readings.all.size());
  };
  for (int i = 0; i < 1000; ++i)
    pool({{0, 2000, 10}});
  for (int i = 0; i < 10; ++i)
    pool({{0, 1199, 10}, {0, 1200, 10 + 0.1 * i}});
  pool({{0, 1199, 7}, {0, 1200, 90}});
  const Aparts found = levels_apart(readings, test);
  ASSERT_EQ(found.failing.size(), 1U);
  EXPECT_EQ(found.failing[0].visit, readings.all.size() - 1);
  EXPECT_DOUBLE_EQ(found.failing[0].usual, 10.45);
}

} // namespace
} // namespace wetspell
