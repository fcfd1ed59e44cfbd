// Why a set of numbers cannot be worked with, if it cannot.
#pragma once

#include "measure/refuse.hpp"

#include <cmath>
#include <cstddef>
#include <optional>
#include <span>

namespace wetspell {

/// not_enough for no value at all, not_a_number for one that is not finite.
inline std::optional<Problem> unusable_values(std::span<const double> values) {
  if (values.empty()) {
    return not_enough("There is no value to work with.");
  }
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!std::isfinite(values[i])) {
      return not_a_number(fmt::format("Value {} of {} is not a finite number.", i + 1, values.size()));
    }
  }
  return std::nullopt;
}

/// The same for points of a line or trend, and bad_argument when there are not as many x as y.
inline std::optional<Problem> unusable_points(std::span<const double> x, std::span<const double> y) {
  if (x.size() != y.size()) {
    return bad_argument(
        fmt::format("{} x values and {} y values were given; they must be as many.", x.size(), y.size()));
  }
  if (auto problem = unusable_values(x)) {
    return problem;
  }
  return unusable_values(y);
}

/// bad_argument for a level that is not between 0 and 1.
inline std::optional<Problem> unusable_level(double level) {
  if (level > 0 && level < 1) {
    return std::nullopt;
  }
  return bad_argument(
      fmt::format("A level of {} was read; it must lie between 0 and 1, such as 0.95.", in_words(level)));
}

} // namespace wetspell
