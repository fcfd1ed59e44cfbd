// Values put together by days, all in one block of memory, for medians over the days.
#pragma once

#include "check/neighbours.hpp"

#include <algorithm>
#include <cstddef>
#include <span>
#include <vector>

namespace wetspell {

/// Days either side of the middle of a season that are looked at; dates further off are slips of the pen, and
/// other rules speak of them.
inline constexpr double half_span = 800;

/// For normal scatter a standard deviation is this many times the median of the distances from the middle.
inline constexpr double normal_share = 1.4826;

/// Announce how many values come, open, then put them; after that, the values of a bin (or of three bins side
/// by side) lie next to each other.
class DayBins {
public:
  explicit DayBins(std::size_t bins) : ends_(bins + 1, 0) {}
  void announce(std::size_t bin) { ++ends_[bin + 1]; }
  void open() {
    for (std::size_t i = 1; i < ends_.size(); ++i)
      ends_[i] += ends_[i - 1];
    next_.assign(ends_.begin(), ends_.end() - 1);
    values_.resize(ends_.back());
  }
  void put(std::size_t bin, double value) { values_[next_[bin]++] = value; }

  [[nodiscard]] std::size_t size() const { return ends_.size() - 1; }
  [[nodiscard]] std::span<const double> at(std::size_t bin) const { return between(bin, bin + 1); }
  /// The bin with the one before and the one after it; not for the first and the last.
  [[nodiscard]] std::span<const double> around(std::size_t bin) const { return between(bin - 1, bin + 2); }

private:
  [[nodiscard]] std::span<const double> between(std::size_t first, std::size_t last) const {
    return {values_.data() + ends_[first], ends_[last] - ends_[first]};
  }
  std::vector<std::size_t> ends_, next_;
  std::vector<double> values_;
};

/// The median, the mean of the two in the middle where their number is even. Reorders the values; there must
/// be one.
inline double median_of(std::vector<double>& values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return values.size() % 2 == 1 ? *middle : (*std::max_element(values.begin(), middle) + *middle) / 2;
}

/// A day in the middle of all readings, from some thousand of them; there must be one.
inline double middle_day(const std::vector<PoolReading>& readings) {
  constexpr std::size_t enough = 1024;
  const std::size_t step = readings.size() / enough + 1;
  std::vector<double> days;
  for (std::size_t i = 0; i < readings.size(); i += step)
    days.push_back(readings[i].day);
  return median_of(days);
}

} // namespace wetspell
