// Every function that reads cells, against everything a cell can hold. What must come out is written here, by
// hand, from the rule: blank stays blank, wrong input is an error value, and nothing becomes a number
// unnoticed.

#include "functions/sheet_answers.hpp"

#include "engine/function/example_sheet.hpp"
#include "harness/host.hpp"

#include <boost/algorithm/string/replace.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/XMergeable.hpp>

namespace wetspell::host {
namespace {

struct Input {
  const char* formula; ///< @ stands for the cell under test; B1 holds 2, B2 is blank
  const char* number;  ///< answer to 12
  const char* text;    ///< what is typed as text
  const char* of_text; ///< answer to it
};

// 12 in lies in (6, 12]; 30.48 cm are 12 in; 10 °C are 50 °F (NIST SP 811); pi / 4 * 12 * 2 = 18.8496; the
// edge of the ellipse on 12 and 2 is 24.9001, by the trapezoid rule on its parametric form with 4000 steps.
constexpr Input inputs[] = {
    {"=POOL.MEANOFTHREE(@)", "12", "10 °C", "50"},
    {"=POOL.MEANOFTHREE(@:@)", "12", "10 °C", "50"},
    {"=POOL.DEPTHCLASS(@)", "over 6 to 12 in", "30.48 cm", "over 6 to 12 in"},
    {"=POOL.DEPTHCLASS(@:@)", "over 6 to 12 in", "1 ft", "over 6 to 12 in"},
    {"=POOL.FILLCLASS(@)", "0 to 24 %", "60 %", "50 to 74 %"},
    {"=POOL.PACE(B1;@)", "0.166667", "8", "0.25"},
    {"=POOL.PACEDLENGTH(@;B1)", "24", "4 yd", "12"},
    {"=POOL.ELLIPSEAREA(@;B1)", "18.8496", "4 yd", "18.8496"},
    {"=POOL.PACE(24;@)", "2", "8", "3"},
    {"=POOL.ELLIPSEEDGE(@;B1)", "24.9001", "12 ft", "24.9001"},
    {"=POOL.READ(@;\"depth\")", "12", "about 1 ft", "12"},
};

class Inputs : public HostTest {
protected:
  std::string answer(const char* formula) {
    return answerTo(boost::replace_all_copy(std::string(formula), "@", "A1"));
  }
  std::string answerTo(const std::string& formula) {
    document.setFormula("H1", formula);
    return answers(document, "H1");
  }
};

TEST_F(Inputs, NumbersAndTexts) {
  document.setValue("B1", 2);
  for (const Input& input : inputs) {
    document.setValue("A1", 12);
    std::string found = answer(input.formula);
    EXPECT_TRUE(test::agrees(input.number, found)) << input.formula << " of 12 gives " << found;
    document.setText("A1", input.text);
    found = answer(input.formula);
    EXPECT_TRUE(test::agrees(input.of_text, found)) << input.formula << " of " << input.text << ": " << found;
  }
}

TEST_F(Inputs, BlankStaysBlank) {
  document.setValue("B1", 2);
  for (const Input& input : inputs) {
    document.setText("A1", "");
    EXPECT_EQ(answer(input.formula), "") << input.formula;
    document.setFormula("A1", "=\"\"");
    EXPECT_EQ(answer(input.formula), "") << input.formula << " of a formula that gives nothing";
    document.setText("A1", "not measured");
    EXPECT_EQ(answer(input.formula), std::string(input.formula).starts_with("=POOL.DEPTH") ||
                                             std::string(input.formula).starts_with("=POOL.FILL")
                                         ? "not known"
                                         : "")
        << input.formula;
  }
}

TEST_F(Inputs, WhatCannotBeMeantIsRefused) {
  document.setValue("B1", 2);
  for (const Input& input : inputs) {
    document.setText("A1", "warmish");
    EXPECT_EQ(answer(input.formula), "Err:502") << input.formula;
    document.setFormula("A1", "=1/0");
    EXPECT_EQ(answer(input.formula), "Err:502") << input.formula << " of an error";
    document.type("A1", "3/15/2024");
    EXPECT_EQ(answer(input.formula), "Err:502") << input.formula << " of a date";
  }
}

TEST_F(Inputs, OnlyCellsAreReadings) {
  document.setValue("A1", 12);
  document.setValue("B1", 2);
  for (const Input& input : inputs) {
    for (const char* written : {"12", "\"12 ft\"", "A1*1", "{12}"}) {
      const std::string formula = boost::replace_all_copy(std::string(input.formula), "@", written);
      if (formula.find(':') == std::string::npos) {
        EXPECT_EQ(answerTo(formula), "Err:504") << formula;
      }
    }
  }
}

TEST_F(Inputs, WhatCannotBeZeroMayStandInTheFormula) {
  document.setValue("A1", 12);
  document.setValue("B1", 2);
  EXPECT_EQ(answerTo("=POOL.PACEDLENGTH(A1;2)"), "24");
  EXPECT_EQ(answerTo("=POOL.PACEDLENGTH(A1;POOL.PACE(24;A1))"), "24");
  EXPECT_EQ(answerTo("=POOL.ELLIPSEEDGE(A1;B1*6)"), "37.699111843");
  for (const char* nothing : {"0", "B2", "\"\"", "B2:B2"}) {
    EXPECT_EQ(answerTo(fmt::format("=POOL.PACEDLENGTH(A1;{})", nothing)), "#N/A") << nothing;
    EXPECT_EQ(answerTo(fmt::format("=POOL.ELLIPSEAREA(A1;{})", nothing)), "") << nothing;
    EXPECT_EQ(answerTo(fmt::format("=POOL.PACE({};A1)", nothing)), "#N/A") << nothing;
  }
  document.type("C1", "3/15/2024");
  document.setFormula("D1", "=1/0");
  for (const char* formula : {"=POOL.PACEDLENGTH(A1;@)", "=POOL.ELLIPSEAREA(A1;@)", "=POOL.PACE(@;A1)"}) {
    EXPECT_EQ(answerTo(boost::replace_all_copy(std::string(formula), "@", "C1")), "Err:502") << formula;
    EXPECT_EQ(answerTo(boost::replace_all_copy(std::string(formula), "@", "D1")), "#DIV/0!") << formula;
    EXPECT_EQ(answerTo(boost::replace_all_copy(std::string(formula), "@", "\"far\"")), "Err:502") << formula;
  }
}

TEST_F(Inputs, ADryPoolHasNoArea) {
  document.setValue("A1", 0);
  EXPECT_EQ(answerTo("=POOL.ELLIPSEAREA(A1;A1)"), "0");
  EXPECT_EQ(answerTo("=POOL.ELLIPSEEDGE(A1;A1)"), "0");
}

TEST_F(Inputs, TooManyOrTooFewArguments) {
  document.setValue("A1", 12);
  EXPECT_EQ(answerTo("=POOL.MEANOFTHREE(A1;\"°F\";\"°F\";1)"), "Err:504");
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1;\"in\";A1:C2;1)"), "Err:504");
  EXPECT_EQ(answerTo("=POOL.VERSION(1)"), "Err:504");
  for (const char* formula :
       {"=POOL.DEPTHCLASS()", "=POOL.ELLIPSEAREA(A1)", "=POOL.READ(A1)", "=POOL.ASIF()"}) {
    EXPECT_EQ(answerTo(formula).substr(0, 4), "Err:") << formula;
  }
}

