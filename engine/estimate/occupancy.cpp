#include "estimate/occupancy.hpp"

#include "estimate/proportion.hpp"
#include "measure/distribution.hpp"
#include "measure/usable.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace wetspell {

namespace {

double logistic(double x) {
  return 1 / (1 + std::exp(-x));
}

/// Pools with the same looks and finds count once, with their number.
struct Alike {
  double looks = 0;
  double found = 0;
  double pools = 0;
};

/// Slope and second derivatives of the log likelihood in the logits of use and of finding.
struct Slopes {
  double use = 0, find = 0;
  double use_use = 0, use_find = 0, find_find = 0;
};

class Model {
public:
  explicit Model(std::vector<Alike> data) : data_(std::move(data)) {}

  /// Chance that a pool is used, given what was seen there.
  static double given(const Alike& each, double used, double found) {
    if (each.found > 0)
      return 1;
    const double overlooked = used * std::pow(1 - found, each.looks);
    return overlooked / (overlooked + 1 - used);
  }

  [[nodiscard]] double log_likelihood(double used, double found) const {
    double sum = 0;
    for (const Alike& each : data_)
      sum += each.pools *
             (each.found > 0
                  ? std::log(used) + each.found * std::log(found) +
                        (each.looks > each.found ? (each.looks - each.found) * std::log1p(-found) : 0.0)
                  : std::log(used * std::pow(1 - found, each.looks) + 1 - used));
    return sum;
  }

  [[nodiscard]] Slopes slopes(double used, double found) const {
    Slopes sum;
    for (const Alike& each : data_) {
      const double z = given(each, used, found);
      const double doubt = z * (1 - z);
      const double expected = each.looks * found;
      sum.use += each.pools * (z - used);
      sum.find += each.pools * (each.found - expected * z);
      sum.use_use += each.pools * (doubt - used * (1 - used));
      sum.use_find -= each.pools * expected * doubt;
      sum.find_find += each.pools * (expected * expected * doubt - expected * (1 - found) * z);
    }
    return sum;
  }

  /// One step of EM: never down, and never out of 0 to 1.
  void step(double& used, double& found) const {
    double pools = 0, in_use = 0, finds = 0, looks = 0;
    for (const Alike& each : data_) {
      const double z = given(each, used, found);
      pools += each.pools;
      in_use += each.pools * z;
      finds += each.pools * each.found;
      looks += each.pools * each.looks * z;
    }
    used = in_use / pools;
    found = finds / looks;
  }

private:
  std::vector<Alike> data_;
};

struct Fitted {
  double used = 0, found = 0;
  double use_logit_error = 0, find_logit_error = 0;
  bool inside = false; ///< both chances lie between 0 and 1, and the information is there
};

/// EM for a start, then Newton in the logits.
Fitted fit(const Model& model, double found_in, double found_share) {
  constexpr int most = 200;
  constexpr double near_limit = 15; // in logits: 3e-7 from 0 or 1
  Fitted at{std::clamp(found_in, 0.05, 0.95), std::clamp(found_share, 0.05, 0.95), 0, 0, false};
  for (int i = 0; i < most; ++i)
    model.step(at.used, at.found);
  for (int i = 0; i < most; ++i) {
    const Slopes slopes = model.slopes(at.used, at.found);
    const double information = slopes.use_use * slopes.find_find - slopes.use_find * slopes.use_find;
    const double use = std::log(at.used) - std::log1p(-at.used);
    const double find = std::log(at.found) - std::log1p(-at.found);
    if (std::abs(use) > near_limit || std::abs(find) > near_limit || !std::isfinite(use + find))
      return at;
    if (!(slopes.use_use < 0) || !(information > 0)) {
      model.step(at.used, at.found);
      continue;
    }
    const double use_step =
        std::clamp((slopes.find_find * slopes.use - slopes.use_find * slopes.find) / information, -2.0, 2.0);
    const double find_step =
        std::clamp((slopes.use_use * slopes.find - slopes.use_find * slopes.use) / information, -2.0, 2.0);
    at.use_logit_error = std::sqrt(-slopes.find_find / information);
    at.find_logit_error = std::sqrt(-slopes.use_use / information);
    if (std::abs(use_step) + std::abs(find_step) < 1e-12) {
      at.inside = true;
      return at;
    }
    at.used = logistic(use - use_step);
    at.found = logistic(find - find_step);
  }
  return at;
}

Interval logit_interval(double share, double logit_error, double z) {
  const double logit = std::log(share) - std::log1p(-share);
  return {logistic(logit - z * logit_error), logistic(logit + z * logit_error)};
}

std::vector<Alike> alike(std::span<const Looks> pools) {
  std::vector<Alike> all;
  for (const Looks& pool : pools) {
    if (pool.looks == 0)
      continue;
    const auto looks = static_cast<double>(pool.looks);
    const auto found = static_cast<double>(pool.found);
    const auto same = std::find_if(all.begin(), all.end(), [&](const Alike& each) {
      return each.looks == looks && each.found == found;
    });
    if (same == all.end())
      all.push_back({looks, found, 1});
    else
      ++same->pools;
  }
  return all;
}

} // namespace

