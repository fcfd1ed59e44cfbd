// Degrees of latitude and longitude.
#include "quantity/degrees.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

TEST(Degrees, AsMapsAndReceiversWriteThem) {
  EXPECT_EQ(read_degrees("44.5123", Axis::latitude), 44.5123);
  EXPECT_EQ(read_degrees(" -71.2034 ", Axis::longitude), -71.2034);
  EXPECT_EQ(read_degrees("71.2034 W", Axis::longitude), -71.2034);
  EXPECT_EQ(read_degrees("W71.2034", Axis::longitude), -71.2034);
  EXPECT_EQ(read_degrees("44.5123° N", Axis::latitude), 44.5123);
  EXPECT_EQ(read_degrees("s 33.9", Axis::latitude), -33.9);
  EXPECT_EQ(read_degrees("+12", Axis::longitude), 12);
  EXPECT_EQ(read_degrees("180", Axis::longitude), 180);
}

TEST(Degrees, WhatIsNotSureIsNotRead) {
  for (const char* text : {"", "N", "44° 30'", "44 30.5", "44.5 W", "-44.5 S", "90.1", "1e999", "nan", "44,5",
                           "x", "--4", "+-4"})
    EXPECT_EQ(read_degrees(text, Axis::latitude), std::nullopt) << text;
  EXPECT_EQ(read_degrees("180.01", Axis::longitude), std::nullopt);
}

} // namespace
} // namespace wetspell
