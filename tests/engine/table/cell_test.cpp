#include "table/cell.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <utility>

namespace {

using namespace wetspell;

// 14 bytes stand in the cell, 15 beside it.
TEST(Cell, TextOfAnyLengthComesBack) {
  for (const std::size_t length : {1U, 13U, 14U, 15U, 16U, 255U, 32'767U}) {
    const std::string text(length, 'x');
    const Cell cell = Cell::of_text(text);
    EXPECT_EQ(cell.kind(), CellKind::text);
    EXPECT_EQ(cell.text(), text);
    EXPECT_EQ(cell.number(), 0);
  }
  EXPECT_TRUE(Cell::of_text("").empty());
  EXPECT_EQ(Cell::of_text(std::string_view("a\0b", 3)).text().size(), 3U);
}

TEST(Cell, NumbersKeepEveryBit) {
  for (const double number : {0.0, -0.1, 1e308, std::numeric_limits<double>::denorm_min()}) {
    EXPECT_EQ(Cell::of_number(number).number(), number);
    EXPECT_EQ(Cell::of_date(number).number(), number);
    EXPECT_NE(Cell::of_date(number), Cell::of_number(number));
  }
  EXPECT_EQ(Cell::of_number(3).text(), "");
}

TEST(Cell, CopiesAreTheirOwnAndMovesTakeAlong) {
  const std::string text(100, 'y');
  for (const Cell& from :
       {Cell(), Cell::of_number(2.5), Cell::of_text("short"), Cell::of_text(text), Cell::of_error(text)}) {
    Cell copy = Cell::of_text(std::string(50, 'z'));
    copy = from;
    EXPECT_EQ(copy, from);
    const Cell& same = copy;
    copy = same;
    EXPECT_EQ(copy, from);
    Cell moved = Cell::of_text(std::string(50, 'z'));
    moved = std::move(copy);
    EXPECT_EQ(moved, from);
    const Cell again(std::move(moved));
    EXPECT_EQ(again, from);
  }
  EXPECT_NE(Cell::of_text(text), Cell::of_error(text));
}

TEST(Cell, EqualCellsHashAlikeHoweverTheyCameAbout) {
  const Cell fresh = Cell::of_text("12 cm");
  Cell over = Cell::of_text(std::string(50, 'z'));
  over = fresh;
  Cell moved_over = Cell::of_text("a longer one");
  moved_over = Cell::of_text("12 cm");
  for (const Cell& cell : {over, moved_over}) {
    EXPECT_EQ(cell, fresh);
    EXPECT_EQ(cell.hash(), fresh.hash());
  }
  EXPECT_NE(Cell::of_text("12 cm").hash(), Cell::of_text("13 cm").hash());
  EXPECT_TRUE(fresh.compact());
  EXPECT_FALSE(Cell::of_text(std::string(15, 'x')).compact());
}

} // namespace
