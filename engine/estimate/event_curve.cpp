#include "estimate/event_curve.hpp"

#include "estimate/event_fit.hpp"
#include "measure/usable.hpp"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_int_distribution.hpp>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

constexpr double fine = 1e-9;     // of the log likelihood: far below what the masses' digits show
constexpr double in_draws = 1e-3; // of the log likelihood: nothing beside the draws' own scatter

std::optional<Problem> wrong(std::span<const Between> observations) {
  if (observations.empty())
    return not_enough("There is no observation.");
  for (const Between& each : observations)
    if (!(each.after <= each.by) || (each.after == each.by && !std::isfinite(each.by)))
      return bad_argument(
          fmt::format("An event after {} and by {} cannot be.", in_words(each.after), in_words(each.by)));
  return std::nullopt;
}

/// The place in which the weight first reaches `share`, and how far into it.
struct Reached {
  std::size_t place = 0;
  double into = 0; ///< 0 to 1
};

template <class WeightOf> Reached reached(std::size_t places, WeightOf weight, double share) {
  constexpr double rounding = 1e-9;
  double before = 0;
  std::size_t last = 0; // the last with weight
  for (std::size_t j = 0; j < places; ++j) {
    const double here = weight(j);
    if (here <= 0)
      continue;
    last = j;
    if (before + here >= share - rounding)
      return {j, std::clamp((share - before) / here, 0.0, 1.0)};
    before += here;
  }
  return {last, 1};
}

double within(const Between& place, double into) {
  if (place.after == place.by)
    return place.by;
  if (!std::isfinite(place.after) || !std::isfinite(place.by))
    return std::isfinite(place.after) ? place.by : place.after;
  return place.after + into * (place.by - place.after);
}

/// The value below which `share` of the values lie, with as much caution as their number asks for: the
/// lower of two neighbours below the middle, the upper one above it.
double percentile(std::vector<double>& values, double share) {
  const double at = share * static_cast<double>(values.size() - 1);
  const auto index = static_cast<std::ptrdiff_t>(share < 0.5 ? std::floor(at) : std::ceil(at));
  std::nth_element(values.begin(), values.begin() + index, values.end());
  return values[static_cast<std::size_t>(index)];
}

Interval middle_of(std::vector<double>& values, double level) {
  const double tail = (1 - level) / 2;
  const double low = percentile(values, tail);
  return {low, percentile(values, 1 - tail)};
}

} // namespace

Result<EventCurve> event_curve(std::span<const Between> observations) {
  if (auto problem = wrong(observations))
    return *std::move(problem);
  EventFit fit(observations);
  std::vector<double> weights(fit.distinct(), 0.0);
  for (const std::uint32_t which : fit.which())
    ++weights[which];
  fit.fit(weights, fine);
  if (fit.gap() > in_draws)
    return Problem{ProblemKind::no_convergence, "The share that is left by day could not be worked out."};
  EventCurve curve;
  curve.n = observations.size();
  curve.log_likelihood = fit.log_likelihood();
  curve.gap = fit.gap();
  constexpr double nothing = 1e-12;
  for (std::size_t j = 0; j < fit.places().size(); ++j)
    if (fit.weight(j) > nothing)
      curve.masses.push_back({fit.places()[j], fit.weight(j)});
  return curve;
}

double share_after(const EventCurve& curve, double moment) {
  double after = 0;
  for (auto mass = curve.masses.rbegin(); mass != curve.masses.rend() && mass->where.by > moment; ++mass)
    after += mass->weight;
  return std::min(after, 1.0);
}

Between event_quantile(const EventCurve& curve, double share) {
  return curve
      .masses[reached(
                  curve.masses.size(), [&](std::size_t j) { return curve.masses[j].weight; }, share)
                  .place]
      .where;
}

std::optional<double> event_quantile_within(const EventCurve& curve, double share) {
  const Reached at = reached(
      curve.masses.size(), [&](std::size_t j) { return curve.masses[j].weight; }, share);
  const double moment = within(curve.masses[at.place].where, at.into);
  return std::isfinite(moment) ? std::optional(moment) : std::nullopt;
}

Result<EventBootstrap> event_bootstrap(std::span<const Between> observations, double share,
                                       std::span<const double> moments, const BootstrapOptions& options) {
  if (auto problem = wrong(observations))
    return *std::move(problem);
  if (auto problem = unusable_level(options.level))
    return *std::move(problem);
  EventFit fit(observations);
  boost::random::mt19937_64 chance(options.seed);
  boost::random::uniform_int_distribution<std::size_t> any(0, observations.size() - 1);
  std::vector<double> weights(fit.distinct());
  std::vector<double> quantiles;
  std::vector<std::vector<double>> shares(moments.size());
  for (std::size_t draw = 0; draw < options.draws; ++draw) {
    std::fill(weights.begin(), weights.end(), 0.0);
    for (std::size_t i = 0; i < observations.size(); ++i)
      ++weights[fit.which()[any(chance)]];
    fit.fit(weights, in_draws);
    const auto places = fit.places();
    const Reached at = reached(
        places.size(), [&](std::size_t j) { return fit.weight(j); }, share);
    quantiles.push_back(within(places[at.place], at.into));
    double left = 1;
    std::size_t j = 0;
    for (std::size_t k = 0; k < moments.size(); ++k) { // both in the order of time
      for (; j < places.size() && places[j].by <= moments[k]; ++j)
        left -= fit.weight(j);
      shares[k].push_back(std::clamp(left, 0.0, 1.0));
    }
  }
  EventBootstrap result;
  if (options.draws == 0)
    return not_enough("A bootstrap needs draws.");
  result.quantile = middle_of(quantiles, options.level);
  for (auto& each : shares)
    result.band.push_back(middle_of(each, options.level));
  return result;
}

} // namespace wetspell
