// The day that spreadsheets count dates from.
#pragma once

#include <chrono>

namespace wetspell {

/// 1899-12-30 is 0.
inline constexpr std::chrono::sys_days day_zero{std::chrono::year{1899} / std::chrono::December / 30};

/// Days since day zero.
constexpr double serial_of(std::chrono::sys_days day) {
  return static_cast<double>((day - day_zero).count());
}

/// Today by this machine's clock.
inline double serial_of_today() {
  return serial_of(std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now()));
}

} // namespace wetspell
