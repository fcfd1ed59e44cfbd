#include "measure/basin.hpp"

#include "measure/distribution.hpp"
#include "measure/line.hpp"
#include "measure/refuse.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace wetspell {

namespace {

std::optional<Problem> unusable(std::string_view what, const Measured& measured, std::string_view unit) {
  if (!std::isfinite(measured.value) || !std::isfinite(measured.uncertainty)) {
    return not_a_number(fmt::format("The {} or its uncertainty is not a finite number.", what));
  }
  if (measured.value <= 0) {
    return bad_argument(fmt::format("The {} reads {} {}; the form of a basin needs more than 0.", what,
                                    in_words(measured.value), unit));
  }
  if (measured.uncertainty < 0) {
    return bad_argument(fmt::format("The uncertainty of the {} reads {} {}; it cannot be below 0.", what,
                                    in_words(measured.uncertainty), unit));
  }
  return std::nullopt;
}

std::optional<Problem> unusable(const BasinReading& reading) {
  if (auto problem = unusable("depth", reading.depth, "m")) {
    return problem;
  }
  return unusable("area", reading.area, "m²");
}

double relative(const Measured& measured) {
  return measured.uncertainty / measured.value;
}

/// Variance of what changes with each reading's logarithm of area by `on(pull)`, and through the exponent
/// with that of depth.
template <class On> double variance(const Basin& basin, On on) {
  double sum = 0;
  for (const BasinPull& pull : basin.pulls) {
    const double error = std::hypot(pull.area_error, basin.exponent * pull.depth_error);
    sum += on(pull) * error * error;
  }
  return sum * basin.stretch * basin.stretch;
}

void weigh(Basin& basin) {
  const double on_scale = variance(basin, [](const BasinPull& p) { return p.on_scale * p.on_scale; });
  const double on_exponent =
      variance(basin, [](const BasinPull& p) { return p.on_exponent * p.on_exponent; });
  const double on_both = variance(basin, [](const BasinPull& p) { return p.on_scale * p.on_exponent; });
  const double given = basin.given_error;
  basin.log_scale_uncertainty = std::hypot(std::sqrt(on_scale), basin.given_on_scale * given);
  basin.exponent_uncertainty = std::hypot(std::sqrt(on_exponent), given);
  basin.covariance = on_both + basin.given_on_scale * given * given;
}

/// Stretches the errors where the readings scatter about the line more than their own uncertainties would in
/// 95 of 100 cases; puts the scatter in their place where none is known.
void look_at_scatter(Basin& basin, std::span<const BasinReading> readings, const Line& line) {
  const bool known = std::ranges::all_of(readings, [](const BasinReading& reading) {
    return reading.depth.uncertainty > 0 && reading.area.uncertainty > 0;
  });
  if (!known) {
    for (BasinPull& pull : basin.pulls) {
      pull.depth_error = 0;
      pull.area_error = line.residual_deviation;
    }
    return;
  }
  if (line.n < 3) {
    return;
  }
  double squares = 0;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const double off = std::log(readings[i].area.value) - line.at(std::log(readings[i].depth.value));
    const double error = std::hypot(basin.pulls[i].area_error, basin.exponent * basin.pulls[i].depth_error);
    squares += off * off / (error * error);
  }
  if (chi_squared_above(squares, line.freedom()) < 0.05) {
    basin.stretch = std::sqrt(squares / line.freedom());
  }
}

} // namespace

Measured Basin::scale() const {
  const double value = std::exp(log_scale);
  return {.value = value, .uncertainty = value * log_scale_uncertainty};
}

Measured Basin::shape() const {
  return {.value = 2 / exponent, .uncertainty = 2 / (exponent * exponent) * exponent_uncertainty};
}

Result<Basin> basin_from_readings(std::span<const BasinReading> readings) {
  if (readings.size() < 2) {
    return not_enough(fmt::format(
        "{} of the at least 2 visits with depth and area needed to tell a basin's shape.", readings.size()));
  }
  std::vector<double> depths;
  std::vector<double> areas;
  for (const BasinReading& reading : readings) {
    if (auto problem = unusable(reading)) {
      return *std::move(problem);
    }
    depths.push_back(std::log(reading.depth.value));
    areas.push_back(std::log(reading.area.value));
  }
  const auto by_depth = [](const BasinReading& one, const BasinReading& other) {
    return one.depth.value < other.depth.value;
  };
  const auto [shallow, deep] = std::ranges::minmax_element(readings, by_depth);
  constexpr double same = 1e-9;
  if (deep->depth.value <= shallow->depth.value * (1 + same)) {
    return not_enough(fmt::format("All {} depths are {} m; the shape of a basin needs two different depths.",
                                  readings.size(), in_words(deep->depth.value)));
  }
  const auto fitted = least_squares(depths, areas);
  if (!fitted) {
    return fitted.error();
  }
  const Line& line = fitted.value();
  if (line.slope <= 0) {
    return bad_argument(fmt::format("The area does not grow with depth: {} m² at {} m, and {} m² at {} m.",
                                    in_words(shallow->area.value), in_words(shallow->depth.value),
                                    in_words(deep->area.value), in_words(deep->depth.value)));
  }
  Basin basin;
  basin.n = readings.size();
  basin.log_scale = line.intercept;
  basin.exponent = line.slope;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const double on_exponent = (depths[i] - line.x_mean) / line.x_squares;
    basin.pulls.push_back({.on_scale = 1 / static_cast<double>(line.n) - line.x_mean * on_exponent,
                           .on_exponent = on_exponent,
                           .depth_error = relative(readings[i].depth),
                           .area_error = relative(readings[i].area)});
  }
  look_at_scatter(basin, readings, line);
  weigh(basin);
  return basin;
}

