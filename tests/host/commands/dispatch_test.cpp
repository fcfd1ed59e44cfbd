// The commands of menu and toolbar, as the office dispatches them in a window.

#include "commands/season_in_office.hpp"

#include "base/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/configuration/theDefaultProvider.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/util/URLTransformer.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <gmock/gmock.h>

#include <set>

namespace wetspell::host {
namespace {

using addin::fromOffice;
using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

class Commands : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};

  void run(const std::string& name) const { document.dispatch("org.wetspell.command:" + name); }

  Reference<css::frame::XController> view() const {
    return Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW)->getCurrentController();
  }
  std::string selected() const {
    const Reference<css::sheet::XSheetCellRange> range(
        Reference<css::view::XSelectionSupplier>(view(), UNO_QUERY_THROW)->getSelection(), UNO_QUERY_THROW);
    const auto address =
        Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
    return fromOffice(
               Reference<css::container::XNamed>(range->getSpreadsheet(), UNO_QUERY_THROW)->getName()) +
           "." + column_letters(static_cast<std::size_t>(address.StartColumn)) +
           std::to_string(address.StartRow + 1);
  }
  std::string rowOf(const std::string& rule) const {
    return cellOnSheet(document, desk.finding(rule).at("key"), "Rule");
  }
};

TEST_F(Commands, CheckTurnsToTheFirstFinding) {
  run("check");
  EXPECT_FALSE(rowsOnSheet(document).empty());
  EXPECT_EQ(selected(), at(Field::finding_where, 0));
}

TEST_F(Commands, GoFromAFindingToItsCellAndBack) {
  run("check");
  for (const char* rule : {"unknown-person", "both-over-either"}) {
    const FindingRow finding = desk.finding(rule);
    select(document, rowOf(rule));
    run("goToFinding");
    EXPECT_EQ(selected(), finding.at("where"));
    run("backToFinding");
    EXPECT_EQ(selected(), cellOnSheet(document, finding.at("key"), "Where"));
  }
}

TEST_F(Commands, FindTheCellAfterRowsWereInserted) {
  run("check");
  select(document, at(Field::visit_pool, 0));
  document.dispatch(".uno:InsertRowsBefore");
  select(document, rowOf("unknown-person"));
  run("goToFinding");
  EXPECT_EQ(selected(), at(Field::visit_person, 6));
}

TEST_F(Commands, GoBackToTheFindingOfTheCellRatherThanOfItsRow) {
  run("check");
  for (const FindingRow& finding : desk.findings()) {
    select(document, finding.at("where"));
    run("backToFinding");
    EXPECT_EQ(document.read(selected()).text, finding.at("where"));
  }
}

TEST_F(Commands, SayWhenThereIsNothingToGoTo) {
  EXPECT_THAT(refusal([&] { run("goToFinding"); }), HasSubstr("Put the cursor on a finding first"));
  run("check");
  select(document, "Findings.A1");
  EXPECT_THAT(refusal([&] { run("goToFinding"); }), HasSubstr("Put the cursor on a finding first"));
  select(document, "Visits.C300");
  EXPECT_THAT(refusal([&] { run("backToFinding"); }), HasSubstr("no finding about this row"));
  select(document, rowOf("unknown-person"));
  document.setText(at(Field::visit_person, 5), "KLUG");
  EXPECT_THAT(refusal([&] { run("goToFinding"); }), HasSubstr("has changed since the check"));
}

TEST_F(Commands, ApplyTheSelectedFindings) {
  run("check");
  select(document, rowOf("wider-than-long"));
  run("applySelected");
  EXPECT_EQ(document.read(at(Field::visit_width, 1)).value, 31);
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUUG");
  const auto steps = document.undoTitles().size();
  select(document, "Findings.A" + std::to_string(headingRow(TableKind::findings) + 1) + ":M40");
  run("applySelected");
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUG");
  EXPECT_EQ(document.read(at(Field::visit_date, 2)).value, day(4, 20));
  EXPECT_EQ(document.undoTitles().size(), steps + 1);
}

TEST_F(Commands, ApplyALevel) {
  run("applyAsk");
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUUG") << "that one is of level fix";
  run("applyFix");
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUG");
}

TEST_F(Commands, MakeRoomOnTheSheetWhereTheCursorStands) {
  struct Expected {
    TableKind table;
    Field dropDown;
    std::size_t more;
  };
  for (const auto& [table, dropDown, more] : {Expected{TableKind::pools, Field::pool_permission, 100},
                                              Expected{TableKind::people, Field::person_counts, 100},
                                              Expected{TableKind::life, Field::life_seen_as, 500},
                                              Expected{TableKind::species, Field::species_seen_as, 50},
                                              Expected{TableKind::visits, Field::visit_water, 500}}) {
    const std::size_t ready = lastReadyRow(table) - headingRow(table);
    const std::string model = lookOf(document, at(dropDown, ready - 1));
    ASSERT_NE(model, lookOf(document, at(dropDown, ready + more - 1))) << spec(table).name;
    select(document, at(fields(table).front().field, 1));
    run("makeRoom");
    EXPECT_EQ(lookOf(document, at(dropDown, ready + more - 1)), model) << spec(table).name;
    EXPECT_NE(lookOf(document, at(dropDown, ready + more)), model) << spec(table).name << ": no more";
  }
  EXPECT_EQ(document.undoTitles(), std::vector<std::string>(5, "Make room for more rows"));
}

