#include "audit/dates.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

// Day numbers by Python 3.11: (date(2019, 4, 12) - date(1899, 12, 30)).days and so on.
constexpr double april_12 = 43567;

ReadDate read(std::string_view text, DateSense sense = {}) {
  return date_from(Cell::of_text(std::string(text)), sense);
}

DateSense decided(std::initializer_list<const char*> texts, std::string& reason, DateSense known = {}) {
  DateColumn column(known);
  for (const char* text : texts)
    column.add(Cell::of_text(text));
  return column.decide(reason);
}

TEST(AuditDates, OneDayThatCanOnlyBeADaySettlesTheColumn) {
  std::string reason;
  EXPECT_EQ(decided({"3/4/2019", "12/4/2019", "25/4/2019"}, reason).order, DateOrder::day_first);
  EXPECT_NE(reason.find("1 of 3"), std::string::npos) << reason;
  EXPECT_EQ(decided({"4/3/2019", "4/12/2019", "4/25/2019"}, reason).order, DateOrder::month_first);
}

TEST(AuditDates, AColumnThatContradictsItselfStaysOpen) {
  std::string reason;
  EXPECT_EQ(decided({"25/4/2019", "4/25/2019", "3/4/2019"}, reason).order, DateOrder::unknown);
  EXPECT_TRUE(read("25/4/2019").readable);
  const ReadDate open = read("3/4/2019");
  EXPECT_FALSE(open.readable);
  EXPECT_TRUE(open.askable);
}

TEST(AuditDates, DaysThatFollowEachOtherSettleIt) {
  std::string reason;
  // Month first: 1, 3, 5, 8, 11 April. Day first: the fourth of January, March, May, August, November.
  EXPECT_EQ(decided({"4/1/2019", "4/3/2019", "4/5/2019", "4/8/2019", "4/11/2019"}, reason).order,
            DateOrder::unknown);
  // Month first: 11 Mar, 12 Mar, 1 Apr, 2 Apr, 3 Apr. Day first they jump back and forth over a year.
  EXPECT_EQ(decided({"3/11/2019", "3/12/2019", "4/1/2019", "4/2/2019", "4/3/2019", "5/1/2019"}, reason).order,
            DateOrder::month_first);
  EXPECT_NE(reason.find("follow each other"), std::string::npos) << reason;
}

TEST(AuditDates, TheSheetsYearSettlesTheCenturyAndCompletesDates) {
  EXPECT_EQ(read("12 Apr 19").serial, april_12);
  EXPECT_EQ(read("4/12/19", {DateOrder::month_first, {}, 2026, false}).serial, april_12);
  EXPECT_EQ(read("12 Apr 98", {DateOrder::unknown, {}, 2026, false}).serial, 35897);   // 1998-04-12
  EXPECT_EQ(read("12 Apr 30", {DateOrder::unknown, 1931, 2026, false}).serial, 11060); // 1930-04-12
  EXPECT_EQ(read("12 Apr", {DateOrder::unknown, 2019, 2026, false}).serial, april_12);
  EXPECT_FALSE(read("12 Apr").readable);
  EXPECT_TRUE(read("12 Apr").askable);
}

TEST(AuditDates, NumbersCountFromTheDayThatFitsTheYear) {
  std::string reason;
  DateColumn column({DateOrder::unknown, 2019, 2026, false});
  for (const double number : {april_12 - 1462, april_12 - 1455})
    column.add(Cell::of_number(number));
  const DateSense sense = column.decide(reason);
  EXPECT_TRUE(sense.from_1904);
  EXPECT_EQ(date_from(Cell::of_number(april_12 - 1462), sense).serial, april_12);
  EXPECT_EQ(date_from(Cell::of_number(april_12), {}).serial, april_12);
  EXPECT_EQ(date_from(Cell::of_number(20190412), {}).serial, april_12);
  EXPECT_FALSE(date_from(Cell::of_number(12), {}).readable);
}

TEST(AuditDates, FindsTheYearOfATitle) {
  EXPECT_EQ(year_in("Spring 2019"), 2019);
  EXPECT_EQ(year_in("pools-2019-final.csv"), 2019);
  EXPECT_FALSE(year_in("2018 to 2019"));
  EXPECT_FALSE(year_in("B07"));
}

} // namespace
} // namespace wetspell
