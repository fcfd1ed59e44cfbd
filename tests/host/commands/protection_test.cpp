// A workbook that its keeper has protected, in part or altogether, or has merged cells in.

#include "commands/season_in_office.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::AllOf;
using ::testing::HasSubstr;

class Protected : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};

  void protectAllBut(const std::string& open) const {
    for (const std::string& sheet : document.sheetNames())
      if (sheet != open)
        protect(document, sheet);
  }
  /// As a keeper does for the cells that volunteers may type into.
  void unlock(const std::string& cells) const {
    css::util::CellProtection protection;
    protection.IsLocked = false;
    Reference<css::beans::XPropertySet>(document.range(cells), UNO_QUERY_THROW)
        ->setPropertyValue("CellProtection", Any(protection));
  }
  static Reference<css::util::XProtectable> structure(const Document& of) {
    return {of.model(), UNO_QUERY_THROW};
  }
};

TEST_F(Protected, SheetsAreCheckedAsLongAsTheFindingsMayBeWritten) {
  const auto before = desk.findings();
  ASSERT_FALSE(before.empty());
  protectAllBut("Findings");
  structure(document)->protect("");
  const std::string others = snapshot(document);
  desk.check();
  EXPECT_EQ(rowsOnSheet(document).size(), before.size());
  EXPECT_TRUE(same(snapshot(document), others));
}

TEST_F(Protected, FindingsKeepTheirAnswersWhenNothingCanBeWritten) {
  desk.check();
  const std::string key = desk.finding("wider-than-long").at("key");
  document.setText(cellOnSheet(document, key, "Your answer"), "right as it is");
  protectAllBut("");
  const std::string before = snapshot(document, "");
  const auto words = AllOf(HasSubstr("findings sheet is protected"), HasSubstr("Take its protection off"));
  EXPECT_THAT(refusal([&] { desk.check(); }), words);
  EXPECT_THAT(refusal([&] { desk.applyAll("fix"); }),
              AllOf(HasSubstr("is protected; nothing was changed"), HasSubstr("Visits.")));
  EXPECT_THAT(refusal([&] { desk.clear(); }), words);
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.read(cellOnSheet(document, key, "Your answer")).text, "right as it is");
}

TEST_F(Protected, CellsThatMayBeTypedIntoMayBeReplaced) {
  desk.check();
  unlock(at(Field::visit_date, 0) + ":" + at(Field::visit_date, 20).substr(std::string("Visits.").size()));
  protect(document, "Visits");
  EXPECT_TRUE(desk.apply(desk.finding("wrong-year").at("key")));
  EXPECT_EQ(document.read(at(Field::visit_date, 2)).value, day(4, 20));
  EXPECT_THAT(refusal([&] { desk.apply(desk.finding("unknown-person").at("key")); }),
              AllOf(HasSubstr("protected"), HasSubstr("nothing was changed")));
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUUG");
}

TEST_F(Protected, RowsGoOnBeingWorkedOutAsSomebodyTypes) {
  unlock(at(Field::visit_pool, 0) + ":" + at(Field::visit_notes, 20).substr(std::string("Visits.").size()));
  protectAllBut("Visits");
  protect(document, "Visits");
  document.type(at(Field::visit_temperature_1, 0), "50");
  document.type(at(Field::visit_temperature_2, 0), "51");
  document.type(at(Field::visit_temperature_3, 0), "52");
  EXPECT_EQ(document.read(at(Field::visit_mean, 0)).value, 51);
  document.type(at(Field::visit_fill, 0), "140");
  EXPECT_THAT(document.read(at(Field::visit_doubts, 0)).text, HasSubstr("140%"));
  EXPECT_EQ(document.read(onVisits("A", headingRow(TableKind::visits) + 1)).text, "look again");
}

TEST_F(Protected, StructureGetsNoSheetOfFindings) {
  const Document foreign = Document::create(office());
  typeForeignSeason(foreign);
  structure(foreign)->protect("");
  const std::string before = snapshot(foreign, "");
  EXPECT_THAT(refusal([&] { Desk(foreign).check(); }),
              AllOf(HasSubstr("sheets are protected"), HasSubstr("nothing was written")));
  EXPECT_TRUE(same(snapshot(foreign, ""), before));
  structure(foreign)->unprotect("");
  Desk(foreign).check();
  EXPECT_EQ(foreign.sheetNames().back(), "Findings");
}

/// A pool's code over two of its visits: the second row's own cell is blank, whatever the eye sees.
TEST(MergedRows, AreReadAsTheCellsThatTheyAre) {
  const Document document = opened(smallSeason());
  const std::string second = at(Field::visit_pool, 5);
  ASSERT_NE(document.read(second).text, "");
  document.setText(second, "");
  const std::string digits = second.substr(std::string("Visits.B").size());
  Reference<css::util::XMergeable>(document.range(at(Field::visit_pool, 4) + ":B" + digits), UNO_QUERY_THROW)
      ->merge(true);
  const Desk desk(document);
  desk.check();
  EXPECT_EQ(only(rowsOnSheet(document), "pool-missing").at("where"), second);
  EXPECT_TRUE(desk.apply(desk.finding("wrong-year").at("key")));
}

} // namespace
} // namespace wetspell::host
