// NIST Special Publication 811 (2008), Guide for the Use of the SI: factors (App. B.8 and B.9) and rounding
// (App. B.7.1). What the publication prints rounded is compared to its printed digits.
#include "quantity/print.hpp"
#include "quantity/quantity.hpp"
#include "quantity/read.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace wetspell {
namespace {

TEST(NistSp811, ExactLengthFactors) {
  EXPECT_EQ(to_si(1, Unit::inch), 2.54e-2);  // B.8: inch, 2.54 E-02, exact
  EXPECT_EQ(to_si(1, Unit::foot), 3.048e-1); // B.8: foot, 3.048 E-01, exact
  EXPECT_EQ(to_si(1, Unit::yard), 9.144e-1); // B.8: yard, 9.144 E-01, exact
}

TEST(NistSp811, AreaFactors) {
  EXPECT_EQ(to_si(1, Unit::square_foot), 9.290304e-2);           // B.8: square foot, 9.290304 E-02, exact
  EXPECT_NEAR(to_si(1, Unit::square_yard), 8.361274e-1, 0.5e-7); // B.8: square yard, printed rounded
  EXPECT_EQ(to_si(1, Unit::square_yard), 0.83612736);            // the square of 0.9144, exact
  EXPECT_EQ(to_si(1, Unit::hectare), 1e4);                       // B.8: hectare, 1.0 E+04, exact
}

TEST(NistSp811, VolumeFactors) {
  EXPECT_NEAR(to_si(1, Unit::cubic_foot), 2.831685e-2, 0.5e-8); // B.8: cubic foot, printed rounded
  EXPECT_EQ(to_si(1, Unit::cubic_foot), 0.028316846592);        // the cube of 0.3048, exact
  EXPECT_EQ(to_si(1e8, Unit::cubic_foot), 2831684.6592);        // the same factor, no digit lost
  EXPECT_DOUBLE_EQ(convert(1, Unit::cubic_metre, Unit::cubic_foot),
                   35.31466672148859); // its reciprocal, Python 3 fractions
}

// B.8 gives the acre of US survey feet, 4.046 873 E+03 m². Survey units were withdrawn at the end of 2022
// (from memory: notice of NIST and NOAA, 2020-10-05); here an acre is 43 560 international square feet, 4
// millionths less. GNU units 2.22: 4046.8564224.
TEST(NistSp811, TheAcreIsTheInternationalOne) {
  EXPECT_EQ(to_si(1, Unit::acre), 4046.8564224);
  EXPECT_NEAR(to_si(1, Unit::acre) / 4046.873, 1 - 4.1e-6, 0.1e-6);
}

TEST(NistSp811, FahrenheitToCelsius) {
  // B.9: t/°C = (t/°F - 32)/1.8; the pairs from GNU units 2.22.
  const double pairs[][2] = {{32, 0}, {39.2, 4}, {50, 10}, {68, 20}, {98.6, 37}, {-40, -40}, {212, 100}};
  for (const auto& [fahrenheit, celsius] : pairs) {
    EXPECT_EQ(to_si(fahrenheit, Unit::fahrenheit), celsius) << fahrenheit;
    EXPECT_EQ(from_si(celsius, Unit::fahrenheit), fahrenheit) << celsius;
  }
  EXPECT_NEAR(to_si(70, Unit::fahrenheit), 21.1111111111, 1e-10);
  EXPECT_EQ(to_si(273.15, Unit::kelvin), 0); // B.9: t/°C = T/K - 273.15
  EXPECT_EQ(to_si(290.95, Unit::kelvin), 17.8);
}

TEST(NistSp811, DifferencesLeaveTheZeroOut) {
  // B.9: a temperature interval of 1.8 °F is 1 °C.
  EXPECT_EQ(difference_to_si(1.8, Unit::fahrenheit), 1);
  EXPECT_EQ(difference_from_si(1, Unit::fahrenheit), 1.8);
  EXPECT_EQ(difference_to_si(5, Unit::kelvin), 5);
}

TEST(NistSp811, RoundingOfTies) {
  // B.7.1: 6.974 951 5 to 3, 5 and 7 digits, and 6.974 950 5 to 7 digits.
  EXPECT_EQ(fixed(6.9749515, 2), "6.97");
  EXPECT_EQ(fixed(6.9749515, 4), "6.9750");
  EXPECT_EQ(fixed(6.9749515, 6), "6.974952");
  EXPECT_EQ(fixed(6.9749505, 6), "6.974950");
}

// The limits of the depth classes in inches, with their values in centimetres (GNU units 2.22): the same
// number, whichever unit was typed and whichever the sheet has.
TEST(NistSp811, DepthLimitsAgreeInBothSystems) {
  const double limits[][2] = {{6, 15.24}, {12, 30.48}, {24, 60.96}, {36, 91.44}, {48, 121.92}};
  for (const auto& [inches, centimetres] : limits) {
    const Quantity a = read(Cell::of_number(inches), {Kind::depth, Unit::inch});
    const Quantity b = read(Cell::of_number(centimetres), {Kind::depth, Unit::centimetre});
    const Quantity c = read(plain(centimetres) + " cm", {Kind::depth, Unit::inch});
    const Quantity d = read(plain(centimetres / 100) + " m", {Kind::depth, Unit::inch});
    for (const Quantity& q : {a, b, c, d}) {
      EXPECT_EQ(in_unit(q, Unit::inch), inches);
      EXPECT_EQ(high_in_unit(q, Unit::inch), inches);
      EXPECT_EQ(in_unit(q, Unit::centimetre), centimetres);
      EXPECT_EQ(q.si, a.si);
      EXPECT_EQ(from_si(q.si, Unit::inch), inches);
    }
    // The nearest values on either side that a stick or tape can show stay on their side.
    for (const double step : {0.0625, 0.01, 0.001}) {
      EXPECT_LT(
          in_unit(read(Cell::of_number(centimetres - step), {Kind::depth, Unit::centimetre}), Unit::inch),
          inches);
      EXPECT_GT(
          in_unit(read(Cell::of_number(centimetres + step), {Kind::depth, Unit::centimetre}), Unit::inch),
          inches);
      EXPECT_LT(in_unit(read(Cell::of_number(inches - step), {Kind::depth, Unit::inch}), Unit::centimetre),
                centimetres);
      EXPECT_GT(in_unit(read(Cell::of_number(inches + step), {Kind::depth, Unit::inch}), Unit::centimetre),
                centimetres);
    }
  }
}

} // namespace
} // namespace wetspell
