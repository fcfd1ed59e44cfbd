// POOL.WHY finds what a formula points to: other sheets, names, whole functions around it.

#include "functions/sheet_answers.hpp"

#include "harness/host.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/table/CellAddress.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using ::testing::HasSubstr;

class Why : public HostTest {
protected:
  std::string why(const std::string& formula) {
    document.setFormula("H1", formula);
    document.setFormula("H2", "=POOL.WHY(H1)");
    return answers(document, "H2");
  }
};

TEST_F(Why, LooksAtOtherSheets) {
  document.model()->getSheets()->insertNewByName("My notes", 1);
  document.setText("My notes.B2", "62 °F");
  EXPECT_THAT(why("=POOL.DEPTHCLASS($'My notes'.B2)"), HasSubstr("\"62 °F\", which is no depth"));
  document.setText("My notes.B2", "62 in");
  EXPECT_EQ(why("=POOL.DEPTHCLASS($'My notes'.B2)"), "POOL.DEPTHCLASS did not refuse: it gives over 48 in.");
}

TEST_F(Why, FollowsNames) {
  document.setText("A1", "yes");
  css::uno::Reference<css::sheet::XNamedRanges> names;
  css::uno::Reference<css::beans::XPropertySet>(document.model(), css::uno::UNO_QUERY_THROW)
      ->getPropertyValue("NamedRanges") >>= names;
  names->addNewByName("deepest", addin::toOffice("$" + document.sheetNames().front() + ".$A$1"),
                      css::table::CellAddress(), 0);
  EXPECT_THAT(why("=POOL.DEPTHCLASS(deepest)"), HasSubstr("\"depth\" reads \"yes\""));
}

TEST_F(Why, TellsOfValuesInTheFormulaAndOfWhatItCannotSee) {
  EXPECT_THAT(why("=POOL.DEPTHCLASS(25)"),
              HasSubstr("takes a cell and not what stands in the formula itself"));
  document.setValue("A1", 25);
  EXPECT_THAT(why("=POOL.DEPTHCLASS(A1;IF(A1>3;\"cm\";\"in\"))"), HasSubstr("where nobody can look"));
  EXPECT_EQ(why("=SUM(A1;2)"), "No POOL function stands in that cell: =SUM(A1;2)");
}

TEST_F(Why, LooksIntoArrayFormulas) {
  document.setText("A1", "25");
  document.setText("A2", "warm");
  putArray(document, "C1:C2", "=POOL.DEPTHCLASS(A1:A2)");
  document.setFormula("H2", "=POOL.WHY(C2)");
  EXPECT_EQ(answers(document, "H2"), "POOL.DEPTHCLASS refused 1 of 2 cells; ask about one of them.");
}

TEST_F(Why, ReasonsStayWhenStored) {
  document.setText("A1", "62 °F");
  const std::string before = why("=POOL.DEPTHCLASS(A1)");
  EXPECT_EQ(answers(reopened(document, ".ods"), "H2"), before);
}

} // namespace
} // namespace wetspell::host
