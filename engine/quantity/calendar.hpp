// Days as spreadsheets count them: 0 is 1899-12-30, in the Gregorian calendar throughout.
#pragma once

#include <optional>

namespace wetspell {

struct CalendarDate {
  int year = 0;       ///< 1 to 9999
  unsigned month = 0; ///< 1 to 12
  unsigned day = 0;   ///< 1 to 31
  bool operator==(const CalendarDate&) const = default;
};

/// Days since 1899-12-30; nothing for a date that does not exist or lies outside the years 1 to 9999.
std::optional<double> serial_of(const CalendarDate& date);
/// The date of a day number (a time of day is left aside); nothing outside the years 1 to 9999.
std::optional<CalendarDate> date_of(double serial);
/// 1 (Monday) to 7 (Sunday), as ISO 8601 counts; 0 when the day number is no date.
unsigned weekday_of(double serial);
/// 1 (1 January) to 366; 0 when the day number is no date.
int day_of_year(double serial);

} // namespace wetspell