TEST_F(Inputs, OptionsMayBeLeftOutOrBlank) {
  document.setValue("A1", 12);
  for (const char* formula :
       {"=POOL.DEPTHCLASS(A1)", "=POOL.DEPTHCLASS(A1;)", "=POOL.DEPTHCLASS(A1;;)", "=POOL.DEPTHCLASS(A1;B2)",
        "=POOL.DEPTHCLASS(A1;B2;B2)", "=POOL.DEPTHCLASS(A1;\"\")"}) {
    EXPECT_EQ(answerTo(formula), "over 6 to 12 in") << formula;
  }
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1;\"°F\")"), "Err:502");
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1;7)"), "Err:502");
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1;1/0)"), "#DIV/0!") << "Calc hands on an option's error";
}

TEST_F(Inputs, ABlankAmongReadingsIsLeftOutAndAnErrorIsNot) {
  document.setValue("A1", 60);
  document.setValue("C1", 63);
  EXPECT_EQ(answerTo("=POOL.MEANOFTHREE(A1:C1)"), "61.5");
  EXPECT_EQ(answerTo("=POOL.SPREAD(A1:C1)"), "3");
  document.setFormula("B1", "=NA()");
  EXPECT_EQ(answerTo("=POOL.MEANOFTHREE(A1:C1)"), "Err:502");
  document.setText("B1", "0 °C");
  EXPECT_TRUE(test::agrees("51.6667", answerTo("=POOL.MEANOFTHREE(A1:C1)")));
  EXPECT_EQ(answerTo("=POOL.MEANOFTHREE(A1:D1)"), "Err:502") << "four cells";
}

