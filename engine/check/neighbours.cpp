#include "check/neighbours.hpp"

#include "check/day_bins.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wetspell {

namespace {

// A change over more days than this says nothing about any of them: judgement.
constexpr double longest_change = 90;
constexpr double bins_in_a_change = 8;
constexpr double enough_days = 0.8; // of a change must lie where enough other pools were watched
constexpr double window_least = 7;  // days

/// Two readings of one pool that follow each other.
struct Change {
  std::size_t to = 0;     ///< index of the later reading
  double middle = 0;      ///< day
  double beyond = 0;      ///< how much more it is than the others'; NaN where too few others were watched
  std::size_t window = 0; ///< in which `middle` lies
};

class Comparison {
public:
  Comparison(const PoolReadings& readings, const FarTest& test) : all_(readings.all), test_(test) {
    mark_pools(readings);
    if (all_.empty())
      return;
    centre_ = middle_day(all_);
    start_ = std::floor(centre_) - half_span - longest_change;
    find_changes();
    find_usual_changes();
    find_deviations();
  }

  Aparts verdicts() const {
    Aparts found;
    std::vector<char> odd(all_.size(), 0);
    for (const Change& change : changes_)
      if (too_far(change.to - 1, change.to, change.beyond, deviations_[change.window]))
        odd[culprit(change)] = 1;
    std::size_t next = 0;
    for (std::size_t i = 0; i < all_.size(); ++i) {
      const Change* change = next < changes_.size() && changes_[next].to == i ? &changes_[next++] : nullptr;
      if (odd[i] != 0) {
        found.failing.push_back(apart(i));
      } else if (first_of_pool_[i] == 0) {
        const bool known =
            change != nullptr && !std::isnan(change->beyond) && deviations_[change->window] > 0;
        ++(known ? found.holding : found.undecided);
      }
    }
    return found;
  }

private:
  void mark_pools(const PoolReadings& readings) {
    // One place more than there are readings: a last pool may have none, and begins where all of them end.
    first_of_pool_.resize(all_.size() + 1, 0);
    std::size_t begin = 0;
    for (const std::size_t end : readings.ends) {
      first_of_pool_[begin] = 1;
      begin = end;
    }
    first_of_pool_[begin] = 1;
  }

  /// Dry twice, or brimful twice, is no change that others could be compared with.
  [[nodiscard]] bool stuck(std::size_t from, std::size_t to) const {
    const double a = all_[from].value;
    const double b = all_[to].value;
    return (a <= test_.lowest && b <= test_.lowest) || (a >= test_.highest && b >= test_.highest);
  }

  void find_changes() {
    double days = 0;
    changes_.reserve(all_.size());
    for (std::size_t i = 1; i < all_.size(); ++i) {
      const double apart_days = all_[i].day - all_[i - 1].day;
      const double middle = (all_[i].day + all_[i - 1].day) / 2;
      if (first_of_pool_[i] != 0 || !(apart_days > 0) || apart_days > longest_change || stuck(i - 1, i) ||
          std::abs(middle - centre_) > half_span)
        continue;
      changes_.push_back({i, middle, 0, 0});
      days += apart_days;
    }
    mean_days_ = changes_.empty() ? 1 : days / static_cast<double>(changes_.size());
    width_ = std::max(1.0, std::floor(mean_days_ / bins_in_a_change)); // whole days
  }

  [[nodiscard]] double position(double day) const { return (day - start_) / width_; }

  /// A bin counts for a change that runs over its centre.
  static std::size_t first_centre_after(double position) {
    return static_cast<std::size_t>(std::ceil(position - 0.5));
  }

  void find_usual_changes() {
    const auto bins = static_cast<std::size_t>(2 * (half_span + longest_change) / width_) + 2;
    DayBins rates(bins);
    positions_.reserve(all_.size());
    for (const PoolReading& reading : all_)
      positions_.push_back(position(reading.day));
    const auto each = [&](auto use) {
      for (const Change& change : changes_) {
        const PoolReading& a = all_[change.to - 1];
        const PoolReading& b = all_[change.to];
        // A pool that dried or filled on the way may have done more, had it been able to.
        if (b.value <= test_.lowest || b.value >= test_.highest || a.value <= test_.lowest)
          continue;
        const double rate = (b.value - a.value) / (b.day - a.day);
        const std::size_t last = first_centre_after(positions_[change.to]);
        for (std::size_t bin = first_centre_after(positions_[change.to - 1]); bin < last; ++bin)
          use(bin, rate);
      }
    };
    each([&](std::size_t bin, double) { rates.announce(bin); });
    rates.open();
    each([&](std::size_t bin, double rate) { rates.put(bin, rate); });
    usual_.assign(bins + 1, 0);
    watched_.assign(bins + 1, 0);
    pools_.assign(bins, 0);
    std::vector<double> values;
    for (std::size_t bin = 0; bin < bins; ++bin) {
      const auto found = rates.at(bin);
      // One of them is the pool's own.
      const bool enough = static_cast<double>(found.size()) >= test_.least + 1;
      double median = 0;
      if (enough) {
        values.assign(found.begin(), found.end());
        median = median_of(values);
      }
      pools_[bin] = static_cast<std::uint32_t>(found.size());
      usual_[bin + 1] = usual_[bin] + median * width_;
      watched_[bin + 1] = watched_[bin] + (enough ? width_ : 0);
    }
  }

