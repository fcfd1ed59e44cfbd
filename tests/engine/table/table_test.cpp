#include "table/table.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

TEST(ColumnLetters, AreThoseThatCalcShows) {
  EXPECT_EQ(column_letters(0), "A");
  EXPECT_EQ(column_letters(25), "Z");
  EXPECT_EQ(column_letters(26), "AA");
  EXPECT_EQ(column_letters(701), "ZZ");
  EXPECT_EQ(column_letters(702), "AAA");
  EXPECT_EQ(column_letters(16383), "XFD"); // the last column of a sheet
}

TEST(PlaceText, QuotesSheetNamesWhereCalcDoes) {
  EXPECT_EQ(to_text(Place{"Visits", 23, 5}), "Visits.F23");
  EXPECT_EQ(to_text(Place{"My visits", 1, 0}), "'My visits'.A1");
  EXPECT_EQ(to_text(Place{"Bob's", 1, 0}), "'Bob''s'.A1");
}

TEST(Table, KnowsWhereItsCellsCameFrom) {
  Table table(Place{"S", 4, 2}, 2, 3);
  table.at(1, 2) = Cell::of_number(7);
  EXPECT_EQ(table.place(1, 2), (Place{"S", 5, 4}));
  EXPECT_TRUE(table.at(0, 0).empty());
}

TEST(Table, BeginsWithNothingInAnyCell) {
  Table table(Place{"S", 1, 0}, 3, 2);
  table.open_row(1);
  for (std::size_t row = 0; row < table.rows(); ++row)
    for (std::size_t column = 0; column < table.columns(); ++column)
      EXPECT_EQ(table.at(row, column), Cell{});
}

TEST(Table, KeepsEachCellApartAlsoInACopy) {
  Table table(Place{"S", 1, 0}, 3, 2);
  for (std::size_t row = 0; row < table.rows(); ++row)
    for (std::size_t column = 0; column < table.columns(); ++column)
      table.at(row, column) =
          Cell::of_text("row " + std::to_string(row) + " and column " + std::to_string(column));
  const Table copy = table;
  table.at(2, 1) = {};
  EXPECT_EQ(copy.at(2, 1).text(), "row 2 and column 1");
  EXPECT_EQ(copy.at(0, 1).text(), "row 0 and column 1");
  EXPECT_EQ(table.at(2, 0).text(), "row 2 and column 0");
}

// Calc's serial dates: day 0 is 1899-12-30, so 2024-03-15 is 45366.
TEST(CellText, SpeaksPlainly) {
  EXPECT_EQ(to_text(Cell::of_number(0.1)), "0.1");
  EXPECT_EQ(to_text(Cell::of_number(25)), "25");
  EXPECT_EQ(to_text(Cell::of_date(45366)), "2024-03-15");
  EXPECT_EQ(to_text(Cell::of_date(45366.5)), "2024-03-15 12:00");
  EXPECT_EQ(to_text(Cell::of_date(0.375)), "09:00");
  EXPECT_EQ(to_text(Cell{}), "");
  EXPECT_TRUE(Cell::of_text("").empty());
}

} // namespace
} // namespace wetspell