Result<Occupancy> occupancy(std::span<const Looks> pools, double level) {
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  Occupancy result;
  std::size_t with = 0, finds = 0, looks_there = 0, most_looks = 0;
  for (const Looks& pool : pools) {
    if (pool.found > pool.looks)
      return bad_argument(fmt::format("{} finds in {} looks cannot be.", pool.found, pool.looks));
    result.pools += pool.looks > 0;
    result.looks += pool.looks;
    with += pool.found > 0;
    finds += pool.found;
    looks_there += pool.found > 0 ? pool.looks : 0;
    most_looks = std::max(most_looks, pool.looks);
  }
  if (result.pools == 0)
    return not_enough("no pool was looked at");
  if (with == 0)
    return not_enough(
        fmt::format("never found in {} looks at {} pools: that it is absent cannot be told from "
                    "that it was overlooked",
                    result.looks, result.pools));
  if (most_looks < 2)
    return not_enough("every pool was looked at once: how often a look finds it cannot be told");
  const auto count = [](std::size_t number) { return static_cast<double>(number); };
  result.found_in = count(with) / count(result.pools);
  const auto exact = [&](std::size_t some, std::size_t all) {
    return exact_interval(count(some), count(all), level).value();
  };
  const Model model(alike(pools));
  if (finds == looks_there) {
    // Found at every look wherever it was found at all: one look is enough, as far as this shows.
    result.used = result.found_in;
    result.used_interval = exact(with, result.pools);
    result.found_per_look = 1;
    result.found_interval = exact(finds, looks_there);
    result.caution =
        "found at every look where it was found at all: nothing can be said of pools where it was "
        "overlooked";
    result.log_likelihood = model.log_likelihood(result.used, 1 - 1e-15);
    return result;
  }
  const Fitted fitted = fit(model, result.found_in, count(finds) / count(looks_there));
  const double z = normal_factor(level);
  result.used = fitted.used;
  result.found_per_look = fitted.found;
  if (!fitted.inside) {
    // No pool was left without a find, or it was found so seldom that any number may have been overlooked.
    result.used = 1;
    result.found_per_look = count(finds) / count(result.looks);
    result.used_interval = {exact(with, result.pools).low, 1};
    result.found_interval = exact(finds, result.looks);
    result.caution =
        with == result.pools
            ? "found in every pool that was looked at: none was overlooked"
            : "found so seldom that it may have been overlooked in every pool: the estimate ends at "
              "all pools, and its lower end is that of the share found";
    result.log_likelihood = model.log_likelihood(1, result.found_per_look);
    return result;
  }
  result.used_error = fitted.used * (1 - fitted.used) * fitted.use_logit_error;
  result.found_error = fitted.found * (1 - fitted.found) * fitted.find_logit_error;
  result.used_interval = logit_interval(fitted.used, fitted.use_logit_error, z);
  result.found_interval = logit_interval(fitted.found, fitted.find_logit_error, z);
  result.log_likelihood = model.log_likelihood(fitted.used, fitted.found);
  if (result.used_interval.high - result.used_interval.low > 0.8)
    result.caution = "the looks say next to nothing: the interval spans nearly everything";
  return result;
}

Result<double> looks_to_be_sure(double found_per_look, double level) {
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  if (!(found_per_look > 0 && found_per_look < 1))
    return bad_argument(fmt::format("The chance that a look finds a species lies between 0 and 1, not at {}.",
                                    in_words(found_per_look)));
  return std::log1p(-level) / std::log1p(-found_per_look);
}

} // namespace wetspell
