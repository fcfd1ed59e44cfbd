#include "table/cell.hpp"

#include "table/day.hpp"

#include <fmt/format.h>

#include <chrono>
#include <cmath>

namespace wetspell {

namespace {

std::string date_text(double serial) {
  using namespace std::chrono;
  const double day = std::floor(serial);
  if (!(day > -693594 && day < 2958466)) // years 1 to 9999, the range of the format
    return fmt::format("{}", serial);
  const year_month_day date{day_zero + days{static_cast<int>(day)}};
  const auto text = fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                                static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  const int minutes = static_cast<int>(std::lround((serial - day) * 24 * 60));
  auto clock = fmt::format("{:02}:{:02}", minutes / 60, minutes % 60);
  if (day == 0) // a time of day stands on the calendar's day zero
    return clock;
  return minutes == 0 ? text : text + " " + clock;
}

} // namespace

std::string to_text(const Cell& cell) {
  switch (cell.kind()) {
  case CellKind::empty:
    return {};
  case CellKind::number:
    return fmt::format("{}", cell.number());
  case CellKind::date:
    return date_text(cell.number());
  case CellKind::text:
  case CellKind::error:
    return std::string(cell.text());
  }
  return {};
}

} // namespace wetspell
