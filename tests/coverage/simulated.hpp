// Simulated data that are the same on every machine, and how often an interval held the truth.
#pragma once

#include "measure/measured.hpp"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <gtest/gtest.h>

#include <string>

namespace wetspell::test {

class Chance {
public:
  explicit Chance(std::uint64_t seed) : engine_(seed) {}

  bool happens(double chance) { return share() < chance; }
  double share() { return boost::random::uniform_01<double>()(engine_); }
  double between(double low, double high) { return low + (high - low) * share(); }
  double normal(double mean, double deviation) {
    return boost::random::normal_distribution<double>(mean, deviation)(engine_);
  }
  /// How many of `all` happen.
  double some_of(int all, double chance) {
    int some = 0;
    for (int i = 0; i < all; ++i)
      some += happens(chance);
    return some;
  }

private:
  boost::random::mt19937_64 engine_;
};

class Held {
public:
  void count(const Interval& interval, double truth) {
    ++all_;
    held_ += interval.low <= truth && truth <= interval.high;
  }
  [[nodiscard]] double share() const { return static_cast<double>(held_) / static_cast<double>(all_); }

  /// Leaves the share in the report and expects it between two bounds.
  void expect(const std::string& what, double low = 0.93, double high = 0.97) const {
    testing::Test::RecordProperty(what + "_per_thousand", static_cast<int>(1000 * share() + 0.5));
    EXPECT_GE(share(), low) << what;
    EXPECT_LE(share(), high) << what;
  }

private:
  std::size_t all_ = 0;
  std::size_t held_ = 0;
};

} // namespace wetspell::test
