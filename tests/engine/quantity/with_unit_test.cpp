#include "quantity/with_unit.hpp"

#include "quantity/read.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

std::string moved(const char* text, Kind kind, Unit unit) {
  return to_text(with_unit(Cell::of_text(text), kind, unit));
}

TEST(WithUnit, NumbersTakeTheirUnitAlong) {
  EXPECT_EQ(with_unit(Cell::of_number(30), Kind::depth, Unit::centimetre), Cell::of_text("30 cm"));
  EXPECT_EQ(with_unit(Cell::of_number(30), Kind::depth, Unit::none), Cell::of_number(30));
  EXPECT_EQ(with_unit(Cell{}, Kind::depth, Unit::centimetre), Cell{});
}

TEST(WithUnit, SoDoNumbersThatWordsStandBeside) {
  for (const char* text : {"ca. 10", "10?", ">30", "30+", "<1", "20-25", "between 24 and 26", "62 or 63",
                           "25 ± 1", "9 1/4", "34,5", "10ish", "25 or more"}) {
    const std::string said = moved(text, Kind::depth, Unit::centimetre);
    EXPECT_EQ(said, std::string(text) + " cm");
    const Quantity before = read(text, {.kind = Kind::depth, .assume = Unit::centimetre});
    const Quantity after = read(said, {.kind = Kind::depth, .assume = Unit::inch});
    EXPECT_EQ(after.status, before.status) << text;
    EXPECT_DOUBLE_EQ(after.si, before.si) << text;
  }
  EXPECT_EQ(moved("about 8", Kind::temperature, Unit::celsius), "about 8 °C");
  EXPECT_EQ(moved("12?", Kind::length, Unit::pace), "12? paces");
}

TEST(WithUnit, WhatSaysItsUnitOrIsNoReadingStays) {
  for (const char* text : {"ca. 10 in", "2'4\"", "stick lost", "not measured", "?", "-", ""})
    EXPECT_EQ(moved(text, Kind::depth, Unit::centimetre), text);
  EXPECT_EQ(moved("3/4", Kind::percent, Unit::percent), "3/4") << "three quarters, not 0.75 %";
  EXPECT_EQ(moved("three quarters full", Kind::percent, Unit::percent), "three quarters full");
}

} // namespace
} // namespace wetspell
