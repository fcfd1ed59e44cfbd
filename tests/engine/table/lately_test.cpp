#include "table/lately.hpp"

#include <gtest/gtest.h>

#include <functional>
#include <string>

namespace {

using namespace wetspell;

/// Reads a cell as its text, and counts how often it was asked.
struct CountedReader {
  std::size_t asked = 0;
  std::string operator()(const Cell& cell) {
    ++asked;
    return to_text(cell);
  }
};

TEST(Lately, WhatCameLatelyIsNotReadAgain) {
  Lately<std::string> lately;
  CountedReader reader;
  for (int i = 0; i < 3; ++i)
    EXPECT_EQ(lately.of(Cell::of_text("12 cm"), std::ref(reader)), "12 cm");
  EXPECT_EQ(reader.asked, 1U);
}

TEST(Lately, CellsThatShareAPlaceKeepTheirOwnMeaning) {
  Lately<std::string> lately;
  CountedReader reader;
  for (int again = 0; again < 2; ++again)
    for (int i = 0; i < 20'000; ++i) {
      const Cell text = Cell::of_text(std::to_string(i) + " cm");
      ASSERT_EQ(lately.of(text, std::ref(reader)), text.text());
      const Cell number = Cell::of_number(i);
      ASSERT_EQ(lately.of(number, std::ref(reader)), to_text(number));
    }
}

TEST(Lately, KindsOfCellDiffer) {
  Lately<CellKind> lately;
  const auto kind = [](const Cell& cell) { return cell.kind(); };
  const std::string beside(100, 'x');
  for (int again = 0; again < 2; ++again)
    for (const Cell& cell : {Cell(), Cell::of_number(1), Cell::of_date(1), Cell::of_text("1"),
                             Cell::of_error("1"), Cell::of_text(beside), Cell::of_error(beside)})
      EXPECT_EQ(lately.of(cell, kind), cell.kind());
}

TEST(Lately, DaysOfAYearFindTheirPlaces) {
  // Texts that differ in a few bytes in the middle must not push each other out.
  Lately<std::string> lately;
  CountedReader reader;
  constexpr std::size_t days = 12 * 28;
  for (int again = 0; again < 10; ++again)
    for (std::size_t day = 0; day < days; ++day) {
      const std::string month = std::to_string(11 + day / 28), in_month = std::to_string(11 + day % 28);
      lately.of(Cell::of_text("20" + month + "-" + in_month), std::ref(reader));
    }
  EXPECT_LT(reader.asked, days * 6); // all anew each time: ten times
}

} // namespace
