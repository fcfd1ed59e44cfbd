#include "estimate/kaplan_meier.hpp"

#include "measure/distribution.hpp"
#include "measure/usable.hpp"

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

/// Of log(-log(share)), brought back; the sum is Greenwood's.
Interval log_log_interval(double share, double sum, double z) {
  if (share <= 0 || share >= 1)
    return {0, 1};
  const double spread = z * std::sqrt(sum) / std::abs(std::log(share));
  return {std::pow(share, std::exp(spread)), std::pow(share, std::exp(-spread))};
}

template <class Below> std::optional<double> first(std::span<const LeftStep> steps, Below below) {
  const auto found = std::find_if(steps.begin(), steps.end(), below);
  return found == steps.end() ? std::nullopt : std::optional(found->moment);
}

} // namespace

Result<std::vector<LeftStep>> kaplan_meier(std::span<const FollowedUp> all, double level) {
  if (all.empty())
    return not_enough("There is nothing to follow.");
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  std::vector<FollowedUp> sorted(all.begin(), all.end());
  if (!std::all_of(sorted.begin(), sorted.end(),
                   [](const FollowedUp& each) { return std::isfinite(each.moment); }))
    return not_a_number("A moment is not a finite number.");
  std::sort(sorted.begin(), sorted.end(),
            [](const FollowedUp& one, const FollowedUp& other) { return one.moment < other.moment; });
  const double z = normal_factor(level);
  std::vector<LeftStep> steps;
  double share = 1;
  double sum = 0;
  for (std::size_t from = 0; from < sorted.size();) {
    LeftStep step;
    step.moment = sorted[from].moment;
    step.at_risk = sorted.size() - from;
    for (; from < sorted.size() && sorted[from].moment == step.moment; ++from)
      step.events += sorted[from].happened;
    if (step.events == 0)
      continue;
    const auto risk = static_cast<double>(step.at_risk);
    const auto events = static_cast<double>(step.events);
    share *= 1 - events / risk;
    step.share = share;
    if (step.events < step.at_risk) {
      sum += events / (risk * (risk - events));
      step.error = share * std::sqrt(sum);
    }
    step.interval = log_log_interval(share, sum, z);
    steps.push_back(step);
  }
  return steps;
}

LeftMedian median_of(std::span<const LeftStep> steps) {
  constexpr double half = 0.5 + 1e-9; // a half that rounding has moved is still a half
  LeftMedian found;
  found.median = first(steps, [&](const LeftStep& step) { return step.share <= half; });
  found.low =
      first(steps, [&](const LeftStep& step) { return step.share <= 0 || step.interval.low <= half; });
  found.high = first(
      steps, [&](const LeftStep& step) { return step.share <= 0 ? false : step.interval.high <= half; });
  return found;
}

} // namespace wetspell