double given_exponent_uncertainty() {
  return (2 / 0.91 - 2 / 3.3) / 2 / std::numbers::sqrt3;
}

Result<Basin> basin_with_shape(const BasinReading& reading, double shape) {
  if (auto problem = unusable(reading)) {
    return *std::move(problem);
  }
  if (!(shape > 0) || !std::isfinite(shape)) {
    return bad_argument(fmt::format("A shape of {} was read; it must be over 0.", in_words(shape)));
  }
  const double log_depth = std::log(reading.depth.value);
  Basin basin;
  basin.n = 1;
  basin.shape_given = true;
  basin.exponent = 2 / shape;
  basin.log_scale = std::log(reading.area.value) - basin.exponent * log_depth;
  const bool known = reading.depth.uncertainty > 0 && reading.area.uncertainty > 0;
  basin.given_error = known ? given_exponent_uncertainty() : 0.0;
  basin.given_on_scale = -log_depth;
  basin.pulls.push_back({.on_scale = 1,
                         .on_exponent = 0,
                         .depth_error = known ? relative(reading.depth) : 0.0,
                         .area_error = known ? relative(reading.area) : 0.0});
  weigh(basin);
  return basin;
}

namespace {

/// exp(log_value), whose logarithm changes by `on_exponent` with the exponent, by 1 with the logarithm of the
/// scale, and by `on_depth` with that of the depth.
Result<Measured> propagated(const Basin& basin, const Measured& depth, std::optional<std::size_t> reading,
                            double log_value, double on_exponent, double on_depth) {
  const double value = std::exp(log_value);
  double sum = 0;
  for (std::size_t i = 0; i < basin.pulls.size(); ++i) {
    const BasinPull& pull = basin.pulls[i];
    const double on_area = pull.on_scale + on_exponent * pull.on_exponent;
    const double through_depth = (i == reading ? on_depth : 0.0) - basin.exponent * on_area;
    sum += std::pow(on_area * pull.area_error, 2) + std::pow(through_depth * pull.depth_error, 2);
  }
  sum *= basin.stretch * basin.stretch;
  sum += std::pow((on_exponent + basin.given_on_scale) * basin.given_error, 2);
  if (!reading) {
    sum += std::pow(on_depth * relative(depth), 2);
  }
  const bool known = basin.log_scale_uncertainty > 0 && depth.uncertainty > 0;
  const Measured result{.value = value, .uncertainty = known ? value * std::sqrt(sum) : 0.0};
  if (!std::isfinite(result.value) || !std::isfinite(result.uncertainty)) {
    return not_a_number(
        fmt::format("At a depth of {} m this basin is too large to be worked out.", in_words(depth.value)));
  }
  return result;
}

std::optional<Problem> unusable_depth(const Measured& depth) {
  if (!std::isfinite(depth.value) || !std::isfinite(depth.uncertainty)) {
    return not_a_number("The depth or its uncertainty is not a finite number.");
  }
  if (depth.value < 0 || depth.uncertainty < 0) {
    return bad_argument(fmt::format("A depth of {} m with uncertainty {} m was read; neither can be below 0.",
                                    in_words(depth.value), in_words(depth.uncertainty)));
  }
  return std::nullopt;
}

} // namespace

Result<Measured> area_at(const Basin& basin, const Measured& depth, std::optional<std::size_t> reading) {
  if (auto problem = unusable_depth(depth)) {
    return *std::move(problem);
  }
  if (depth.value == 0) {
    return Measured{};
  }
  const double log_depth = std::log(depth.value);
  return propagated(basin, depth, reading, basin.log_scale + basin.exponent * log_depth, log_depth,
                    basin.exponent);
}

Result<Measured> volume_at(const Basin& basin, const Measured& depth, std::optional<std::size_t> reading) {
  if (auto problem = unusable_depth(depth)) {
    return *std::move(problem);
  }
  if (depth.value == 0) {
    return Measured{};
  }
  const double log_depth = std::log(depth.value);
  const double power = 1 + basin.exponent;
  return propagated(basin, depth, reading, basin.log_scale + power * log_depth - std::log(power),
                    log_depth - 1 / power, power);
}

Result<Measured> fill_from_depth(const Basin& basin, const Measured& depth, const Measured& brim) {
  if (auto problem = unusable_depth(depth)) {
    return *std::move(problem);
  }
  if (auto problem = unusable("greatest depth", brim, "m")) {
    return *std::move(problem);
  }
  if (depth.value == 0) {
    return Measured{};
  }
  const double power = 1 + basin.exponent;
  const double log_share = std::log(depth.value / brim.value);
  const double share = std::exp(power * log_share);
  const bool known = depth.uncertainty > 0 && brim.uncertainty > 0 && basin.exponent_uncertainty > 0;
  const double spread =
      std::hypot(power * relative(depth), power * relative(brim), log_share * basin.exponent_uncertainty);
  return Measured{.value = share, .uncertainty = known ? share * spread : 0.0};
}

Interval spread_of(const Measured& measured, double level) {
  const double factor = std::exp(normal_factor(level) * relative(measured));
  return {measured.value / factor, measured.value * factor};
}

} // namespace wetspell
