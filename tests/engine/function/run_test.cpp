// The runner: what it checks before a function sees its arguments, and how it walks over ranges.
#include "example_sheet.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {

namespace {

std::string words(const ExampleSheet& sheet, std::string_view formula) {
  const auto value = sheet.evaluate(formula);
  return value ? "no refusal" : value.error().text;
}

} // namespace

TEST(Run, refuses_what_is_missing_or_too_much) {
  const FunctionSpec& function = *function_named("POOL.ELLIPSEAREA");
  const std::vector<Argument> one{Argument::of(Cell::of_number(20))};
  const auto missing = run(function, one);
  ASSERT_FALSE(missing);
  EXPECT_EQ(missing.error().text, "POOL.ELLIPSEAREA: \"width\" is missing: Greatest width across that line: "
                                  "a cell, a number or a formula.");
  const std::vector<Argument> five(5, Argument::of(Cell::of_number(20)));
  const auto many = run(function, five);
  ASSERT_FALSE(many);
  EXPECT_EQ(many.error().text, "POOL.ELLIPSEAREA: takes at most 4 arguments, got 5.");
}

TEST(Run, names_function_argument_and_what_was_read) {
  ExampleSheet sheet;
  sheet.type("A1", "25");
  EXPECT_EQ(words(sheet, "POOL.DEPTHCLASS(A1;\"°F\")"),
            "POOL.DEPTHCLASS: \"unit\" must be a unit of depth (in, cm, ft, m), got \"°F\".");
  EXPECT_EQ(words(sheet, "POOL.DEPTHCLASS(A1;3)"),
            "POOL.DEPTHCLASS: \"unit\" must be a unit of depth (in, cm, ft, m), got \"3\".");
  EXPECT_EQ(words(sheet, "POOL.DEPTHCLASS(A1;\"in\";\"a word\")"),
            "POOL.DEPTHCLASS: \"classes\" must be a range of cells: Depth classes of your own, in inches: "
            "three columns with label, over, up to.");
  EXPECT_EQ(words(sheet, "POOL.DEPTHCLASS(A1;A1:B2)"),
            "POOL.DEPTHCLASS: \"unit\" must be one cell, got 2 by 2 cells.");
  EXPECT_EQ(words(sheet, "POOL.READ(A1;\"colour\")"),
            "POOL.READ: \"kind\" must be one of these: temperature, depth, length, area, volume, percent, "
            "count, date, "
            "time, truth; got \"colour\".");
  EXPECT_EQ(words(sheet, "POOL.PACEDLENGTH(A1;A1;\"hops\")"),
            "POOL.PACEDLENGTH: \"counted\" must be one of these: paces, steps; got \"hops\".");
}

TEST(Run, an_error_in_a_cell_is_refused_by_its_name) {
  ExampleSheet sheet;
  sheet.put("A1", Cell::of_error("#DIV/0!"));
  sheet.type("B1", "12");
  for (const std::string_view formula :
       {"POOL.DEPTHCLASS(A1)", "POOL.FILLCLASS(A1)", "POOL.MEANOFTHREE(A1:B1)", "POOL.SPREAD(A1:B1)",
        "POOL.PACE(A1;B1)", "POOL.PACE(B1;A1)", "POOL.PACEDLENGTH(A1;B1)", "POOL.PACEDLENGTH(B1;A1)",
        "POOL.ELLIPSEAREA(A1;B1)", "POOL.ELLIPSEEDGE(B1;A1)", "POOL.READ(A1;\"depth\")",
        "POOL.DEPTHCLASS(B1;A1)"}) {
    const auto value = sheet.evaluate(formula);
    ASSERT_FALSE(value) << formula;
    EXPECT_EQ(value.error().kind, ProblemKind::bad_argument) << formula;
    EXPECT_NE(value.error().text.find("shows the error #DIV/0!"), std::string::npos) << value.error().text;
  }
}

TEST(Run, a_blank_is_blank_and_never_zero) {
  const ExampleSheet sheet;
  for (const std::string_view formula :
       {"POOL.DEPTHCLASS(A1)", "POOL.FILLCLASS(A1)", "POOL.MEANOFTHREE(A1)", "POOL.MEANOFTHREE(A1:C1)",
        "POOL.SPREAD(A1:C1)", "POOL.PACE(A1;B1)", "POOL.PACEDLENGTH(A1;B1)", "POOL.ELLIPSEAREA(A1;B1)",
        "POOL.ELLIPSEEDGE(A1;B1)", "POOL.READ(A1;\"depth\")", "POOL.WHY(A1)"}) {
    EXPECT_EQ(sheet.shown(formula), "") << formula;
  }
}

