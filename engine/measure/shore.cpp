#include "measure/shore.hpp"

#include "measure/refuse.hpp"
#include "measure/special_functions.hpp"

#include <boost/math/special_functions/ellint_2.hpp>
#include <boost/math/special_functions/ellint_d.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string_view>

namespace wetspell {

namespace {

std::optional<Problem> unusable(std::string_view what, const Measured& measured, std::string_view unit) {
  if (!std::isfinite(measured.value) || !std::isfinite(measured.uncertainty)) {
    return not_a_number(fmt::format("The {} or its uncertainty is not a finite number.", what));
  }
  if (measured.value <= 0 || measured.uncertainty < 0) {
    return bad_argument(fmt::format("The {} reads {} {} with uncertainty {}; a shape needs more than 0.",
                                    what, in_words(measured.value), unit, in_words(measured.uncertainty)));
  }
  return std::nullopt;
}

/// Shorter over longer axis with its uncertainty; not known (0) when one axis' is not.
Result<Measured> axes_ratio(const Measured& length, const Measured& width, double correlation) {
  if (auto problem = unusable("length", length, "m")) {
    return *std::move(problem);
  }
  if (auto problem = unusable("width", width, "m")) {
    return *std::move(problem);
  }
  if (!(correlation >= -1 && correlation <= 1)) {
    return bad_argument(
        fmt::format("A correlation of {} was read; it must lie between -1 and 1.", in_words(correlation)));
  }
  const double ratio = std::min(length.value, width.value) / std::max(length.value, width.value);
  if (length.uncertainty == 0 || width.uncertainty == 0) {
    return Measured{.value = ratio, .uncertainty = 0};
  }
  const double one = length.uncertainty / length.value;
  const double two = width.uncertainty / width.value;
  return Measured{.value = ratio,
                  .uncertainty =
                      ratio * std::sqrt(std::max(one * one + two * two - 2 * correlation * one * two, 0.0))};
}

} // namespace

Result<Measured> shore_development(const Measured& edge, const Measured& area) {
  if (auto problem = unusable("edge", edge, "m")) {
    return *std::move(problem);
  }
  if (auto problem = unusable("area", area, "m²")) {
    return *std::move(problem);
  }
  const double circle = 2 * std::sqrt(std::numbers::pi * area.value);
  const double development = edge.value / circle;
  // A circle's own edge and area must give 1 in spite of rounding.
  constexpr double rounding = 1e-9;
  if (development < 1 - rounding) {
    return bad_argument(fmt::format(
        "An edge of {} m is too short to go round {} m²: the circle of that area has an edge of {} m.",
        in_words(edge.value), in_words(area.value), in_words(circle)));
  }
  const bool known = edge.uncertainty > 0 && area.uncertainty > 0;
  return Measured{.value = std::max(development, 1.0),
                  .uncertainty = known ? development * std::hypot(edge.uncertainty / edge.value,
                                                                  area.uncertainty / area.value / 2)
                                       : 0.0};
}

Result<Measured> ellipse_development(const Measured& length, const Measured& width, double correlation) {
  const auto ratio = axes_ratio(length, width, correlation);
  if (!ratio) {
    return ratio.error();
  }
  // 2 L E(k) over the circle's 2 sqrt(pi * pi/4 * L * W): 2 E / (pi sqrt(ratio)), with k^2 = 1 - ratio^2 and
  // d E / d ratio = ratio * D, D = (K - E) / k^2 (DLMF 19.4.2).
  const double r = ratio.value().value;
  const double modulus = std::sqrt((1 - r) * (1 + r));
  const double second_kind = boost::math::ellint_2(modulus, QuietPolicy());
  const double d = boost::math::ellint_d(modulus, QuietPolicy());
  const double scale = 2 / (std::numbers::pi * std::sqrt(r));
  const double slope = scale * (r * d - second_kind / (2 * r));
  return Measured{.value = std::max(scale * second_kind, 1.0),
                  .uncertainty = std::abs(slope) * ratio.value().uncertainty};
}

Result<Measured> eccentricity(const Measured& length, const Measured& width, double correlation) {
  const auto ratio = axes_ratio(length, width, correlation);
  if (!ratio) {
    return ratio.error();
  }
  const double r = ratio.value().value;
  const double value = std::sqrt((1 - r) * (1 + r));
  return Measured{.value = value, .uncertainty = value > 0 ? r / value * ratio.value().uncertainty : 0.0};
}

} // namespace wetspell
