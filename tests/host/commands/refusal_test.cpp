// What cannot be done is refused in words, before anything is changed.

#include "commands/season_in_office.hpp"

#include "driver/files.hpp"

#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::AllOf;
using ::testing::HasSubstr;

class Refused : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};

  /// The words of the refusal; the test fails when anything was changed nevertheless.
  template <class Call> std::string unchanged(Call call) const {
    const std::string before = snapshot(document, "");
    const auto steps = document.undoTitles();
    const std::string words = refusal(call);
    EXPECT_TRUE(same(snapshot(document, ""), before));
    EXPECT_EQ(document.undoTitles(), steps);
    return words;
  }
};

TEST_F(Refused, WritingToAProtectedFindingsSheet) {
  protect(document, "Findings");
  const auto words = AllOf(HasSubstr("findings sheet is protected"), HasSubstr("nothing was"));
  EXPECT_THAT(unchanged([&] { desk.check(); }), words);
  EXPECT_THAT(unchanged([&] { desk.clear(); }), words);
  EXPECT_THAT(unchanged([&] { desk.applyAll("fix"); }), words);
  EXPECT_EQ(desk.open("fix"), 6) << "looking is allowed";
}

TEST_F(Refused, ReplacingInAProtectedVisitsSheet) {
  desk.check();
  protect(document, "Visits");
  const auto words = AllOf(HasSubstr("protected"), HasSubstr("nothing was changed"), HasSubstr("Visits."));
  EXPECT_THAT(unchanged([&] { desk.applyAll("fix"); }), words);
  EXPECT_THAT(unchanged([&] { desk.apply(desk.finding("wrong-year").at("key")); }), words);
  EXPECT_THAT(unchanged([&] { desk.makeRoom(10); }),
              AllOf(HasSubstr("'Visits' is protected"), HasSubstr("nothing was changed")));
}

TEST_F(Refused, AStrayCellFarOutIsNamedInsteadOfFillingTheMemory) {
  document.setValue("Visits.AMJ1048576", 1);
  EXPECT_THAT(refusal([&] { desk.check(); }),
              AllOf(HasSubstr("'Visits'"), HasSubstr("AMJ1048576"), HasSubstr("Delete")));
}

TEST_F(Refused, CheckingIsNotWhenOnlyTheVisitsAreProtected) {
  protect(document, "Visits");
  desk.check();
  EXPECT_EQ(only(rowsOnSheet(document), "wrong-year").at("where"), at(Field::visit_date, 2));
}

TEST_F(Refused, MakingNoOrTooMuchRoom) {
  EXPECT_THAT(unchanged([&] { desk.makeRoom(0); }), HasSubstr("between 1 and 1048575"));
  EXPECT_THAT(unchanged([&] { desk.makeRoom(-5); }), HasSubstr("between 1 and 1048575"));
  EXPECT_THAT(unchanged([&] { desk.makeRoom(1048575); }), HasSubstr("no room for 1048575 more"));
}

TEST_F(Refused, AReadOnlyDocument) {
  const Document reading = opened(smallSeason(), office(), {.readOnly = true});
  const Desk on(reading);
  const auto words = HasSubstr("open for reading only; nothing was changed");
  const std::string before = snapshot(reading, "");
  EXPECT_THAT(refusal([&] { on.check(); }), words);
  EXPECT_THAT(refusal([&] { on.clear(); }), words);
  EXPECT_THAT(refusal([&] { on.makeRoom(5); }), words);
  EXPECT_THAT(refusal([&] { on.applyAll("fix"); }), words);
  EXPECT_TRUE(same(snapshot(reading, ""), before));
  EXPECT_EQ(on.open("fix"), 6) << "looking is allowed";
}

TEST(RefusedDocument, ASpreadsheetThatIsNoSeason) {
  const Document document = Document::create(office());
  document.setText("A1", "Shopping");
  document.setValue("B1", 12);
  const Desk desk(document);
  EXPECT_THAT(refusal([&] { desk.check(); }), HasSubstr("No table of visits was found"));
  EXPECT_THAT(refusal([&] { desk.makeRoom(5); }), HasSubstr("No table of visits was found"));
  EXPECT_EQ(document.sheetNames(), (std::vector<std::string>{"Sheet1"}));
  EXPECT_EQ(document.undoTitles().size(), 2U) << "what the test typed";
}

TEST(RefusedDocument, AnEmptySpreadsheet) {
  const Document document = Document::create(office());
  EXPECT_THAT(refusal([&] { Desk(document).check(); }), HasSubstr("No table of visits was found"));
}

TEST(RefusedDocument, AnythingElse) {
  const auto desk = office().service("org.wetspell.SeasonDesk");
  const auto refused = HasSubstr("works on spreadsheets; this document is none");
  // A chart has a document of its own, which is none of cells.
  const Document document = Document::create(office());
  const auto charts =
      Reference<css::table::XTableChartsSupplier>(document.sheet("Sheet1"), UNO_QUERY_THROW)->getCharts();
  const css::table::CellRangeAddress data(0, 0, 0, 1, 5);
  charts->addNewByName("chart", css::awt::Rectangle(0, 0, 5000, 5000), {&data, 1}, false, false);
  const Reference<css::document::XEmbeddedObjectSupplier> chart(
      Reference<css::container::XNameAccess>(charts, UNO_QUERY_THROW)->getByName("chart"), UNO_QUERY_THROW);
  const Reference<css::frame::XModel> model(chart->getEmbeddedObject(), UNO_QUERY_THROW);
  EXPECT_THAT(refusal([&] { office().call(desk, "check", {Any(model)}); }), refused);
  EXPECT_THAT(refusal([&] { office().call(desk, "check", {Any(Reference<css::frame::XModel>())}); }),
              refused);
}

} // namespace
} // namespace wetspell::host
