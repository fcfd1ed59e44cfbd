// POOL.WHY and POOL.ASIF: the reason for a refusal in words, and values written into a formula.
#include "example_sheet.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {

namespace {

std::string why(ExampleSheet& sheet, std::string_view formula) {
  sheet.type("Z9", formula);
  return sheet.shown("POOL.WHY(Z9)");
}

} // namespace

TEST(Why, tells_of_a_value_where_a_cell_is_needed) {
  ExampleSheet sheet;
  EXPECT_EQ(
      why(sheet, "=POOL.DEPTHCLASS(25)"),
      "POOL.DEPTHCLASS: \"depth\" takes a cell and not what stands in the formula itself, 25; write it into "
      "a cell, or ask POOL.ASIF.");
  EXPECT_EQ(
      why(sheet, "=POOL.DEPTHCLASS(A1*2.54)"),
      "POOL.DEPTHCLASS: \"depth\" takes a cell and not what stands in the formula itself, A1*2.54; write it "
      "into a cell, or ask POOL.ASIF.");
}

TEST(Why, says_where_it_cannot_look) {
  ExampleSheet sheet;
  sheet.type("A1", "25");
  EXPECT_EQ(
      why(sheet, "=POOL.DEPTHCLASS(A1;IF(B1>0;\"cm\";\"in\"))"),
      "POOL.DEPTHCLASS: \"unit\" is worked out inside the formula (IF(B1>0;\"cm\";\"in\")), where nobody can "
      "look; put that part into a cell of its own.");
  EXPECT_EQ(
      why(sheet, "=POOL.DEPTHCLASS(somewhere)"),
      "POOL.DEPTHCLASS: \"depth\" leads to somewhere, which is not a range of cells that can be looked up "
      "from here.");
}

TEST(Why, names_the_call_that_refuses_among_several) {
  ExampleSheet sheet;
  sheet.type("A1", "25");
  sheet.type("B1", "24-26 yd");
  EXPECT_EQ(why(sheet, "=IF(POOL.DEPTHCLASS(A1)=\"\";\"\";POOL.READ(B1;\"length\"))"),
            "POOL.READ: \"typed\" reads \"24-26 yd\": between two numbers, where one is needed.");
}

TEST(Why, tells_blank_from_nothing_to_explain) {
  ExampleSheet sheet;
  EXPECT_EQ(why(sheet, "=POOL.DEPTHCLASS(A1)"),
            "POOL.DEPTHCLASS did not refuse: it gives a blank, because there was nothing to work with.");
  EXPECT_EQ(why(sheet, "=SUM(A1:A3)"), "No POOL function stands in that cell: =SUM(A1:A3)");
  sheet.type("A1", "25");
  sheet.type("A2", "much");
  EXPECT_EQ(why(sheet, "=POOL.DEPTHCLASS(A1:A2)"),
            "POOL.DEPTHCLASS refused 1 of 2 cells; ask about one of them.");
}

TEST(Why, takes_one_cell) {
  const ExampleSheet sheet;
  const auto value = sheet.evaluate("POOL.WHY(A1:A2)");
  ASSERT_FALSE(value);
  EXPECT_EQ(value.error().text, "POOL.WHY: \"cell\" must be one cell, got 2 by 1 cells.");
}

TEST(AsIf, refuses_a_zero_that_may_be_a_blank) {
  ExampleSheet sheet;
  const auto zero = sheet.evaluate("POOL.ASIF(\"DEPTHCLASS\";0)");
  ASSERT_FALSE(zero);
  EXPECT_EQ(
      zero.error().text,
      "POOL.ASIF: \"depth\" is a bare 0, and a blank cell looks the same here; write the zero with its unit "
      "in quotes, such as \"0 in\", or point POOL.DEPTHCLASS to the cell.");
  EXPECT_EQ(sheet.shown("POOL.ASIF(\"DEPTHCLASS\";B1)"), "Err:502"); // a blank cell, as Calc hands it over
  EXPECT_EQ(sheet.shown("POOL.ASIF(\"DEPTHCLASS\";\"\")"), "");
}

TEST(AsIf, takes_the_names_of_functions_that_work_on_values) {
  ExampleSheet sheet;
  sheet.type("A1", "62");
  sheet.type("B1", "63");
  EXPECT_EQ(sheet.shown("POOL.ASIF(\"pool.meanOfThree\";A1:B1)"), "62.5");
  for (const std::string_view name : {"DERIVE", "DOUBTS", "WHY", "ASIF", "VERSION", "SUM"}) {
    const auto value = sheet.evaluate("POOL.ASIF(\"" + std::string(name) + "\";1)");
    ASSERT_FALSE(value) << name;
    EXPECT_NE(value.error().text.find("\"function\" must be one of these"), std::string::npos);
  }
}

} // namespace wetspell::test
