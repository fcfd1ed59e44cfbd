// The same functions in an office that writes a decimal comma: numbers are numbers, texts are read as people
// there type them, and nothing depends on the locale of whoever opens the file.

#include "functions/sheet_answers.hpp"

#include "engine/function/example_sheet.hpp"
#include "harness/host.hpp"

namespace wetspell::host {
namespace {

class DecimalComma : public ::testing::Test {
protected:
  static void SetUpTestSuite() { office_ = std::make_unique<driver::Office>(withExtension("de-DE")); }
  static void TearDownTestSuite() { office_.reset(); }

  std::string answerTo(const std::string& formula) {
    document.setFormula("H1", formula);
    return answers(document, "H1");
  }

  static std::unique_ptr<driver::Office> office_;
  driver::Document document = driver::Document::create(*office_);
};

std::unique_ptr<driver::Office> DecimalComma::office_;

TEST_F(DecimalComma, NumbersTypedThereAreNumbers) {
  document.type("A1", "25,5");
  ASSERT_EQ(document.read("A1").value, 25.5) << "the office is one with a decimal comma";
  EXPECT_EQ(answerTo("=POOL.READ(A1;\"depth\")"), "25.5");
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1)"), "over 24 to 36 in");
}

TEST_F(DecimalComma, TextsWithACommaAreRead) {
  document.type("A1", "0,64 m");
  EXPECT_TRUE(test::agrees("25.19685", answerTo("=POOL.READ(A1;\"depth\")")));
  document.setText("A1", "25,5");
  EXPECT_EQ(answerTo("=POOL.READ(A1;\"depth\")"), "25.5") << "a number kept as text";
  document.setText("A1", "25.5");
  EXPECT_EQ(answerTo("=POOL.READ(A1;\"depth\")"), "25.5") << "as written elsewhere";
}

TEST_F(DecimalComma, SharesShownInPerCentAreReadAsTheyLook) {
  document.type("A1", "74,6%");
  EXPECT_EQ(answerTo("=POOL.FILLCLASS(A1)"), "50 to 74 %");
}

TEST_F(DecimalComma, DatesAreNoReadings) {
  document.type("A1", "15.03.2024");
  ASSERT_EQ(document.read("A1").value, 45366);
  EXPECT_EQ(answerTo("=POOL.DEPTHCLASS(A1)"), "Err:502");
}

TEST_F(DecimalComma, WhySpeaksOfTheSameFormula) {
  document.setText("A1", "2,5 °C");
  document.setFormula("H2", "=POOL.DEPTHCLASS(A1;\"cm\")");
  EXPECT_EQ(answerTo("=POOL.WHY(H2)"),
            "POOL.DEPTHCLASS: \"depth\" reads \"2,5 °C\", which is no depth: a temperature where a depth is "
            "expected.");
  document.setFormula("H2", "=POOL.ASIF(\"DEPTHCLASS\";25.5)");
  EXPECT_EQ(answerTo("=POOL.WHY(H2)"), "POOL.ASIF did not refuse: it gives over 24 to 36 in.");
}

TEST_F(DecimalComma, ExamplesGiveWhatTheCatalogueStates) {
  for (const FunctionSpec& function : functions()) {
    for (const Example& example : function.examples) {
      if (example.result.find(" | ") != std::string_view::npos) {
        continue; // rectangles: tests/host/functions
      }
      const driver::Document sheet = driver::Document::create(*office_);
      for (const ExampleCell& cell : example.cells) {
        put(sheet, std::string(cell.address), std::string(cell.content));
      }
      sheet.setFormula("H20", "=" + std::string(example.formula));
      const std::string found = answers(sheet, "H20");
      EXPECT_TRUE(test::agrees(example.result, found)) << example.formula << " gives " << found;
    }
  }
}

} // namespace
} // namespace wetspell::host
