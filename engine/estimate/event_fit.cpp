#include "estimate/event_fit.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace wetspell {

namespace {

constexpr std::size_t most_turns = 20000; // beyond any that data have needed; gap() tells when it was not

/// Rank of an end among those at one moment.
int rank(const Between& observation, bool begins) {
  if (!begins)
    return 1;
  return observation.after == observation.by ? 0 : 2;
}

} // namespace

EventFit::EventFit(std::span<const Between> observations) {
  std::map<std::pair<double, double>, std::uint32_t> known;
  which_.reserve(observations.size());
  for (const Between& each : observations) {
    const auto [at, fresh] =
        known.try_emplace({each.after, each.by}, static_cast<std::uint32_t>(distinct_.size()));
    if (fresh)
      distinct_.push_back(each);
    which_.push_back(at->second);
  }
  for (std::uint32_t i = 0; i < distinct_.size(); ++i)
    for (const bool begins : {true, false})
      ends_.push_back({i, begins});
  const auto place = [&](const End& end) {
    const Between& observation = distinct_[end.observation];
    return std::pair(end.begins ? observation.after : observation.by, rank(observation, end.begins));
  };
  std::stable_sort(ends_.begin(), ends_.end(),
                   [&](const End& one, const End& other) { return place(one) < place(other); });
  first_.resize(distinct_.size());
}

void EventFit::find_places(std::span<const double> weights) {
  places_.clear();
  covers_.clear();
  n_ = 0;
  const Between* begun = nullptr;
  for (const End& end : ends_) {
    const std::uint32_t i = end.observation;
    if (weights[i] == 0)
      continue;
    if (end.begins) {
      begun = &distinct_[i];
      first_[i] = static_cast<std::uint32_t>(places_.size());
      continue;
    }
    if (begun != nullptr)
      places_.push_back({begun->after, distinct_[i].by});
    begun = nullptr;
    covers_.push_back({first_[i], static_cast<std::uint32_t>(places_.size() - 1), weights[i]});
    n_ += weights[i];
  }
  join_like_covers();
}

/// Those that cover the same places become one. They stand in the order of their last places already.
void EventFit::join_like_covers() {
  for (auto from = covers_.begin(); from != covers_.end();) {
    const auto to = std::find_if(from, covers_.end(),
                                 [last = from->last](const Covers& each) { return each.last != last; });
    std::sort(from, to, [](const Covers& one, const Covers& other) { return one.first < other.first; });
    from = to;
  }
  std::size_t kept = 0;
  for (std::size_t i = 1; i < covers_.size(); ++i) {
    if (covers_[i].first == covers_[kept].first && covers_[i].last == covers_[kept].last)
      covers_[kept].weight += covers_[i].weight;
    else
      covers_[++kept] = covers_[i];
  }
  covers_.resize(kept + 1);
}

/// Most of the time of a bootstrap would go into logarithms, so chances are multiplied as far as a double
/// reaches before one is taken.
double EventFit::log_likelihood(std::span<const double> below) const {
  constexpr double small = 1e-60; // to the fifth still a normal number
  double sum = 0;
  double product = 1;
  for (const Covers& each : covers_) {
    const double chance = below[each.last + 1] - below[each.first];
    if (each.weight > 4 || chance < small) {
      sum += each.weight * std::log(chance);
      continue;
    }
    for (auto left = static_cast<int>(each.weight); left > 0; --left)
      product *= chance;
    if (product < small) {
      sum += std::log(product);
      product = 1;
    }
  }
  return sum + std::log(product);
}

/// slope_[j]: how fast the log likelihood grows with the weight on place j.
void EventFit::gradient() {
  std::fill(slope_.begin(), slope_.end(), 0.0);
  for (const Covers& each : covers_) {
    const double share = each.weight / (below_[each.last + 1] - below_[each.first]);
    slope_[each.first] += share;
    slope_[each.last + 1] -= share;
  }
  double sum = 0;
  for (double& slope : slope_)
    slope = sum += slope;
  gap_ = *std::max_element(slope_.begin(), slope_.end() - 1) - n_;
}

void EventFit::expectation_step() {
  double sum = 0;
  double before = below_[0];
  for (std::size_t j = 0; j < places_.size(); ++j) {
    const double weight = (below_[j + 1] - before) * slope_[j];
    before = below_[j + 1];
    below_[j + 1] = sum += weight;
  }
  for (double& each : below_)
    each /= sum;
}

/// A Newton step in the weights below each place, with the second derivatives' diagonal alone, brought back
/// to an ascending order by weighted pooling, and shortened until the likelihood does not fall.
void EventFit::convex_minorant_step() {
  const std::size_t m = places_.size();
  std::fill(slope_.begin(), slope_.end(), 0.0);
  std::fill(curvature_.begin(), curvature_.end(), 0.0);
  const double now = log_likelihood(below_);
  for (const Covers& each : covers_) {
    const double chance = below_[each.last + 1] - below_[each.first];
    const double share = each.weight / chance;
    slope_[each.last + 1] += share;
    slope_[each.first] -= share;
    curvature_[each.last + 1] += share / chance;
    curvature_[each.first] += share / chance;
  }
  blocks_.clear();
  for (std::size_t k = 1; k < m; ++k) {
    Block block{below_[k] + slope_[k] / curvature_[k], curvature_[k], 1};
    while (!blocks_.empty() && blocks_.back().value >= block.value) {
      const Block& last = blocks_.back();
      const double weight = last.weight + block.weight;
      block = {(last.value * last.weight + block.value * block.weight) / weight, weight,
               last.size + block.size};
      blocks_.pop_back();
    }
    blocks_.push_back(block);
  }
  std::size_t k = 0;
  for (const Block& block : blocks_)
    for (std::size_t i = 0; i < block.size; ++i)
      target_[++k] = std::clamp(block.value, 0.0, 1.0);
  constexpr int halvings = 12;
  double length = 1;
  for (int i = 0; i < halvings; ++i, length /= 2) {
    for (std::size_t j = 1; j < m; ++j)
      trial_[j] = below_[j] + length * (target_[j] - below_[j]);
    if (log_likelihood(trial_) > now) { // not for a likelihood of nothing
      std::swap(below_, trial_);
      return;
    }
  }
}

void EventFit::fit(std::span<const double> weights, double tolerance) {
  find_places(weights);
  const std::size_t m = places_.size();
  for (auto* each : {&slope_, &curvature_, &target_, &trial_, &below_})
    each->assign(m + 1, 0.0);
  trial_[m] = target_[m] = 1;
  for (std::size_t j = 0; j <= m; ++j)
    below_[j] = static_cast<double>(j) / static_cast<double>(m);
  for (turns_ = 0; turns_ < most_turns; ++turns_) {
    gradient();
    if (gap_ <= tolerance)
      return;
    expectation_step();
    convex_minorant_step();
  }
  gradient();
}

} // namespace wetspell