TEST(Run, a_blank_option_is_an_option_left_out) {
  ExampleSheet sheet;
  sheet.type("A1", "25");
  EXPECT_EQ(sheet.shown("POOL.DEPTHCLASS(A1;B1;C1)"), "over 24 to 36 in");
  EXPECT_EQ(sheet.shown("POOL.DEPTHCLASS(A1;;)"), "over 24 to 36 in");
  EXPECT_EQ(sheet.shown("POOL.READ(A1;\"depth\";B1;\"cm\")"), "63.5");
}

TEST(Run, what_cannot_be_zero_takes_zero_for_blank_and_no_dates) {
  ExampleSheet sheet;
  sheet.type("A1", "12");
  EXPECT_EQ(sheet.shown("POOL.PACEDLENGTH(A1;2)"), "24");
  EXPECT_EQ(sheet.shown("POOL.PACEDLENGTH(A1;0)"), "#N/A");
  EXPECT_EQ(sheet.shown("POOL.PACEDLENGTH(A1;B1)"), "#N/A");
  EXPECT_EQ(sheet.shown("POOL.ELLIPSEAREA(A1;B1)"), "");
  EXPECT_EQ(
      words(sheet, "POOL.PACEDLENGTH(A1;45366)"),
      "POOL.PACEDLENGTH: \"pace\" reads \"45366\"; it must be below 20000, and so large a number may be a "
      "date.");
  sheet.type("A1", "0");
  EXPECT_EQ(sheet.shown("POOL.ELLIPSEAREA(A1;B1)"), "0");
}

TEST(Run, answers_cell_by_cell_over_a_range) {
  ExampleSheet sheet;
  sheet.type("A1", "25");
  sheet.type("B1", "");
  sheet.type("A2", "0");
  sheet.type("B2", "warm");
  EXPECT_EQ(sheet.shown("POOL.DEPTHCLASS(A1:B2)"), "over 24 to 36 in |  // no standing water | Err:502");
}

TEST(Run, walks_two_ranges_together_or_one_along_a_cell) {
  ExampleSheet sheet;
  sheet.type("A1", "20");
  sheet.type("A2", "40");
  sheet.type("B1", "10");
  sheet.type("B2", "20");
  EXPECT_TRUE(agrees("48.442 // 96.884", sheet.shown("POOL.ELLIPSEEDGE(A1:A2;B1:B2)")));
  EXPECT_EQ(sheet.shown("POOL.PACEDLENGTH(A1:A2;B1)"), "200 // 400");
  sheet.type("C1", "1");
  EXPECT_EQ(
      words(sheet, "POOL.ELLIPSEAREA(A1:A2;A1:C1)"),
      "POOL.ELLIPSEAREA: \"length\" has 2 by 1 cells and \"width\" 1 by 3: ranges must be of one size, or "
      "one of them a single cell.");
}

TEST(Run, takes_both_sides_of_every_class_limit_in_both_unit_systems) {
  // Common practice, no source: a depth on a limit belongs to the shallower class.
  const struct {
    double inches;
    std::string_view on, over;
  } limits[] = {{6, "over 0 to 6 in", "over 6 to 12 in"},
                {12, "over 6 to 12 in", "over 12 to 24 in"},
                {24, "over 12 to 24 in", "over 24 to 36 in"},
                {36, "over 24 to 36 in", "over 36 to 48 in"},
                {48, "over 36 to 48 in", "over 48 in"}};
  ExampleSheet sheet;
  for (const auto& limit : limits) {
    sheet.put("A1", Cell::of_number(limit.inches));
    EXPECT_EQ(sheet.shown("POOL.DEPTHCLASS(A1)"), limit.on);
    sheet.put("A1", Cell::of_number(limit.inches + 0.01));
    EXPECT_EQ(sheet.shown("POOL.DEPTHCLASS(A1)"), limit.over);
    sheet.type("A1", std::to_string(limit.inches * 2.54).substr(0, 6));
    EXPECT_EQ(sheet.shown("POOL.DEPTHCLASS(A1;\"cm\")"), limit.on);
    sheet.put("A1", Cell::of_number(limit.inches * 2.54 + 0.01));
    EXPECT_EQ(sheet.shown("POOL.DEPTHCLASS(A1;\"cm\")"), limit.over);
  }
}

} // namespace wetspell::test
