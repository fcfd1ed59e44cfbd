#include "exchange/csv.hpp"

#include <gtest/gtest.h>

#include <cstdlib>
#include <random>
#include <string>
#include <vector>

namespace wetspell {
namespace {

// RFC 4180, section 2: rules 1 to 7.
TEST(Csv, ReadsQuotedFieldsAsRfc4180Says) {
  const auto table = table_from_csv("a,b\r\n\"x,y\",\"he said \"\"no\"\"\"\r\n\"two\r\nlines\",\r\n", "t");
  ASSERT_TRUE(table) << table.error().text;
  EXPECT_EQ(table.value().rows(), 3u);
  EXPECT_EQ(table.value().at(1, 0), Cell::of_text("x,y"));
  EXPECT_EQ(table.value().at(1, 1), Cell::of_text("he said \"no\""));
  EXPECT_EQ(table.value().at(2, 0), Cell::of_text("two\r\nlines"));
  EXPECT_TRUE(table.value().at(2, 1).empty());
}

TEST(Csv, FindsTheDelimiter) {
  for (const char delimiter : {',', ';', '\t', '|'}) {
    const std::string d(1, delimiter);
    const auto table =
        table_from_csv("Pool" + d + "Depth" + d + "Notes\nP1" + d + "12.5" + d + "\"a, b; c\"\n", "t");
    ASSERT_TRUE(table);
    ASSERT_EQ(table.value().columns(), 3u) << "delimiter '" << delimiter << "'";
    EXPECT_EQ(table.value().at(1, 1), Cell::of_number(12.5));
    EXPECT_EQ(table.value().at(1, 2), Cell::of_text("a, b; c"));
  }
}

TEST(Csv, KeepsCodesAndQuotedNumbersAsText) {
  const auto table = table_from_csv("007,\"12\",0.5,0,1e5,-3,+4, 5,3.10,7.0\n", "t");
  ASSERT_TRUE(table);
  const Table& t = table.value();
  EXPECT_EQ(t.at(0, 0), Cell::of_text("007"));
  EXPECT_EQ(t.at(0, 1), Cell::of_text("12"));
  EXPECT_EQ(t.at(0, 2), Cell::of_number(0.5));
  EXPECT_EQ(t.at(0, 3), Cell::of_number(0));
  EXPECT_EQ(t.at(0, 4), Cell::of_text("1e5"));
  EXPECT_EQ(t.at(0, 5), Cell::of_number(-3));
  EXPECT_EQ(t.at(0, 6), Cell::of_text("+4"));
  EXPECT_EQ(t.at(0, 7), Cell::of_text(" 5"));
  EXPECT_EQ(t.at(0, 8), Cell::of_text("3.10"));
  EXPECT_EQ(t.at(0, 9), Cell::of_number(7));
}

// Beside strtod of the C library, to the last bit.
TEST(Csv, ReadsNumbersAsTheCLibraryDoes) {
  std::mt19937_64 random(20260401);
  std::vector<std::string> numbers{"5.",
                                   ".5",
                                   "0.0",
                                   "-0.25",
                                   "999999999999999",
                                   "9999999999999999",
                                   "0.00000000000001",
                                   "123456789.0123456789"};
  while (numbers.size() < 5000) {
    std::string digits = std::to_string(1 + random() % 9);
    for (std::size_t left = random() % 18; left > 0; --left)
      digits += std::to_string(random() % 10);
    if (const std::size_t point = random() % (digits.size() + 1); point > 0)
      digits.insert(point, ".");
    digits += '1'; // a zero behind the point would make it a code
    numbers.push_back(random() % 4 == 0 ? "-" + digits : digits);
  }
  std::string text;
  for (const std::string& number : numbers)
    text += number + "\n";
  const auto table = table_from_csv(text, "t");
  ASSERT_TRUE(table);
  for (std::size_t i = 0; i < numbers.size(); ++i)
    EXPECT_EQ(table.value().at(i, 0), Cell::of_number(std::strtod(numbers[i].c_str(), nullptr)))
        << numbers[i];
}

TEST(Csv, ManyPointsAreNoNumber) {
  const auto table = table_from_csv("1.2.3,1-2,.,-\n", "t");
  ASSERT_TRUE(table);
  for (std::size_t column = 0; column < 4; ++column)
    EXPECT_EQ(table.value().at(0, column).kind(), CellKind::text);
}

TEST(Csv, SkipsTheByteOrderMarkAndAcceptsALastLineWithoutEnd) {
  const auto table = table_from_csv("\xEF\xBB\xBFPool,Depth\nP1,3", "t");
  ASSERT_TRUE(table);
  EXPECT_EQ(table.value().at(0, 0), Cell::of_text("Pool"));
  EXPECT_EQ(table.value().at(1, 1), Cell::of_number(3));
}

TEST(Csv, RefusesInWordsWhatCannotBeRead) {
  const auto open = table_from_csv("a,b\n1,\"never\nends", "visits.csv");
  ASSERT_FALSE(open);
  EXPECT_EQ(open.error().text, "visits.csv: the quotation mark that opens on line 2 never closes.");
  const auto latin = table_from_csv("caf\xE9,1\n", "visits.csv");
  ASSERT_FALSE(latin);
  EXPECT_NE(latin.error().text.find("not UTF-8"), std::string::npos);
}

TEST(Csv, WritesWhatItReads) {
  Table table(Place{"t", 1, 0}, 2, 4);
  table.at(0, 0) = Cell::of_text("a,\"b\"\nc");
  table.at(0, 1) = Cell::of_number(0.1);
  table.at(0, 3) = Cell::of_text("12");
  table.at(1, 0) = Cell::of_text("007");
  const auto again = table_from_csv(csv_from_table(table), "t");
  ASSERT_TRUE(again);
  for (std::size_t r = 0; r < 2; ++r)
    for (std::size_t c = 0; c < 4; ++c)
      EXPECT_EQ(again.value().at(r, c), table.at(r, c)) << r << "," << c;
}

TEST(Csv, MakesFormulasHarmless) {
  Table table(Place{"t", 1, 0}, 1, 5);
  table.at(0, 0) = Cell::of_text("=1+1");
  table.at(0, 1) = Cell::of_text("@cmd");
  table.at(0, 2) = Cell::of_text("-broken");
  table.at(0, 3) = Cell::of_number(-3);
  table.at(0, 4) = Cell::of_text("a=b");
  EXPECT_EQ(csv_from_table(table), "'=1+1,'@cmd,'-broken,-3,a=b\r\n");
}

TEST(Csv, TitlesAndCommasInNumbersDoNotDecideTheDelimiter) {
  const auto table =
      table_from_csv("Pools, ponds, and puddles\n\nPool;Depth;Full\nP1;12,5;80,0\nP2;13,5;75,5\n", "t");
  ASSERT_TRUE(table);
  ASSERT_EQ(table.value().columns(), 3u);
  EXPECT_EQ(table.value().at(0, 0), Cell::of_text("Pools, ponds, and puddles"));
  EXPECT_EQ(table.value().at(3, 1), Cell::of_text("12,5"));
}

TEST(Csv, ReadsWhatNobodyPrepared) {
  // "Café" in Windows-1252, in UTF-16 of both ends, with and without a mark.
  const auto first = [](std::string bytes) {
    auto table = table_from_any_text(std::move(bytes), "t");
    return table ? to_text(table.value().at(0, 0)) + "/" + to_text(table.value().at(1, 1))
                 : table.error().text;
  };
  const auto wide = [](std::string_view text, bool big, bool mark) {
    std::string bytes = !mark ? "" : big ? "\xFE\xFF" : "\xFF\xFE";
    for (const char c : text) {
      const char zero = '\0';
      bytes += big ? zero : c;
      bytes += big ? c : zero;
    }
    return bytes;
  };
  EXPECT_EQ(first("Caf\xE9,b\n1,2\n"), "Caf\u00e9/2");
  EXPECT_EQ(first("\xEF\xBB\xBF"
                  "Caf\u00e9,b\n1,2\n"),
            "Caf\u00e9/2");
  for (const bool big : {false, true})
    for (const bool mark : {false, true})
      EXPECT_EQ(first(wide("Caf\xE9,b\n1,2\n", big, mark)), "Caf\u00e9/2") << big << mark;
  EXPECT_EQ(first("Pool,\x93size\x94\nP1,2\n"), "Pool/2");
}

TEST(Csv, ALoneQuotationMarkIsASignWhereNothingElseHelps) {
  const auto table = table_from_any_text("Pool,Date\nP1,1 May\n\",2 May\n", "t");
  ASSERT_TRUE(table) << table.error().text;
  EXPECT_EQ(table.value().rows(), 3u);
  EXPECT_EQ(table.value().at(2, 0), Cell::of_text("\u2033"));
  EXPECT_EQ(table.value().at(2, 1), Cell::of_text("2 May"));
}

TEST(Csv, MarksThatNeverCloseDoNotMoveTheDelimiter) {
  const std::string text = "\"a \"\"b\"b\",\"cd\n\"\n1,2\n";
  EXPECT_FALSE(table_from_csv(text, "t"));
  const auto table = table_from_any_text(text, "t");
  ASSERT_TRUE(table) << table.error().text;
  EXPECT_EQ(table.value().rows(), 3u);
}

// Long enough to be read in several parts; lines differ in length, and in how they end.
TEST(Csv, ALongTextIsReadAsAShortOneIs) {
  constexpr std::size_t rows = 300'000;
  std::string text = "Row,Words,Last\n";
  for (std::size_t row = 1; row < rows; ++row)
    text += std::to_string(row) + "," + std::string(row % 13, 'w') + (row % 3 == 0 ? "" : ",x") +
            (row % 2 == 0 ? "\r\n" : "\n");
  ASSERT_GT(text.size(), std::size_t{3} << 20);
  const auto table = table_from_csv(text, "t");
  ASSERT_TRUE(table);
  ASSERT_EQ(table.value().rows(), rows);
  ASSERT_EQ(table.value().columns(), 3U);
  for (std::size_t row = 1; row < rows; ++row) {
    ASSERT_EQ(table.value().at(row, 0), Cell::of_number(static_cast<double>(row)));
    ASSERT_EQ(table.value().at(row, 1), Cell::of_text(std::string(row % 13, 'w')));
    ASSERT_EQ(table.value().at(row, 2), row % 3 == 0 ? Cell() : Cell::of_text("x"));
  }
}

TEST(Csv, AMarkThatNeverClosesIsNamedByItsLineInALongTextToo) {
  std::string text = "a,b\n";
  for (int line = 0; line < 500'000; ++line)
    text += "1,2\n";
  const auto table = table_from_csv(text + "\"open,2\n", "t");
  ASSERT_FALSE(table);
  EXPECT_NE(table.error().text.find("line 500002"), std::string::npos) << table.error().text;
}

TEST(Csv, RefusesMoreColumnsThanASheetHas) {
  EXPECT_FALSE(table_from_any_text(std::string(20'000, ','), "t"));
}

} // namespace
} // namespace wetspell
