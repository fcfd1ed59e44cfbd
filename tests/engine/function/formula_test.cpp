// Formulas as the office gives them, taken apart.
#include "example_sheet.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {

TEST(Formula, finds_calls_by_both_names_whatever_the_capitals) {
  for (const std::string_view formula :
       {"=POOL.DEPTHCLASS(A1)", "=ORG.WETSPELL.POOL.DEPTHCLASS(A1)", "=org.wetspell.pool.depthclass(A1)",
        "{=ORG.WETSPELL.POOL.DEPTHCLASS(A1)}"}) {
    const auto calls = calls_in(formula);
    ASSERT_EQ(calls.size(), 1U) << formula;
    EXPECT_EQ(calls[0].function->name, "POOL.DEPTHCLASS");
    ASSERT_EQ(calls[0].arguments.size(), 1U);
    EXPECT_EQ(calls[0].arguments[0].form, Written::reference);
    EXPECT_EQ(calls[0].arguments[0].text, "A1");
  }
}

TEST(Formula, tells_the_forms_of_arguments_apart) {
  const auto calls =
      calls_in(R"(=POOL.ASIF("say ""so"""; -2.5 ;;$'A; (b)'.$A$1:$B2;A1*2;{1;2};my_range;TRUE()))");
  ASSERT_EQ(calls.size(), 1U);
  const auto& a = calls[0].arguments;
  ASSERT_EQ(a.size(), 8U);
  EXPECT_EQ(a[0].form, Written::text);
  EXPECT_EQ(a[0].text, "say \"so\"");
  EXPECT_EQ(a[1].form, Written::number);
  EXPECT_EQ(a[1].number, -2.5);
  EXPECT_EQ(a[2].form, Written::left_out);
  EXPECT_EQ(a[3].form, Written::reference);
  EXPECT_EQ(a[3].text, "$'A; (b)'.$A$1:$B2");
  EXPECT_EQ(a[4].form, Written::expression);
  EXPECT_EQ(a[5].form, Written::expression);
  EXPECT_EQ(a[6].form, Written::reference);
  EXPECT_EQ(a[7].form, Written::expression);
}

TEST(Formula, finds_calls_inside_other_functions_but_not_in_texts) {
  const auto calls = calls_in(R"(=IF(A1="POOL.PACE(";"";POOL.READ(B1;"depth")+POOL.SPREAD(C1:D1)))");
  ASSERT_EQ(calls.size(), 2U);
  EXPECT_EQ(calls[0].function->name, "POOL.READ");
  EXPECT_EQ(calls[1].function->name, "POOL.SPREAD");
  EXPECT_TRUE(calls_in("=SUM(A1:A3)").empty());
  EXPECT_TRUE(calls_in("=READ(A1)").empty());
  EXPECT_TRUE(calls_in("").empty());
}

TEST(Formula, unfinished_text_does_not_run_over_the_end) {
  for (const std::string_view formula :
       {"=POOL.READ(\"", "=POOL.READ('", "=POOL.READ(A1;", "=POOL.READ(", "="}) {
    EXPECT_LE(calls_in(formula).size(), 1U) << formula;
  }
}

} // namespace wetspell::test
