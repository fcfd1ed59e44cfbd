// The limits that the rules compare with: one table, each with its source; a workbook can change every one.
#pragma once

#include "quantity/unit.hpp"

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

namespace wetspell {

/// In the order of the table in season/limits.cpp.
enum class Limit : std::uint8_t {
  temperature_lowest,
  temperature_highest,
  temperature_doubtful_low,
  temperature_doubtful_high,
  temperature_spread,
  temperature_mean_slack,
  temperature_jump_per_day,
  depth_most,
  depth_doubtful,
  depth_wading,
  depth_slack,
  depth_fall_per_day,
  depth_rise,
  fill_change,
  fill_slack,
  length_most,
  area_least,
  area_most,
  tape_against_paces,
  step_shortest,
  step_longest,
  pace_variation,
  edge_slack,
  clock_shortest,
  clock_longest,
  visit_gap,
  season_margin,
  count_most,
  count_change,
  observers_differ,
  neighbours_least,
  neighbours_far,
};
inline constexpr std::size_t limit_count = 32;

struct LimitSpec {
  Limit limit;
  std::string_view name;    ///< "temperature_spread"
  std::string_view meaning; ///< "Readings of one visit further apart than this are doubtful"
  double value;             ///< in `unit`
  Unit unit;                ///< of the value (none: a plain number; days and minutes say so in `meaning`)
  bool difference;          ///< a difference (no zero offset when converted)
  std::string_view source;  ///< published source, or "common practice, no source", or "judgement: why"
};
std::span<const LimitSpec> limits_catalogue();

/// A limit's value in SI, whether it is a point on a scale or a difference; plain numbers stay as they are.
double limit_to_si(const LimitSpec& spec, double value, Unit unit);

/// The limits in force, SI.
struct Limits {
  std::array<double, limit_count> si{};
  [[nodiscard]] double operator[](Limit limit) const { return si[static_cast<std::size_t>(limit)]; }
  static Limits defaults();
};

} // namespace wetspell
