// Calendar facts: ISO 8601 weekdays as documentation of ISO 8601 software prints them, day counts and days of
// the year as in Meeus, Astronomical Algorithms, ch. 7 (from memory, recomputed), Darwin Core's
// startDayOfYear, and serial numbers as Calc shows them.
#include "quantity/calendar.hpp"
#include "quantity/print.hpp"
#include "quantity/read.hpp"

#include <gtest/gtest.h>

#include <string>

namespace wetspell {
namespace {

double serial(const std::string& text) {
  const Quantity q = read(text, {Kind::date});
  EXPECT_EQ(q.status, Status::value) << text;
  return q.si;
}

TEST(Calendar, Serials) {
  EXPECT_EQ(serial("1899-12-30"), 0);     // day 0 of Calc's default
  EXPECT_EQ(serial("2024-03-15"), 45366); // LibreOffice Calc 7.4.7
  // Julian day number 2461115 begins at noon of 2026-03-15; 1899-12-30 is 2415019 (from memory, recomputed).
  EXPECT_EQ(serial("2026-03-15"), 2461115 - 2415019);
}

TEST(Calendar, IsoWeekdays) {
  EXPECT_EQ(weekday_of(serial("2008-12-29")), 1U); // 2009-W01-1
  EXPECT_EQ(weekday_of(serial("2010-01-03")), 7U); // 2009-W53-7
  EXPECT_EQ(weekday_of(serial("2010-01-01")), 5U); // 2009-W53-5
  EXPECT_EQ(weekday_of(serial("2004-12-31")), 5U); // 2004-W53-5
  EXPECT_EQ(weekday_of(serial("2026-03-15")), 7U); // 2026-W11-7
}

TEST(Calendar, DayOfYear) {
  EXPECT_EQ(day_of_year(serial("1978-11-14")), 318); // Meeus, example 7.f
  EXPECT_EQ(day_of_year(serial("1988-04-22")), 113); // Meeus, example 7.g
  EXPECT_EQ(day_of_year(serial("2024-12-31")), 366); // Darwin Core: 366 is 31 December of a leap year
  EXPECT_EQ(day_of_year(serial("2024-12-30")), 365);
  EXPECT_EQ(day_of_year(serial("2023-12-31")), 365);
  EXPECT_EQ(day_of_year(serial("2023-02-01")), 32);
  EXPECT_EQ(day_of_year(serial("2026-03-15")), 74);
}

TEST(Calendar, DaysBetween) {
  EXPECT_EQ(serial("1986-02-09") - serial("1910-04-20"), 27689);     // Meeus, example 7.d
  EXPECT_EQ(print_date(serial("1991-07-11") + 10000), "2018-11-26"); // Meeus, exercise in ch. 7
  EXPECT_EQ(serial("2024-03-01") - serial("2024-02-28"), 2);
  EXPECT_EQ(serial("2023-03-01") - serial("2023-02-28"), 1);
  EXPECT_EQ(serial("1900-03-01") - serial("1900-02-28"), 1);
  EXPECT_EQ(serial("2000-03-01") - serial("2000-02-28"), 2);
}

TEST(Calendar, EveryDayOfTwoCenturiesComesBack) {
  const auto last = static_cast<int>(serial("2100-12-31"));
  for (auto day = static_cast<int>(serial("1900-01-01")); day <= last; ++day) {
    const auto date = date_of(day);
    ASSERT_TRUE(date.has_value());
    ASSERT_EQ(serial_of(*date), day);
    ASSERT_EQ(weekday_of(day + 7), weekday_of(day));
  }
}

} // namespace
} // namespace wetspell
