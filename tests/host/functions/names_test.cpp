// Names in files: a season that is stored and opened again works, in every format, and the file holds the
// names that were frozen.

#include "functions/sheet_answers.hpp"

#include "driver/files.hpp"
#include "harness/host.hpp"
#include "text_of.hpp"

#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using ::testing::HasSubstr;

class Names : public HostTest {
protected:
  void SetUp() override {
    document.setValue("A1", 25);
    document.setText("A2", "2' 1 1/2\"");
    document.setValue("A3", 20);
    document.setValue("A4", 10);
    document.setText("A5", "62 °F");
    document.setFormula("H1", "=POOL.DEPTHCLASS(A1)");
    document.setFormula("H2", "=POOL.READ(A2;\"depth\")");
    document.setFormula("H3", "=IF(POOL.ELLIPSEAREA(A3;A4)>157;\"large\";\"small\")");
    document.setFormula("H4", "=POOL.DEPTHCLASS(A5)");
    document.setFormula("H5", "=POOL.WHY(H4)");
    document.setFormula("H6", "=POOL.ASIF(\"DEPTHCLASS\";25)");
  }
  static constexpr const char* expected =
      "over 24 to 36 in // 25.5 // large // Err:502 // POOL.DEPTHCLASS: \"depth\" reads \"62 °F\", which is "
      "no "
      "depth: a temperature where a depth is expected. // over 24 to 36 in";
};

TEST_F(Names, WorkAfterStoringAndOpening) {
  EXPECT_EQ(answers(document, "H1:H6"), expected);
  for (const char* ending : {".ods", ".fods", ".xlsx"}) {
    const driver::Document again = reopened(document, ending);
    again.setValue("A1", 7);
    again.recalculate();
    EXPECT_EQ(answers(again, "H1"), "over 6 to 12 in") << ending << ": the formula lives";
    again.setValue("A1", 25);
    again.recalculate();
    EXPECT_EQ(answers(again, "H1:H6"), expected) << ending;
  }
}

TEST_F(Names, InFilesAreTheFrozenOnes) {
  const driver::TemporaryFolder folder("wetspell-test-");
  document.store(folder.path() / "stored.fods");
  const std::string text = test::text_of(folder.path() / "stored.fods");
  EXPECT_THAT(text, HasSubstr("ORG.WETSPELL.POOL.DEPTHCLASS([.A1])"));
  EXPECT_THAT(text, HasSubstr("ORG.WETSPELL.POOL.READ([.A2];&quot;depth&quot;)"));
}

TEST_F(Names, MayBeTypedInAnyCapitals) {
  document.setFormula("I1", "=pool.DepthClass(A1)");
  EXPECT_EQ(answers(document, "I1"), "over 24 to 36 in");
}

} // namespace
} // namespace wetspell::host
