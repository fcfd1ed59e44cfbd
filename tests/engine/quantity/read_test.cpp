// What the tables of lines do not show: cells, precision, the order of days and months, and that nothing
// crashes.
#include "quantity/read.hpp"

#include "quantity/answer.hpp"
#include "quantity/reason.hpp"
#include "reader_data.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <set>
#include <string>

namespace wetspell {
namespace {

constexpr Kind kinds[] = {Kind::temperature, Kind::depth, Kind::length, Kind::area, Kind::volume,
                          Kind::percent,     Kind::count, Kind::date,   Kind::time, Kind::truth};

std::string_view why(const Cell& cell, Kind kind) {
  const Quantity q = read(cell, {kind});
  EXPECT_EQ(q.status, Status::bad);
  return text(q.reason);
}

TEST(ReadCell, BlankIsNeverZero) {
  for (const Kind kind : kinds)
    for (const Cell& cell : {Cell{}, Cell::of_text(" "), Cell::of_text("\xc2\xa0")}) {
      const Quantity q = read(cell, {kind});
      EXPECT_EQ(q.status, Status::blank);
      EXPECT_FALSE(q.typed());
      EXPECT_TRUE(std::isnan(q.si));
      EXPECT_TRUE(std::isnan(q.written));
    }
}

TEST(ReadCell, NumbersAreInTheUnitOfTheColumn) {
  const Quantity q = read(Cell::of_number(25.5), {Kind::depth, Unit::inch});
  EXPECT_EQ(q.status, Status::value);
  EXPECT_EQ(q.si, 0.6477);
  EXPECT_EQ(q.written, 25.5);
  EXPECT_EQ(q.unit, Unit::inch);
  EXPECT_FALSE(q.unit_typed);
  EXPECT_FLOAT_EQ(q.resolution, 0.00254F);
  EXPECT_EQ(read(Cell::of_number(0), {Kind::depth, Unit::inch}).status, Status::value);
  EXPECT_EQ(read(Cell::of_number(23), {Kind::length, Unit::pace}).status, Status::paces);
  EXPECT_EQ(read(Cell::of_number(46), {Kind::length, Unit::step}).written, 46);
  EXPECT_EQ(read(Cell::of_number(75), {Kind::percent}).si, 0.75);
  EXPECT_EQ(read(Cell::of_number(0.75), {Kind::percent, Unit::one}).si, 0.75);
}

TEST(ReadCell, NumbersThatCannotBeMeant) {
  EXPECT_EQ(why(Cell::of_number(NAN), Kind::depth), "not a finite number");
  EXPECT_EQ(why(Cell::of_number(INFINITY), Kind::date), "not a finite number");
  EXPECT_EQ(why(Cell::of_number(1e300), Kind::area), "a number too large to be a reading");
  EXPECT_EQ(why(Cell::of_number(12.5), Kind::count), "a fraction where a whole number is expected");
  EXPECT_EQ(why(Cell::of_number(-1), Kind::count), "a count below zero");
  EXPECT_EQ(why(Cell::of_number(-300), Kind::temperature), "colder than anything can be");
  EXPECT_EQ(why(Cell::of_number(2), Kind::truth), "neither yes nor no");
  EXPECT_EQ(why(Cell::of_error("#N/A"), Kind::depth), "the sheet shows an error here");
  EXPECT_EQ(read(Cell::of_number(25), {Kind::depth, Unit::celsius}).reason, Reason::assumed_unit);
}

TEST(ReadCell, DateCells) {
  EXPECT_EQ(read(Cell::of_date(46102), {Kind::date}).si, 46102);
  EXPECT_EQ(read(Cell::of_date(46102.6), {Kind::date}).si, 46102);
  EXPECT_NEAR(read(Cell::of_date(46102.6), {Kind::time}).si, 0.6, 1e-9);
  EXPECT_EQ(read(Cell::of_date(0.375), {Kind::time}).si, 0.375);
  EXPECT_EQ(why(Cell::of_date(46102), Kind::time), "a date where a time is expected");
  EXPECT_EQ(why(Cell::of_date(0.375), Kind::date), "a time where a date is expected");
  EXPECT_EQ(why(Cell::of_date(46115), Kind::depth),
            "a date where a depth is expected"); // 3-4, as Calc takes it
  EXPECT_EQ(why(Cell::of_date(0.375), Kind::depth), "a time where a depth is expected");
  EXPECT_EQ(why(Cell::of_date(46115), Kind::truth), "a date where yes or no is expected");
  EXPECT_EQ(why(Cell::of_date(1e9), Kind::date), "no such date");
}

TEST(ReadCell, NumbersInADateColumn) {
  EXPECT_EQ(read(Cell::of_number(46102), {Kind::date}).si, 46102);
  EXPECT_EQ(why(Cell::of_number(2026), Kind::date), "a bare number where a date is expected");
  EXPECT_EQ(why(Cell::of_number(20260321), Kind::date), "a bare number where a date is expected");
  EXPECT_EQ(why(Cell::of_number(0), Kind::time), "a bare number where a time is expected");
  EXPECT_EQ(read(Cell::of_number(0.5), {Kind::time}).si, 0.5);
}

TEST(ReadText, DayAndMonth) {
  const ReadOptions day_first{Kind::date, Unit::none, DateOrder::day_first};
  const ReadOptions month_first{Kind::date, Unit::none, DateOrder::month_first};
  EXPECT_EQ(read("3/4/2026", day_first).si, read("2026-04-03", {Kind::date}).si);
  EXPECT_EQ(read("3/4/2026", month_first).si, read("2026-03-04", {Kind::date}).si);
  EXPECT_EQ(read("3/21/2026", day_first).si, read("2026-03-21", {Kind::date}).si); // only one way is a date
  EXPECT_EQ(read("21/3/2026", month_first).si, read("2026-03-21", {Kind::date}).si);
  EXPECT_EQ(read("3.4.2026", month_first).reason,
            Reason::day_or_month); // points say the one, the sheet the other
  EXPECT_EQ(read("3.4.2026", day_first).si, read("2026-04-03", {Kind::date}).si);
}

TEST(ReadText, StepOfTheLastDigit) {
  const auto step = [](std::string_view typed, Unit assume) {
    return read(typed, {assume == Unit::celsius ? Kind::temperature : Kind::depth, assume}).resolution;
  };
  EXPECT_FLOAT_EQ(step("12.3 °C", Unit::celsius), 0.1F);
  EXPECT_FLOAT_EQ(step("12", Unit::celsius), 1);
  EXPECT_FLOAT_EQ(step("12.30", Unit::celsius), 0.01F);
  EXPECT_FLOAT_EQ(step("50 F", Unit::celsius), 1 / 1.8F);
  EXPECT_FLOAT_EQ(step("25", Unit::inch), 0.0254F);
  EXPECT_FLOAT_EQ(step("25 1/8", Unit::inch), 0.0254F / 8);
  EXPECT_FLOAT_EQ(step("2 ft 3 in", Unit::inch), 0.0254F);
  EXPECT_FLOAT_EQ(step("2½ ft", Unit::inch), 0.1524F);
  EXPECT_EQ(step("dry", Unit::inch), 0);
}

TEST(ReadText, AtTheEndsOfRangesAndLimits) {
  const Quantity over = read(">48", {Kind::depth, Unit::inch});
  EXPECT_EQ(over.si, 1.2192);
  EXPECT_TRUE(std::isnan(over.si_high));
  EXPECT_EQ(in_unit(over, Unit::inch), 48);
  EXPECT_TRUE(std::isnan(high_in_unit(over, Unit::inch)));
  const Quantity under = read("under 6 in", {Kind::depth, Unit::metre});
  EXPECT_EQ(under.si_high, under.si);
  const Quantity range = read("24-36", {Kind::depth, Unit::inch});
  EXPECT_EQ(in_unit(range, Unit::centimetre), 60.96);
  EXPECT_EQ(high_in_unit(range, Unit::centimetre), 91.44);
  EXPECT_EQ(high_in_unit(range, Unit::inch), 36);
  EXPECT_TRUE(std::isnan(in_unit(range, Unit::celsius)));
}

TEST(Answer, HintsAtTheUnit) {
  const auto reason = [](std::string_view typed) {
    return answer(typed, read(typed, {Kind::depth, Unit::inch}), Kind::depth).reason;
  };
  EXPECT_EQ(reason("25 Inchs"), "unknown unit 'inchs' (inches?)");
  EXPECT_EQ(reason("25 fathoms"), "unknown unit 'fathoms'");
  EXPECT_EQ(reason("25"), "");
  EXPECT_EQ(reason(""), "blank");
}

TEST(Reasons, EachHasWordsOfItsOwn) {
  std::set<std::string_view> seen;
  for (int i = 1; i < static_cast<int>(Reason::first_mismatch); ++i)
    EXPECT_TRUE(seen.insert(text(static_cast<Reason>(i))).second) << text(static_cast<Reason>(i));
  EXPECT_FALSE(seen.contains(""));
  EXPECT_EQ(text(Reason{}), "");
  EXPECT_EQ(text(mismatch(Found::paces, Kind::depth)), "paces where a depth is expected");
  EXPECT_EQ(text(static_cast<Reason>(255)), "");
}

/// A reading is either blank, missing, bad with a reason, or a number: whatever was typed.
void expect_sound(std::string_view typed, const ReadOptions& options) {
  const Quantity q = read(typed, options);
  const bool number =
      q.has_value() || q.status == Status::over || q.status == Status::under || q.status == Status::range;
  const bool walked = q.status == Status::paces || q.status == Status::steps;
  ASSERT_EQ(std::isfinite(q.si), number) << typed;
  ASSERT_EQ(std::isfinite(q.written), number || walked) << typed;
  ASSERT_EQ(q.reason == Reason{}, number || walked) << typed;
  ASSERT_FALSE(q.reason != Reason{} && text(q.reason).empty()) << typed;
  ASSERT_FALSE(q.status == Status::range && q.si_high < q.si) << typed;
  answer(typed, q, options.kind);
}

TEST(ReadText, EveryPieceOfEveryLineIsSound) {
  for (const char* file : {"legal.tsv", "illegal.tsv"})
    for (const auto& line : testing::reader_lines(file))
      for (std::size_t cut = 0; cut <= line.text.size(); ++cut)
        for (const Kind kind : kinds) {
          expect_sound(std::string_view(line.text).substr(0, cut), {kind});
          expect_sound(std::string_view(line.text).substr(cut), {kind});
        }
}

TEST(ReadText, AnyBytesAreSound) {
  std::mt19937 random(1);
  const std::string_view pieces[] = {
      "1",   "2",    "0", "25", " ",  ".",    ",",  "-", "/",   "'",        "\"",
      "in",  "ft",   "°", "C",  "%",  "½",    "?",  "+", ">",   "<",        "~",
      "to",  "or",   "(", ")",  "^2", "m",    "e",  "o", "l",   "\xc2\xa0", "\xe2\x80\xaf",
      "Mar", "2026", ":", "am", "x",  "\xff", "\n", "±", "and", "paces",    "dry"};
  for (int i = 0; i < 60000; ++i) {
    std::string typed;
    for (int n = std::uniform_int_distribution<int>(1, 9)(random); n > 0; --n)
      typed += pieces[std::uniform_int_distribution<std::size_t>(0, std::size(pieces) - 1)(random)];
    expect_sound(typed, {kinds[static_cast<std::size_t>(i) % std::size(kinds)]});
  }
  for (int i = 0; i < 20000; ++i) {
    std::string typed(std::uniform_int_distribution<std::size_t>(1, 130)(random), ' ');
    for (char& c : typed)
      c = static_cast<char>(std::uniform_int_distribution<int>(-128, 127)(random));
    expect_sound(typed, {kinds[static_cast<std::size_t>(i) % std::size(kinds)]});
  }
}

/// Figures alone take a shorter way through the reader; a space in front takes the long one.
TEST(ReadText, BothWaysThroughTheReaderAgree) {
  std::mt19937 random(3);
  for (int i = 0; i < 20000; ++i) {
    std::string typed = std::to_string(std::uniform_int_distribution<int>(0, 99999)(random));
    if (i % 2 != 0)
      typed = fmt::format("{}.{}", typed, std::uniform_int_distribution<int>(0, 99999)(random));
    const Kind kind = kinds[static_cast<std::size_t>(i) % 6];
    const Quantity a = read(typed, {kind});
    const Quantity b = read(fmt::format(" {}", typed), {kind});
    ASSERT_EQ(a.status, b.status) << typed;
    ASSERT_EQ(a.reason, b.reason) << typed;
    ASSERT_EQ(a.resolution, b.resolution) << typed;
    ASSERT_TRUE(a.si == b.si || (std::isnan(a.si) && std::isnan(b.si))) << typed;
    ASSERT_TRUE(a.written == b.written || std::isnan(a.written)) << typed;
  }
}

TEST(ReadText, SpacesAndCapitalsDoNotMatter) {
  for (const auto& line : testing::reader_lines("legal.tsv")) {
    const auto kind = kind_named(line.kind);
    ASSERT_TRUE(kind.has_value());
    const ReadOptions options{*kind, line.assume.empty() ? Unit::none : *unit_named(line.assume)};
    std::string upper = fmt::format("  {}\t", line.text);
    for (char& c : upper)
      c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    const Quantity a = read(std::string_view{line.text}, options);
    const Quantity b = read(std::string_view{upper}, options);
    EXPECT_EQ(a.status, b.status) << line.text;
    EXPECT_TRUE(a.si == b.si || (std::isnan(a.si) && std::isnan(b.si))) << line.text;
    EXPECT_EQ(a.unit, b.unit) << line.text;
  }
}

} // namespace
} // namespace wetspell
