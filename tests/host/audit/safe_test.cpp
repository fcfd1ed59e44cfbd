// A workbook that is only read does nothing: no macro runs, nothing it links to is fetched.

#include "audit/audit_in_office.hpp"
#include "base/text.hpp"
#include "command/program.hpp"
#include "driver/files.hpp"
#include "engine/season/sheets.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/document/XEventsSupplier.hpp>
#include <com/sun/star/script/XLibraryContainer.hpp>
#include <com/sun/star/sheet/XAreaLinks.hpp>
#include <gmock/gmock.h>

#include <array>

namespace wetspell::host {
namespace {

using addin::fromOffice;
using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;

/// A workbook with a macro that leaves a trace, called by the event of loading and by a cell.
void set_trap(const std::filesystem::path& file, const std::filesystem::path& trace) {
  const Document document = workbook_of(small_old_sheet(), office(), {.runMacros = true});
  const Reference<css::beans::XPropertySet> properties(document.model(), UNO_QUERY_THROW);
  const Reference<css::script::XLibraryContainer> libraries(properties->getPropertyValue("BasicLibraries"),
                                                            UNO_QUERY_THROW);
  const auto library =
      libraries->hasByName("Standard")
          ? Reference<css::container::XNameContainer>(libraries->getByName("Standard"), UNO_QUERY_THROW)
          : libraries->createLibrary("Standard");
  library->insertByName("Trap", Any(toOffice("Function Spring()\n"
                                             "  Dim number As Integer\n"
                                             "  number = FreeFile\n"
                                             "  Open \"" +
                                             trace.string() +
                                             "\" For Output As #number\n"
                                             "  Print #number, \"sprung\"\n"
                                             "  Close #number\n"
                                             "  Spring = 1\n"
                                             "End Function\n")));
  const std::array<css::beans::PropertyValue, 2> script{
      css::beans::PropertyValue{"EventType", 0, Any(rtl::OUString("Script")),
                                css::beans::PropertyState_DIRECT_VALUE},
      {"Script", 0,
       Any(rtl::OUString("vnd.sun.star.script:Standard.Trap.Spring?language=Basic&location=document")),
       css::beans::PropertyState_DIRECT_VALUE}};
  Reference<css::container::XNameReplace>(
      Reference<css::document::XEventsSupplier>(document.model(), UNO_QUERY_THROW)->getEvents(),
      UNO_QUERY_THROW)
      ->replaceByName("OnLoad",
                      Any(css::uno::Sequence<css::beans::PropertyValue>(script.data(), script.size())));
  document.setFormula("Old.H1", "=SPRING()");
  document.store(file);
}

TEST(ReadingAWorkbook, RunsNoneOfItsMacros) {
  const driver::TemporaryFolder folder("wetspell-test-");
  const auto file = folder.path() / "trap.ods", trace = folder.path() / "trace.txt";
  set_trap(file, trace);
  const auto sprung = [&](bool may_run) {
    std::filesystem::remove(trace);
    const Document document = Document::open(office(), file, {.runMacros = may_run});
    document.recalculate();
    return std::filesystem::exists(trace);
  };
  ASSERT_TRUE(sprung(true)) << "the trap is set: where macros may run, it springs";
  EXPECT_FALSE(sprung(false));
  EXPECT_EQ(audited(file)["rows"]["usable"], 2);
  EXPECT_FALSE(std::filesystem::exists(trace));
}

TEST(ReadingAWorkbook, FetchesNothingThatItLinksTo) {
  const driver::TemporaryFolder folder("wetspell-test-");
  const auto source = folder.path() / "source.ods", file = folder.path() / "linked.ods";
  const auto put = [&](double depth) {
    Table sheet =
        testing::sheet("Old", "Pool | Date | Depth (cm)\nB07 | 2019-04-01 | 1\nB08 | 2019-04-02 | 31");
    sheet.at(1, 2) = Cell::of_number(depth);
    workbook_of({sheet}).store(source);
  };
  const auto links = [](const Document& document) {
    return Reference<css::sheet::XAreaLinks>(
        Reference<css::beans::XPropertySet>(document.model(), UNO_QUERY_THROW)->getPropertyValue("AreaLinks"),
        UNO_QUERY_THROW);
  };
  put(30);
  {
    const Document document = workbook_of({});
    links(document)->insertAtPosition({0, 0, 0}, driver::urlOf(source), "Old.A1:C3", "", "");
    ASSERT_EQ(document.read("C2").value, 30);
    document.store(file);
  }
  put(99);
  {
    const Document document = Document::open(office(), file);
    EXPECT_EQ(document.read("C2").value, 30);
    ASSERT_EQ(Reference<css::container::XIndexAccess>(links(document), UNO_QUERY_THROW)->getCount(), 1);
    const Document anew = workbook_of({});
    links(anew)->insertAtPosition({0, 0, 0}, driver::urlOf(source), "Old.A1:C3", "", "");
    ASSERT_EQ(anew.read("C2").value, 99) << "the link is one that can be followed";
  }
  ASSERT_EQ(test::run({"audit", file.string(), "--out", (folder.path() / "out").string()}).exit, 0);
  const std::string tidy = test::text_of(folder.path() / "out" / "linked-tidy-visits.csv");
  EXPECT_THAT(tidy, ::testing::HasSubstr("30 cm"));
  EXPECT_THAT(tidy, ::testing::Not(::testing::HasSubstr("99")));
}

} // namespace
} // namespace wetspell::host
