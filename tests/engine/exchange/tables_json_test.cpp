// Tables through JSON and back: every kind of cell, places, blanks at the ends, and what is refused.
#include "exchange/tables_json.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

TEST(TablesJson, EveryKindOfCellComesBack) {
  Table table(Place{"Visits 'n' all", 3, 2}, 2, 4);
  table.at(0, 0) = Cell::of_text("B07 \"north\"\n°F");
  table.at(0, 1) = Cell::of_number(0.1);
  table.at(0, 3) = Cell::of_date(46187.5);
  table.at(1, 1) = Cell::of_error("#N/A");
  const std::vector<Table> sent{table, Table(Place{"Empty", 1, 0}, 0, 0)};
  const auto back = tables_from_json(json_from_tables(sent));
  ASSERT_TRUE(back) << back.error().text;
  ASSERT_EQ(back.value().size(), 2u);
  const Table& read = back.value()[0];
  EXPECT_EQ(read.sheet(), table.sheet());
  EXPECT_EQ(read.sheet_row(0), 3u);
  EXPECT_EQ(read.sheet_column(0), 2u);
  ASSERT_EQ(read.rows(), 2u);
  ASSERT_EQ(read.columns(), 4u);
  for (std::size_t r = 0; r < 2; ++r)
    for (std::size_t c = 0; c < 4; ++c)
      EXPECT_EQ(read.at(r, c), table.at(r, c)) << r << ' ' << c;
  EXPECT_EQ(back.value()[1].rows(), 0u);
}

TEST(TablesJson, WhatIsNoTableIsRefusedInWords) {
  for (const char* wrong : {"", "{", "[1]", R"([{"sheet":"A"}])",
                            R"([{"sheet":"A","row":1,"column":0,"cells":[[{"odd":1}]]}])"}) {
    const auto read = tables_from_json(wrong);
    ASSERT_FALSE(read) << wrong;
    EXPECT_NE(read.error().text.find("cannot be read"), std::string::npos);
  }
}

} // namespace
} // namespace wetspell
