// Degrees of latitude and longitude with a decimal point, as maps and receivers write them.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace wetspell {

enum class Axis : std::uint8_t { latitude, longitude };

/// "44.5123", "-71.2034", "71.2034 W", "N 44.5123", "44.5123°": degrees north or east. Nothing for degrees
/// with minutes, a letter of the other axis, a sign and a letter, or what lies beyond 90 or 180.
std::optional<double> read_degrees(std::string_view text, Axis axis);

} // namespace wetspell
