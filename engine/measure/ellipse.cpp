#include "measure/ellipse.hpp"

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

constexpr double quarter_pi = std::numbers::pi / 4;

std::optional<Problem> unusable(std::string_view what, const Measured& measured, std::string_view unit) {
  if (!std::isfinite(measured.value) || !std::isfinite(measured.uncertainty)) {
    return not_a_number(fmt::format("The {} or its uncertainty is not a finite number.", what));
  }
  if (measured.value < 0) {
    return bad_argument(
        fmt::format("The {} reads {} {}; it cannot be below 0.", what, in_words(measured.value), unit));
  }
  if (measured.uncertainty < 0) {
    return bad_argument(fmt::format("The uncertainty of the {} reads {} {}; it cannot be below 0.", what,
                                    in_words(measured.uncertainty), unit));
  }
  return std::nullopt;
}

std::optional<Problem> unusable(const Measured& length, const Measured& width, double correlation) {
  if (auto problem = unusable("length", length, "m")) {
    return problem;
  }
  if (auto problem = unusable("width", width, "m")) {
    return problem;
  }
  if (!(correlation >= -1 && correlation <= 1)) {
    return bad_argument(
        fmt::format("A correlation of {} was read; it must lie between -1 and 1.", in_words(correlation)));
  }
  return std::nullopt;
}

/// What a result made from two inputs is worth (GUM 5.2.2): slopes are the result's change with each input.
/// Not known (0) when either input's uncertainty is not known.
double combined(const Measured& first, double first_slope, const Measured& second, double second_slope,
                double correlation) {
  if (first.uncertainty == 0 || second.uncertainty == 0) {
    return 0;
  }
  const double one = first_slope * first.uncertainty;
  const double two = second_slope * second.uncertainty;
  return std::sqrt(std::max(one * one + two * two + 2 * correlation * one * two, 0.0));
}

Result<Measured> finite(Measured result, std::string_view what) {
  if (!std::isfinite(result.value) || !std::isfinite(result.uncertainty)) {
    return not_a_number(fmt::format("The {} is not a finite number; the sizes are too large.", what));
  }
  return result;
}

} // namespace

Result<Measured> ellipse_area(const Measured& length, const Measured& width, double correlation) {
  if (auto problem = unusable(length, width, correlation)) {
    return *std::move(problem);
  }
  const double value = quarter_pi * (length.value * width.value);
  const double uncertainty =
      combined(length, quarter_pi * width.value, width, quarter_pi * length.value, correlation);
  return finite({.value = value, .uncertainty = uncertainty}, "area");
}

Result<Measured> ellipse_edge(const Measured& length, const Measured& width, double correlation) {
  if (auto problem = unusable(length, width, correlation)) {
    return *std::move(problem);
  }
  // The integral wants the longer axis first, whichever of the two was called length.
  const Measured& longer = length.value >= width.value ? length : width;
  const Measured& shorter = length.value >= width.value ? width : length;
  if (longer.value == 0) {
    return Measured{};
  }
  const double ratio = shorter.value / longer.value;
  // Boost takes the modulus k, whose square is 1 - ratio^2; written as a product to keep digits near a
  // circle.
  const double modulus = std::sqrt((1 - ratio) * (1 + ratio));
  const double second_kind = boost::math::ellint_2(modulus, QuietPolicy());
  // With D = (K - E) / k^2: d edge / d longer = 2 (E - ratio^2 D), d edge / d shorter = 2 ratio D. D is
  // infinite for the flat ellipse, where ratio * D still tends to 0.
  const double d = ratio > 0 ? boost::math::ellint_d(modulus, QuietPolicy()) : 0.0;
  const double value = 2 * longer.value * second_kind;
  const double uncertainty =
      combined(longer, 2 * (second_kind - ratio * ratio * d), shorter, 2 * ratio * d, correlation);
  return finite({.value = value, .uncertainty = uncertainty}, "edge");
}

Result<Measured> width_for_area(const Measured& area, const Measured& length) {
  if (auto problem = unusable("area", area, "m²")) {
    return *std::move(problem);
  }
  if (auto problem = unusable("length", length, "m")) {
    return *std::move(problem);
  }
  if (length.value == 0) {
    return bad_argument("The length reads 0 m; no area fits a length of 0.");
  }
  const double width = area.value / (quarter_pi * length.value);
  // A circle's own area must give its width back in spite of rounding.
  constexpr double rounding = 1e-12;
  if (width > length.value * (1 + rounding)) {
    return bad_argument(fmt::format(
        "An area of {} m² does not fit a length of {} m: the circle on it has {} m².", in_words(area.value),
        in_words(length.value), in_words(quarter_pi * length.value * length.value)));
  }
  const double uncertainty =
      combined(area, 1 / (quarter_pi * length.value), length, -width / length.value, 0);
  return finite({.value = std::min(width, length.value), .uncertainty = uncertainty}, "width");
}

Result<double> largest_area(double length) {
  if (auto problem = unusable("length", {.value = length, .uncertainty = 0}, "m")) {
    return *std::move(problem);
  }
  const auto area = finite({.value = quarter_pi * length * length, .uncertainty = 0}, "area");
  if (!area) {
    return area.error();
  }
  return area.value().value;
}

} // namespace wetspell