TEST_F(Commands, MakeRoomForVisitsAndClear) {
  select(document, "Limits.A1");
  run("makeRoom");
  EXPECT_THAT(document.read(onVisits("A", lastReadyRow(TableKind::visits) + 500)).formula, HasSubstr("=IF("));
  run("check");
  run("clearFindings");
  EXPECT_TRUE(rowsOnSheet(document).empty());
}

TEST_F(Commands, TellTheCallerWhatWentWrongWhenNobodyLooks) {
  const Document empty = Document::create(office());
  EXPECT_THAT(refusal([&] { empty.dispatch("org.wetspell.command:check"); }),
              HasSubstr("No table of visits was found"));
}

std::string propertyText(const Reference<css::container::XNameAccess>& node, const char* name) {
  rtl::OUString words;
  node->getByName(toOffice(name)) >>= words;
  return fromOffice(words);
}

Reference<css::container::XNameAccess> configuration(const std::string& path) {
  css::uno::Sequence<Any> arguments(1);
  arguments.getArray()[0] <<=
      css::beans::PropertyValue("nodepath", 0, Any(toOffice(path)), css::beans::PropertyState_DIRECT_VALUE);
  return {css::configuration::theDefaultProvider::get(office().context())
              ->createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", arguments),
          UNO_QUERY_THROW};
}

/// The address and the title of every entry of a menu or toolbar, in their order, without separators.
std::vector<std::pair<std::string, std::string>> entries(const Reference<css::container::XNameAccess>& of) {
  std::vector<std::pair<std::string, std::string>> all;
  for (const rtl::OUString& name : of->getElementNames()) {
    const Reference<css::container::XNameAccess> entry(of->getByName(name), UNO_QUERY_THROW);
    if (const std::string url = propertyText(entry, "URL"); url != "private:separator")
      all.emplace_back(url, propertyText(entry, "Title"));
  }
  return all;
}

class Entries : public Commands {
protected:
  bool isKnown(const std::string& address) const {
    css::util::URL url;
    url.Complete = toOffice(address);
    css::util::URLTransformer::create(office().context())->parseStrict(url);
    const Reference<css::frame::XDispatchProvider> frame(view()->getFrame(), UNO_QUERY_THROW);
    return frame->queryDispatch(url, "_self", 0).is();
  }
};

TEST_F(Entries, OfTheMenuAreAllCommands) {
  const Reference<css::container::XNameAccess> menu(
      configuration("/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/org.wetspell.menu"));
  EXPECT_EQ(propertyText(menu, "Title"), "~Wetspell");
  std::vector<std::string> names;
  std::set<std::string> titles;
  for (const auto& [url, title] :
       entries(Reference<css::container::XNameAccess>(menu->getByName("Submenu"), UNO_QUERY_THROW))) {
    EXPECT_TRUE(isKnown(url)) << url;
    EXPECT_FALSE(title.empty()) << url;
    titles.insert(title);
    names.push_back(url.substr(url.find(':') + 1));
  }
  EXPECT_THAT(names, ElementsAre("check", "goToFinding", "backToFinding", "applySelected", "applyFix",
                                 "applyAsk", "askList", "handout", "gather", "summarise", "poolPage", "audit",
                                 "makeRoom", "clearFindings"));
  EXPECT_EQ(titles.size(), names.size());
}

TEST_F(Entries, OfTheToolbarAreCommands) {
  const auto all =
      entries(configuration("/org.openoffice.Office.Addons/AddonUI/OfficeToolBar/org.wetspell.toolbar"));
  EXPECT_GE(all.size(), 4U);
  for (const auto& [url, title] : all) {
    EXPECT_TRUE(isKnown(url)) << url;
    EXPECT_FALSE(title.empty()) << url;
  }
  const auto states = configuration("/org.openoffice.Office.UI.CalcWindowState/UIElements/States");
  const Reference<css::container::XNameAccess> state(
      states->getByName("private:resource/toolbar/addon_org.wetspell.toolbar"), UNO_QUERY_THROW);
  EXPECT_EQ(propertyText(state, "UIName"), "Wetspell");
}

TEST_F(Entries, HaveAPictureInBothSizes) {
  const auto images = configuration("/org.openoffice.Office.Addons/AddonUI/Images");
  std::set<std::string> pictured;
  const auto files = css::ucb::SimpleFileAccess::create(office().context());
  for (const rtl::OUString& name : images->getElementNames()) {
    if (!fromOffice(name).starts_with("org.wetspell."))
      continue;
    const Reference<css::container::XNameAccess> image(images->getByName(name), UNO_QUERY_THROW);
    const Reference<css::container::XNameAccess> of(image->getByName("UserDefinedImages"), UNO_QUERY_THROW);
    pictured.insert(propertyText(image, "URL"));
    for (const char* size : {"ImageSmallURL", "ImageBigURL"})
      EXPECT_TRUE(files->exists(toOffice(propertyText(of, size)))) << propertyText(of, size);
  }
  const Reference<css::container::XNameAccess> menu(
      configuration("/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/org.wetspell.menu"));
  for (const auto& [url, title] :
       entries(Reference<css::container::XNameAccess>(menu->getByName("Submenu"), UNO_QUERY_THROW)))
    EXPECT_TRUE(pictured.contains(url)) << title;
}

TEST_F(Entries, OtherAddressesAreNotTaken) {
  EXPECT_FALSE(isKnown("org.wetspell.command:fly"));
}

} // namespace
} // namespace wetspell::host
