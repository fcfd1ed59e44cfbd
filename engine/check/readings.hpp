// The temperatures of one visit, as several rules look at them.
#pragma once

#include "check/rule.hpp"

#include <array>
#include <optional>

namespace wetspell {

/// The three readings and the mean as noted, in this order.
inline constexpr std::array<Field, 4> temperature_fields{
    Field::visit_temperature_1, Field::visit_temperature_2, Field::visit_temperature_3,
    Field::visit_temperature_mean};

inline const Quantity& temperature(const Visit& visit, std::size_t which) {
  constexpr std::array members{&Visit::temperature_1, &Visit::temperature_2, &Visit::temperature_3,
                               &Visit::temperature_mean};
  return visit.*members[which];
}

/// Which of the four is the first that can be used; the first of all where none can.
std::size_t first_temperature(const Visit& visit);

/// Below 0: unusually cold, above 0: unusually warm, 0: usual, by the doubtful limits.
int unusual(const SeasonView& view, const Quantity& reading);

/// Where three readings are there and two agree within the spread limit but the third is further away than
/// that from both: which one.
std::optional<std::size_t> odd_one(const SeasonView& view, const Visit& visit);

/// The visit's temperature in °C: mean of its readings, or the mean as noted.
std::optional<double> visit_temperature(const SeasonView& view, const Visit& visit);

enum class TemperatureSlip : std::uint8_t { none, celsius_as_fahrenheit, fahrenheit_as_celsius, decimal };

/// What a reading may have been meant to be.
struct MeantTemperature {
  TemperatureSlip slip = TemperatureSlip::none;
  double written = 0; ///< in `unit`
  Unit unit = Unit::none;
  double si = 0;
};

/// For a reading that is unusual, or far from the visit's other readings: the one slip that brings it to what
/// else is known (the visit's other temperatures, else the pool's visits before and after, else what is
/// usual). `none` when no slip does, or when two would.
MeantTemperature meant_temperature(const SeasonView& view, const Visit& visit, std::size_t which);

} // namespace wetspell
