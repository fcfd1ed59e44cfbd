// Units: the words people use for them, and conversion without detours.
#include "quantity/quantity.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <string>

namespace wetspell {
namespace {

constexpr Kind kinds[] = {Kind::temperature, Kind::depth, Kind::length, Kind::area, Kind::volume,
                          Kind::percent,     Kind::count, Kind::date,   Kind::time, Kind::truth};

TEST(UnitNamed, SpellingsOfOneUnit) {
  const struct {
    Unit unit;
    const char* words[8];
  } rows[] = {
      {Unit::inch, {"in", "in.", "\"", "″", "”", "inches", "IN", "Inch"}},
      {Unit::foot, {"ft", "ft.", "'", "′", "’", "feet", "FT", "foot"}},
      {Unit::celsius, {"°C", "C", "c", "℃", "deg C", "ºC", "Celsius", "degrees celsius"}},
      {Unit::fahrenheit, {"°F", "F", "f", "℉", "deg. F", "degF", "Fahrenheit", "° F"}},
      {Unit::square_foot, {"ft²", "ft2", "ft^2", "sq ft", "sq. ft.", "sqft", "square feet", "Square Foot"}},
      {Unit::square_metre, {"m²", "m2", "m^2", "sq m", "sqm", "square metres", "square meter", "M2"}},
      {Unit::cubic_metre, {"m³", "m3", "m^3", "cu m", "cu. m.", "cubic metres", "cubic meter", "M3"}},
      {Unit::cubic_foot, {"ft³", "ft3", "ft^3", "cu ft", "cu. ft.", "cuft", "cubic feet", "Cubic Foot"}},
      {Unit::percent, {"%", "per cent", "percent", "pct", "pct.", "Percent", "PCT", "％"}},
      {Unit::pace, {"pace", "paces", "Paces", "double paces", "double pace", "PACES", " paces ", "pace."}},
  };
  for (const auto& row : rows)
    for (const char* word : row.words)
      EXPECT_EQ(unit_named(word), row.unit) << word;
}

TEST(UnitNamed, EverySymbolAndNameNamesItsUnit) {
  for (const auto& u : units()) {
    if (u.unit == Unit::none)
      continue;
    if (!u.symbol.empty()) {
      EXPECT_EQ(unit_named(u.symbol), u.unit) << u.symbol;
    }
    EXPECT_EQ(unit_named(u.name), u.unit) << u.name;
    EXPECT_FALSE(u.source.empty()) << u.name;
  }
}

TEST(UnitNamed, NothingElseIsAUnit) {
  for (const char* word :
       {"", " ", "inchs", "x", "deg", "°", "degrees", "feets", "m4", "km", "in in", "25 in", "\xff"})
    EXPECT_EQ(unit_named(word), std::nullopt) << word;
}

TEST(UnitWordNear, HintsAtOneSlip) {
  EXPECT_EQ(unit_word_near("inchs"), "inches");
  EXPECT_EQ(unit_word_near("Farenheit"), "fahrenheit");
  EXPECT_EQ(unit_word_near("celcius"), "celsius");
  EXPECT_EQ(unit_word_near("pases"), "paces");
  EXPECT_EQ(unit_word_near("acers"), "acres");
  for (const char* word : {"", "c", "cmm", "fathoms", "lb", "hands", "yrd"})
    EXPECT_EQ(unit_word_near(word), "") << word;
}

TEST(Fits, KindsAndTheirUnits) {
  EXPECT_TRUE(fits(Unit::inch, Kind::depth));
  EXPECT_TRUE(fits(Unit::inch, Kind::length));
  EXPECT_TRUE(fits(Unit::pace, Kind::length));
  EXPECT_FALSE(fits(Unit::pace, Kind::depth));
  EXPECT_FALSE(fits(Unit::inch, Kind::area));
  EXPECT_FALSE(fits(Unit::celsius, Kind::depth));
  EXPECT_TRUE(fits(Unit::one, Kind::percent));
  EXPECT_TRUE(fits(Unit::none, Kind::count));
  EXPECT_FALSE(fits(Unit::none, Kind::depth));
  for (const Kind kind : kinds) {
    EXPECT_TRUE(fits(usual_unit(kind), kind)) << name(kind);
    EXPECT_EQ(kind_named(name(kind)), kind);
  }
  EXPECT_TRUE(fits(Unit::cubic_foot, Kind::volume));
  EXPECT_FALSE(fits(Unit::square_foot, Kind::volume));
  EXPECT_EQ(kind_named("mass"), std::nullopt);
}

TEST(Convert, ThereAndBackGivesTheTypedNumber) {
  std::mt19937 random(20260321);
  for (const auto& from : units())
    for (const auto& to : units()) {
      if (from.kind != to.kind || from.unit == Unit::none ||
          fits(from.unit, Kind::depth) != fits(to.unit, Kind::depth))
        continue;
      for (int i = 0; i < 200; ++i) {
        const double typed =
            static_cast<double>(std::uniform_int_distribution<int>(-50000, 50000)(random)) / 100;
        const double back = convert(convert(typed, from.unit, to.unit), to.unit, from.unit);
        EXPECT_NEAR(back, typed, 1e-12 * (std::fabs(typed) + 1000))
            << typed << ' ' << from.name << ' ' << to.name;
      }
    }
}

TEST(Convert, InchesAndCentimetresAgreeToTheLastBit) {
  for (int hundredths = 0; hundredths <= 12000; ++hundredths) {
    const double inches = hundredths / 100.0;
    // 2.54 times a number of two decimals has four: the double nearest to it is what somebody would type.
    const double centimetres = static_cast<double>(hundredths * 254) / 10000.0;
    ASSERT_EQ(convert(inches, Unit::inch, Unit::centimetre), centimetres);
    ASSERT_EQ(convert(centimetres, Unit::centimetre, Unit::inch), inches);
    ASSERT_EQ(to_si(inches, Unit::inch), to_si(centimetres, Unit::centimetre));
    ASSERT_EQ(from_si(to_si(inches, Unit::inch), Unit::inch), inches);
  }
}

TEST(Convert, OrderIsKept) {
  for (const auto& u : units()) {
    if (u.unit == Unit::none || u.unit == Unit::pace || u.unit == Unit::step)
      continue;
    double last = to_si(-100.1, u.unit);
    for (int tenths = -1000; tenths < 1000; ++tenths) {
      const double si = to_si(tenths / 10.0, u.unit);
      ASSERT_GT(si, last) << tenths << ' ' << u.name;
      last = si;
    }
  }
}

TEST(Convert, RefusesOtherKinds) {
  EXPECT_TRUE(std::isnan(convert(1, Unit::inch, Unit::celsius)));
  EXPECT_TRUE(std::isnan(convert(1, Unit::pace, Unit::metre)));
  EXPECT_TRUE(std::isnan(to_si(1, Unit::step)));
  EXPECT_TRUE(std::isnan(from_si(1, Unit::pace)));
  EXPECT_EQ(convert(23, Unit::pace, Unit::step), 46);
  EXPECT_EQ(convert(75, Unit::percent, Unit::one), 0.75);
}

TEST(Convert, SurvivesAnyNumber) {
  for (const double v : {1e308, -1e308, 1e-308, HUGE_VAL, -HUGE_VAL, Quantity::no_value})
    for (const auto& u : units()) {
      to_si(v, u.unit);
      from_si(v, u.unit);
      difference_to_si(v, u.unit);
    }
  EXPECT_TRUE(std::isnan(to_si(Quantity::no_value, Unit::inch)));
  EXPECT_EQ(to_si(HUGE_VAL, Unit::inch), HUGE_VAL);
}

} // namespace
} // namespace wetspell
