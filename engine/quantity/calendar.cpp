#include "quantity/calendar.hpp"

#include "table/day.hpp"

#include <chrono>
#include <cmath>

namespace wetspell {

namespace {

using namespace std::chrono;

constexpr double first_day = static_cast<double>((sys_days{year{1} / January / 1} - day_zero).count());
constexpr double last_day = static_cast<double>((sys_days{year{9999} / December / 31} - day_zero).count());

} // namespace

std::optional<double> serial_of(const CalendarDate& date) {
  const year_month_day ymd{year{date.year}, month{date.month}, day{date.day}};
  if (date.year < 1 || date.year > 9999 || !ymd.ok())
    return std::nullopt;
  return static_cast<double>((sys_days{ymd} - day_zero).count());
}

std::optional<CalendarDate> date_of(double serial) {
  const double whole = std::floor(serial);
  if (!(whole >= first_day && whole <= last_day))
    return std::nullopt;
  const year_month_day ymd{day_zero + days{static_cast<int>(whole)}};
  return CalendarDate{static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                      static_cast<unsigned>(ymd.day())};
}

unsigned weekday_of(double serial) {
  const double whole = std::floor(serial);
  if (!(whole >= first_day && whole <= last_day))
    return 0;
  return weekday{day_zero + days{static_cast<int>(whole)}}.iso_encoding();
}

int day_of_year(double serial) {
  const auto date = date_of(serial);
  if (!date)
    return 0;
  return static_cast<int>(std::floor(serial) - *serial_of({date->year, 1, 1})) + 1;
}

} // namespace wetspell
