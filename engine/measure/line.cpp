#include "measure/line.hpp"

#include "measure/careful_sum.hpp"
#include "measure/distribution.hpp"
#include "measure/usable.hpp"

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

/// The mean, kept as a double and what rounding took from it, so that distances from it are exact.
struct Centre {
  double mean = 0;
  double rest = 0;
  explicit Centre(std::span<const double> values) {
    const auto n = static_cast<double>(values.size());
    CarefulSum sum;
    for (const double value : values) {
      sum.add(value);
    }
    mean = sum.value() / n;
    CarefulSum offsets;
    for (const double value : values) {
      offsets.add(value - mean);
    }
    rest = offsets.value() / n;
  }
  [[nodiscard]] double off(double value) const { return (value - mean) - rest; }
};

} // namespace

double Line::uncertainty_at(double x, bool reading) const {
  const double off = x - x_mean;
  return residual_deviation *
         std::sqrt((reading ? 1.0 : 0.0) + 1 / static_cast<double>(n) + off * off / x_squares);
}

Result<Line> least_squares(std::span<const double> x, std::span<const double> y) {
  if (auto problem = unusable_points(x, y)) {
    return *std::move(problem);
  }
  if (x.size() < 2) {
    return not_enough("A line needs two points, and there is one.");
  }
  if (std::ranges::all_of(x, [&](double each) { return each == x.front(); })) {
    return not_enough(fmt::format("All points stand at {}; a line needs two places.", in_words(x.front())));
  }
  const Centre x_centre(x);
  const Centre y_centre(y);
  CarefulSum xx;
  CarefulSum xy;
  CarefulSum yy;
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double across = x_centre.off(x[i]);
    const double up = y_centre.off(y[i]);
    xx.add(across * across);
    xy.add(across * up);
    yy.add(up * up);
  }
  Line line;
  line.n = x.size();
  line.x_mean = x_centre.mean;
  line.y_mean = y_centre.mean;
  line.x_squares = xx.value();
  line.slope = xy.value() / xx.value();
  line.intercept = y_centre.mean - line.slope * x_centre.mean;
  CarefulSum squares;
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double off = y_centre.off(y[i]) - line.slope * x_centre.off(x[i]);
    squares.add(off * off);
  }
  line.residual_squares = squares.value();
  const double explained = line.slope * xy.value();
  line.r_squared = yy.value() > 0 ? std::clamp(1 - line.residual_squares / yy.value(), 0.0, 1.0) : 1.0;
  if (line.n > 2) {
    const double variance = line.residual_squares / line.freedom();
    line.residual_deviation = std::sqrt(variance);
    line.slope_uncertainty = line.residual_deviation / std::sqrt(line.x_squares);
    line.intercept_uncertainty = line.uncertainty_at(0, false);
    line.f = explained > 0 ? explained / variance : 0.0;
  }
  const double root = std::hypot(std::sqrt(line.x_squares / static_cast<double>(line.n)), line.x_mean);
  line.correlation = -line.x_mean / root;
  if (!std::isfinite(line.slope) || !std::isfinite(line.intercept) || !std::isfinite(line.residual_squares)) {
    return not_a_number("These points give no finite line.");
  }
  return line;
}

namespace {

std::optional<Problem> without_scatter(const Line& line, double level) {
  if (auto problem = unusable_level(level)) {
    return problem;
  }
  if (line.n < 3) {
    return not_enough(
        fmt::format("{} of the at least 3 points needed to judge the scatter about a line.", line.n));
  }
  return std::nullopt;
}

} // namespace

Result<double> half_width_at(const Line& line, double x, double level, bool reading) {
  if (auto problem = without_scatter(line, level)) {
    return *std::move(problem);
  }
  return student_factor(level, line.freedom()) * line.uncertainty_at(x, reading);
}

Result<double> slope_half_width(const Line& line, double level) {
  if (auto problem = without_scatter(line, level)) {
    return *std::move(problem);
  }
  return student_factor(level, line.freedom()) * line.slope_uncertainty;
}

Result<Crossing> crossing(const Line& line, double y, double level) {
  if (auto problem = without_scatter(line, level)) {
    return *std::move(problem);
  }
  if (line.slope == 0) {
    return not_enough(fmt::format("The line is level and never reaches {}.", in_words(y)));
  }
  // |y - at(x)| <= t * uncertainty_at(x) is a quadratic in the distance d of x from the mean:
  // (slope^2 - k / x_squares) d^2 - 2 slope up d + up^2 - k (1 + 1/n) <= 0, k = (t * residual deviation)^2.
  const double t = student_factor(level, line.freedom()) * line.residual_deviation;
  const double k = t * t;
  const double up = y - line.y_mean;
  const double a = line.slope * line.slope - k / line.x_squares;
  const double c = up * up - k * (1 + 1 / static_cast<double>(line.n));
  Crossing found{.x = line.x_mean + up / line.slope, .low = {}, .high = {}};
  if (a > 0) {
    const double root = std::sqrt(std::max(line.slope * line.slope * up * up - a * c, 0.0));
    found.low = line.x_mean + (line.slope * up - root) / a;
    found.high = line.x_mean + (line.slope * up + root) / a;
    return found;
  }
  // The slope may be nought: the interval is open on the side away from the readings. Where the readings' own
  // mean is not part of it (c > 0), it begins at the root on that side; else nothing bounds it.
  if (a < 0 && c > 0) {
    const double root = std::sqrt(line.slope * line.slope * up * up - a * c);
    const double one = line.x_mean + (line.slope * up - root) / a;
    const double other = line.x_mean + (line.slope * up + root) / a;
    if (found.x > line.x_mean) {
      found.low = std::max(one, other);
    } else {
      found.high = std::min(one, other);
    }
  }
  return found;
}

} // namespace wetspell