TEST_F(Inputs, ARangeIsAnsweredCellByCell) {
  document.setValue("A1", 12);
  document.setText("A3", "warmish");
  document.setText("A4", "13 in");
  putArray(document, "H1:H4", "=POOL.DEPTHCLASS(A1:A4)");
  EXPECT_EQ(answers(document, "H1:H4"), "over 6 to 12 in //  // Err:502 // over 12 to 24 in");
  document.setValue("B1", 2);
  document.setValue("B2", 2);
  document.setValue("A2", 0);
  putArray(document, "I1:I2", "=POOL.PACEDLENGTH(A1:A2;B1:B2)");
  EXPECT_EQ(answers(document, "I1:I2"), "24 // 0");
  document.setText("B2", "");
  EXPECT_EQ(answers(document, "I1:I2"), "24 // #N/A");
  EXPECT_EQ(answerTo("=POOL.PACEDLENGTH(A1:A3;B1:B2)"), "Err:502") << "ranges of two sizes";
}

TEST_F(Inputs, AShareShownInPerCentIsReadAsItLooks) {
  document.type("A1", "75%");
  EXPECT_EQ(answerTo("=POOL.FILLCLASS(A1)"), "75 to 100 %");
  document.type("A1", "24.5%");
  EXPECT_EQ(answerTo("=POOL.FILLCLASS(A1)"), "0 to 24 %");
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1)"), "Err:502");
}

TEST_F(Inputs, MergedHiddenAndFilteredCellsAreReadLikeOthers) {
  document.setValue("A1", 12);
  document.setValue("A2", 30);
  const css::uno::Reference<css::util::XMergeable> merged(document.range("A1:B1"), css::uno::UNO_QUERY_THROW);
  merged->merge(true);
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1)"), "over 6 to 12 in");
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(B1)"), "") << "the covered part of a merged cell is blank";
  const css::uno::Reference<css::table::XColumnRowRange> rows(document.range("A2"),
                                                              css::uno::UNO_QUERY_THROW);
  css::uno::Reference<css::beans::XPropertySet> row(rows->getRows()->getByIndex(0),
                                                    css::uno::UNO_QUERY_THROW);
  row->setPropertyValue("IsVisible", css::uno::Any(false));
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A2)"), "over 24 to 36 in");
  row->setPropertyValue("IsVisible", css::uno::Any(true));
  row->setPropertyValue("IsFiltered", css::uno::Any(true));
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A2)"), "over 24 to 36 in");
}

TEST_F(Inputs, AnswersFollowTheirCells) {
  document.setFormula("H1", "=POOL.DEPTHCLASS(A1)");
  document.setFormula("H2", "=POOL.WHY(H1)");
  EXPECT_EQ(answers(document, "H1"), "");
  document.setText("A1", "hot");
  EXPECT_EQ(answers(document, "H1"), "Err:502");
  EXPECT_NE(answers(document, "H2").find("\"hot\""), std::string::npos) << answers(document, "H2");
  document.setText("A1", "cold");
  EXPECT_NE(answers(document, "H2").find("\"cold\""), std::string::npos) << answers(document, "H2");
  document.setValue("A1", 5);
  EXPECT_EQ(answers(document, "H2"), "POOL.DEPTHCLASS did not refuse: it gives over 0 to 6 in.");
}

} // namespace
} // namespace wetspell::host
