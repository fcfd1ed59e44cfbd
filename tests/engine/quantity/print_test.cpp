// Printing, and reading back what was printed.
#include "quantity/print.hpp"

#include "quantity/calendar.hpp"
#include "quantity/read.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace wetspell {
namespace {

TEST(Print, SensibleDigits) {
  EXPECT_EQ(print(0.635, Unit::inch), "25 in");
  EXPECT_EQ(print(0.6477, Unit::inch), "25.5 in");
  EXPECT_EQ(print(17.8, Unit::celsius), "17.8 °C");
  EXPECT_EQ(print(17.8, Unit::fahrenheit), "64 °F");   // 64.04
  EXPECT_EQ(print(17.9, Unit::fahrenheit), "64.2 °F"); // 64.22
  EXPECT_EQ(print(0.75, Unit::percent), "75%");
  EXPECT_EQ(print(0.746, Unit::percent), "74.6%");
  EXPECT_EQ(print(0.64, Unit::metre), "0.64 m");
  EXPECT_EQ(print(1011.7141056, Unit::acre), "0.25 ac");
  EXPECT_EQ(print(-3, Unit::celsius), "-3 °C");
  EXPECT_EQ(print(23, Unit::pace), "23 paces");
  EXPECT_EQ(print(1, Unit::step), "1 step");
  EXPECT_EQ(print_number(0.635, Unit::inch), "25");
  EXPECT_EQ(print(12, Unit::none), "12");
  EXPECT_EQ(print(NAN, Unit::inch), "not known");
  EXPECT_EQ(print_difference(1, Unit::fahrenheit), "1.8 °F");
  EXPECT_EQ(print_difference(0.0254, Unit::inch), "1 in");
}

TEST(Print, TwoThatAreSetAgainstEachOtherAreToldApart) {
  const auto apart = [](double si, double other, Unit unit) {
    const auto [one, two] = print_apart(si, other, unit);
    return one + ", " + two;
  };
  EXPECT_EQ(apart(0.3048, 0.6096, Unit::foot), "1 ft, 2 ft");
  EXPECT_EQ(apart(1.04, 1.06, Unit::square_metre), "1 m², 1.1 m²");
  EXPECT_EQ(apart(1.041, 1.042, Unit::square_metre), "1.041 m², 1.042 m²");
  EXPECT_EQ(apart(2, 2, Unit::square_metre), "2 m², 2 m²");
}

TEST(Print, TiesGoToTheEvenDigit) {
  EXPECT_EQ(print(17.25, Unit::celsius), "17.2 °C");
  EXPECT_EQ(print(17.35, Unit::celsius),
            "17.4 °C"); // the double is a little more than 17.35; its digits are not
  EXPECT_EQ(print(17.45, Unit::celsius), "17.4 °C");
  EXPECT_EQ(print(-17.25, Unit::celsius), "-17.2 °C");
  EXPECT_EQ(plain(0.5, 0), "0");
  EXPECT_EQ(plain(1.5, 0), "2");
  EXPECT_EQ(plain(2.5, 0), "2");
  EXPECT_EQ(plain(9.5, 0), "10");
  EXPECT_EQ(plain(99.95, 1), "100");
  EXPECT_EQ(plain(0.05, 1), "0");
  EXPECT_EQ(plain(0.15, 1), "0.2");
}

TEST(Print, PlainNumbers) {
  EXPECT_EQ(plain(0), "0");
  EXPECT_EQ(plain(-0.0), "0");
  EXPECT_EQ(plain(0.1), "0.1");
  EXPECT_EQ(plain(1e20), "100000000000000000000");
  EXPECT_EQ(plain(1e-7), "0.0000001");
  EXPECT_EQ(plain(1e-13), "0");
  EXPECT_EQ(plain(-0.04, 1), "0");
  EXPECT_EQ(plain(INFINITY), "not known");
  EXPECT_EQ(fixed(25, 2), "25.00");
  EXPECT_EQ(fixed(0.005, 2), "0.00");
  EXPECT_EQ(fixed(0.015, 2), "0.02");
  EXPECT_EQ(fixed(-1.005, 2), "-1.00");
  EXPECT_EQ(plain(std::numeric_limits<double>::max()).size(), 309U);
}

TEST(Print, DatesAndTimes) {
  EXPECT_EQ(print_date(46102), "2026-03-21");
  EXPECT_EQ(print_date(46102.75), "2026-03-21");
  EXPECT_EQ(print_date(0), "1899-12-30");
  EXPECT_EQ(print_date(1e9), "1000000000");
  EXPECT_EQ(print_date(NAN), "not known");
  EXPECT_EQ(print_time(0.5), "12:00");
  EXPECT_EQ(print_time(545.0 / 1440), "09:05");
  EXPECT_EQ(print_time(0), "00:00");
  EXPECT_EQ(print_time(0.9999999), "23:59");
}

/// What is printed at the digits of a unit reads back as the same number, in that unit, whatever the sheet
/// has.
TEST(RoundTrip, PrintThenRead) {
  std::mt19937 random(7);
  for (const auto& u : units()) {
    if (u.unit == Unit::none || u.unit == Unit::one || u.unit == Unit::pace || u.unit == Unit::step)
      continue;
    const double scale = std::pow(10, u.decimals);
    for (int i = 0; i < 500; ++i) {
      const double written = std::uniform_int_distribution<int>(-200, 9999)(random) / scale;
      const double si = to_si(written, u.unit);
      const Quantity q = read(print(si, u.unit), {u.kind});
      if (q.reason == Reason{}) {
        EXPECT_EQ(q.status, Status::value);
        EXPECT_EQ(q.unit, u.unit);
        EXPECT_EQ(q.written, written) << print(si, u.unit);
        EXPECT_EQ(q.si, si) << print(si, u.unit);
      } else {
        EXPECT_LT(to_si(written, u.unit), -273.15) << print(si, u.unit) << ": " << text(q.reason);
      }
    }
  }
}

TEST(RoundTrip, Dates) {
  for (int day = 18264; day < 109574; day += 13) {
    const Quantity q = read(print_date(day), {Kind::date});
    ASSERT_EQ(q.status, Status::value) << print_date(day);
    ASSERT_EQ(q.si, day);
  }
}

TEST(RoundTrip, Times) {
  for (int minute = 0; minute < 1440; ++minute) {
    const Quantity q = read(print_time(minute / 1440.0), {Kind::time});
    ASSERT_EQ(q.status, Status::value) << print_time(minute / 1440.0);
    ASSERT_NEAR(q.si * 1440, minute, 1e-9);
  }
}

} // namespace
} // namespace wetspell
