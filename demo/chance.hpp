// Chance that is the same on every machine and in every standard library.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <random>
#include <vector>

namespace wetspell::demo {

/// Numbers drawn from a seed. std::mt19937_64 is fixed by the standard; its distributions are not, so these
/// are ours.
class Chance {
public:
  explicit Chance(std::uint64_t seed) : engine_(seed) {}

  /// Evenly between 0 and 1.
  double share() { return static_cast<double>(engine_() >> 11) * 0x1p-53; }
  double between(double low, double high) { return low + (high - low) * share(); }
  bool one_in(double n) { return share() * n < 1; }
  /// Evenly from 0 to n - 1.
  std::size_t below(std::size_t n) { return static_cast<std::size_t>(share() * static_cast<double>(n)); }
  /// About a mean, roughly normal, never further than three deviations away (the sum of twelve shares).
  double about(double mean, double deviation) {
    double sum = -6;
    for (int i = 0; i < 12; ++i)
      sum += share();
    return mean + deviation * std::fmin(3, std::fmax(-3, sum));
  }
  template <class T> const T& pick(const std::vector<T>& from) { return from[below(from.size())]; }

private:
  std::mt19937_64 engine_;
};

} // namespace wetspell::demo