  static double at(const std::vector<double>& sums, double position) {
    const auto bin = static_cast<std::size_t>(position);
    const double part = position - static_cast<double>(bin);
    return sums[bin] + part * (sums[bin + 1] - sums[bin]);
  }

  /// What the other pools did between the days of two readings; nothing where too few were watched.
  [[nodiscard]] std::optional<double> expected(std::size_t from, std::size_t to) const {
    const double days = all_[to].day - all_[from].day;
    const double a = positions_[from];
    const double b = positions_[to];
    if (!(days > 0) || days > longest_change || a < 0 || b + 1 >= static_cast<double>(usual_.size()))
      return std::nullopt;
    const double watched = at(watched_, b) - at(watched_, a);
    if (watched < enough_days * days)
      return std::nullopt;
    return (at(usual_, b) - at(usual_, a)) * days / watched;
  }

  void find_deviations() {
    window_ = std::max(window_least, mean_days_);
    const auto windows = static_cast<std::size_t>(2 * (half_span + longest_change) / window_) + 3;
    DayBins residuals(windows);
    for (Change& change : changes_) {
      change.beyond = beyond(change.to - 1, change.to);
      change.window = window(change.middle);
      if (!std::isnan(change.beyond))
        residuals.announce(change.window);
    }
    residuals.open();
    for (const Change& change : changes_)
      if (!std::isnan(change.beyond))
        residuals.put(change.window, std::abs(change.beyond));
    deviations_.assign(windows, 0);
    std::vector<double> values;
    for (std::size_t i = 1; i + 1 < windows; ++i) {
      const auto found = residuals.around(i);
      if (static_cast<double>(found.size()) < test_.least + 1)
        continue;
      values.assign(found.begin(), found.end());
      deviations_[i] = std::max(test_.floor, normal_share * median_of(values));
    }
  }

  [[nodiscard]] std::size_t window(double day) const {
    return 1 + static_cast<std::size_t>((day - start_) / window_);
  }

  /// How much more the pool changed than the others; NaN where too few others were watched.
  [[nodiscard]] double beyond(std::size_t from, std::size_t to) const {
    const auto usual = expected(from, to);
    return usual ? all_[to].value - all_[from].value - *usual : std::numeric_limits<double>::quiet_NaN();
  }

  [[nodiscard]] bool too_far(std::size_t from, std::size_t to, double more, double deviation) const {
    if (!(deviation > 0) || !(std::abs(more) > test_.far * deviation))
      return false;
    const double a = all_[from].value;
    const double b = all_[to].value;
    const bool could_not_fall = more > 0 && b <= test_.lowest;
    const bool filled_first = more < 0 && (a <= test_.lowest || b >= test_.highest);
    return !could_not_fall && !filled_first;
  }

  /// Whether the change between two readings is like the others'.
  [[nodiscard]] bool ordinary(std::size_t from, std::size_t to, double deviation) const {
    const double more = beyond(from, to);
    return !std::isnan(more) && !too_far(from, to, more, deviation);
  }

  /// Which of the two readings of a far change is the odd one, judged by the readings around them.
  [[nodiscard]] std::size_t culprit(const Change& change) const {
    const std::size_t to = change.to;
    const std::size_t from = to - 1;
    const double deviation = deviations_[change.window];
    const bool more_before = first_of_pool_[from] == 0;
    const bool more_after = first_of_pool_[to + 1] == 0;
    // If it is the earlier one, it went off to begin with and came back now.
    const double went = more_before ? beyond(from - 1, from) : 0;
    const bool came_back = went * change.beyond < 0 && 2 * std::abs(went) > test_.far * deviation;
    if (came_back && ordinary(from - 1, to, deviation))
      return from;
    if (more_after && !more_before && !ordinary(from, to + 1, deviation) && ordinary(to, to + 1, deviation))
      return from;
    return to;
  }

  [[nodiscard]] Apart apart(std::size_t reading) const {
    const std::size_t other = first_of_pool_[reading] != 0 ? reading + 1 : reading - 1;
    const std::size_t from = std::min(reading, other);
    const std::size_t to = std::max(reading, other);
    const auto bin = static_cast<std::size_t>(position((all_[from].day + all_[to].day) / 2));
    return {all_[reading].visit, all_[other].visit, expected(from, to).value_or(0),
            pools_[bin] - std::min<std::uint32_t>(pools_[bin], 1)};
  }

  const std::vector<PoolReading>& all_;
  const FarTest& test_;
  std::vector<char> first_of_pool_; ///< per reading, and one more at the end
  std::vector<double> positions_;   ///< per reading, in bins
  std::vector<Change> changes_;
  double centre_ = 0, start_ = 0, mean_days_ = 1, width_ = 1, window_ = window_least;
  std::vector<double> usual_, watched_; ///< sums over the days up to each bin's beginning
  std::vector<std::uint32_t> pools_;    ///< per bin: changes that run through it
  std::vector<double> deviations_;      ///< per window; 0: too few changes in those days
};

} // namespace

Aparts changes_apart(const PoolReadings& readings, const FarTest& test) {
  return readings.all.empty() ? Aparts{} : Comparison(readings, test).verdicts();
}

} // namespace wetspell
