// Readings beside those of other pools in the same days.
#include "check/day_bins.hpp"

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

/// The median of sorted values without some of them, of which the positions are given in their order; some
/// must be left.
double median_without(const std::vector<double>& sorted, const std::vector<std::size_t>& left_out) {
  const auto at = [&](std::size_t position) {
    for (const std::size_t out : left_out)
      position += out <= position ? 1 : 0;
    return sorted[position];
  };
  const std::size_t count = sorted.size() - left_out.size();
  const std::size_t middle = count / 2;
  return count % 2 == 1 ? at(middle) : (at(middle - 1) + at(middle)) / 2;
}

/// Readings by day, and what was usual on each.
class Levels {
public:
  Levels(const PoolReadings& readings, const FarTest& test)
      : all_(readings.all), test_(test), start_(std::floor(middle_day(readings.all)) - half_span),
        days_(static_cast<std::size_t>(2 * half_span) + 3), sorted_(days_.size()) {
    for (const PoolReading& reading : all_)
      if (const std::size_t bin = bin_of(reading.day); bin != 0)
        days_.announce(bin);
    days_.open();
    for (const PoolReading& reading : all_)
      if (const std::size_t bin = bin_of(reading.day); bin != 0)
        days_.put(bin, reading.value);
    find_usual();
  }

  /// Judges one reading; the pool's own of those three days run from `first` to one before `last`.
  void judge(std::size_t reading, std::size_t first, std::size_t last, Aparts& found) {
    const PoolReading& here = all_[reading];
    const Usual& usual = usual_[bin_of(here.day)];
    const std::size_t others = usual.readings - std::min(usual.readings, last - first);
    if (others == 0 || static_cast<double>(others) < test_.least) {
      ++found.undecided;
      return;
    }
    if (!(std::abs(here.value - usual.median) > test_.far * usual.deviation)) {
      ++found.holding;
      return;
    }
    // What is said of the others leaves the pool itself out.
    const std::vector<double>& values = sorted(bin_of(here.day));
    find_own(values, first, last);
    found.failing.push_back({here.visit, SeasonView::nowhere, median_without(values, own_), others});
  }

private:
  struct Usual {
    double median = 0, deviation = 0;
    std::size_t readings = 0;
  };

  /// 0: too far from the rest of the season.
  [[nodiscard]] std::size_t bin_of(double day) const {
    const double bin = std::floor(day) - start_ + 1;
    return bin >= 1 && bin <= 2 * half_span ? static_cast<std::size_t>(bin) : 0;
  }
  void find_usual() {
    usual_.resize(days_.size());
    std::vector<double> values;
    for (std::size_t bin = 1; bin + 1 < days_.size(); ++bin) {
      const auto around = days_.around(bin);
      if (days_.at(bin).empty() || static_cast<double>(around.size()) < test_.least + 1)
        continue;
      values.assign(around.begin(), around.end());
      const double median = median_of(values);
      for (double& value : values)
        value = std::abs(value - median);
      usual_[bin] = {median, std::max(test_.floor, normal_share * median_of(values)), values.size()};
    }
  }
  /// The readings around a day: sorted when the first far one asks, for there may be thousands of both.
  const std::vector<double>& sorted(std::size_t bin) {
    std::vector<double>& values = sorted_[bin];
    if (values.empty()) {
      const auto around = days_.around(bin);
      values.assign(around.begin(), around.end());
      std::ranges::sort(values);
    }
    return values;
  }
  /// Where the pool's own values stand among the sorted ones, each at a place of its own.
  void find_own(const std::vector<double>& values, std::size_t first, std::size_t last) {
    own_.clear();
    for (std::size_t own = first; own < last; ++own)
      if (bin_of(all_[own].day) != 0) // at the brim of the season only one of a pool's days may be among them
        own_.push_back(
            static_cast<std::size_t>(std::ranges::lower_bound(values, all_[own].value) - values.begin()));
    std::ranges::sort(own_);
    for (std::size_t i = 1; i < own_.size(); ++i)
      own_[i] = std::max(own_[i], own_[i - 1] + 1);
  }

  const std::vector<PoolReading>& all_;
  const FarTest& test_;
  double start_;
  DayBins days_;
  std::vector<Usual> usual_;
  std::vector<std::vector<double>> sorted_; ///< per day; empty: nobody asked
  std::vector<std::size_t> own_;
};

} // namespace

Aparts levels_apart(const PoolReadings& readings, const FarTest& test) {
  Aparts found;
  if (readings.all.empty())
    return found;
  Levels levels(readings, test);
  std::size_t begin = 0;
  for (const std::size_t end : readings.ends) {
    std::size_t first = begin;
    std::size_t last = begin;
    for (std::size_t i = begin; i < end; ++i) {
      const double day = std::floor(readings.all[i].day);
      while (std::floor(readings.all[first].day) < day - 1)
        ++first;
      while (last < end && std::floor(readings.all[last].day) <= day + 1)
        ++last;
      levels.judge(i, first, last, found);
    }
    begin = end;
  }
  return found;
}

} // namespace wetspell
