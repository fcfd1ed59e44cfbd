// The Basic library, called as people's own macros call it.

#include "commands/season_in_office.hpp"

#include "base/text.hpp"
#include "driver/files.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/script/XLibraryContainer.hpp>
#include <com/sun/star/script/provider/XScriptProvider.hpp>
#include <com/sun/star/script/provider/XScriptProviderFactory.hpp>
#include <com/sun/star/script/provider/XScriptProviderSupplier.hpp>
#include <com/sun/star/script/provider/theMasterScriptProviderFactory.hpp>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::HasSubstr;

class Macro : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};

  /// Calls a procedure of the library with the document and what else it takes.
  static Any call(const Document& on, const std::string& procedure, const std::vector<Any>& more = {}) {
    const auto provider = css::script::provider::theMasterScriptProviderFactory::get(office().context())
                              ->createScriptProvider(Any(rtl::OUString()));
    std::vector<Any> all{Any(Reference<css::frame::XModel>(on.model(), UNO_QUERY_THROW))};
    all.insert(all.end(), more.begin(), more.end());
    try {
      const auto script = provider->getScript(addin::toOffice(
          "vnd.sun.star.script:Wetspell.Season." + procedure + "?language=Basic&location=application"));
      Sequence<sal_Int16> places;
      Sequence<Any> outs;
      return script->invoke({all.data(), static_cast<sal_Int32>(all.size())}, places, outs);
    } catch (const css::uno::Exception&) {
      throw office().failed(procedure);
    }
  }
  Any call(const std::string& procedure, const std::vector<Any>& more = {}) const {
    return call(document, procedure, more);
  }
  static long number(const Any& content) {
    sal_Int32 value = -1;
    EXPECT_TRUE(content >>= value);
    return value;
  }
};

TEST_F(Macro, ChecksASeason) {
  const auto json = nlohmann::json::parse(text(call("CheckSeason")));
  EXPECT_EQ(json.at("findings").size(), rowsOnSheet(document).size());
  EXPECT_EQ(document.undoTitles(), (std::vector<std::string>{"Check the season"}));
}

TEST_F(Macro, LooksWithoutWriting) {
  const std::string before = snapshot(document, "");
  Sequence<Any> rows;
  ASSERT_TRUE(call("FindingsOf") >>= rows);
  EXPECT_EQ(static_cast<std::size_t>(rows.getLength()), desk.findings().size() + 1);
  EXPECT_EQ(number(call("CountOpen", {any("fix")})), 6);
  EXPECT_THAT(text(call("ReportOf", {any("csv")})), HasSubstr("wider-than-long"));
  EXPECT_EQ(text(call("CellOfFinding", {any(desk.finding("unknown-person").at("key"))})),
            at(Field::visit_person, 5));
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

TEST_F(Macro, MakesReplacements) {
  bool done = false;
  EXPECT_TRUE(call("ApplyReplacement", {any(desk.finding("wider-than-long").at("key"))}) >>= done);
  EXPECT_TRUE(done);
  EXPECT_EQ(document.read(at(Field::visit_width, 1)).value, 31);
  EXPECT_TRUE(call("ApplyReplacement", {any("no such mark")}) >>= done);
  EXPECT_FALSE(done);
  EXPECT_EQ(number(call("ApplyReplacements", {any("fix")})), 4);
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUG");
}

TEST_F(Macro, HandsOut) {
  const driver::TemporaryFolder folder("wetspell-macro");
  Sequence<rtl::OUString> files;
  ASSERT_TRUE(call("HandoutFor", {any("RW"), any(folder.path().string())}) >>= files);
  EXPECT_EQ(files.getLength(), 2);
  EXPECT_TRUE(std::filesystem::exists(folder.path() / "handout-RW.ods"));
}

TEST_F(Macro, MakesRoomAndClears) {
  call("MakeRoomForVisits", {Any(sal_Int32(20))});
  EXPECT_THAT(document.read(onVisits("A", lastReadyRow(TableKind::visits) + 20)).formula, HasSubstr("=IF("));
  call("CheckSeason");
  call("ClearAllFindings");
  EXPECT_TRUE(rowsOnSheet(document).empty());
}

TEST_F(Macro, AuditsAWorkbook) {
  const std::string before = snapshot(document, "");
  EXPECT_THAT(text(call("AuditOf", {any("text")})), HasSubstr("can be used as they are"));
  EXPECT_TRUE(same(snapshot(document, ""), before));
  const auto json = nlohmann::json::parse(text(call("AuditWorkbook")));
  EXPECT_FALSE(json.empty());
  EXPECT_EQ(document.read("Audit.A1").text, "Audit");
  EXPECT_EQ(document.undoTitles(), (std::vector<std::string>{"Audit the workbook"}));
}

/// A document with a macro of its own that calls the library and catches what goes wrong.
TEST_F(Macro, OfADocumentIsToldInWordsWhatWentWrong) {
  const Document empty = Document::create(office(), {.runMacros = true});
  const Reference<css::script::XLibraryContainer> libraries(
      Reference<css::beans::XPropertySet>(empty.model(), UNO_QUERY_THROW)->getPropertyValue("BasicLibraries"),
      UNO_QUERY_THROW);
  libraries->createLibrary("Probe")->insertByName(
      "Words", any("Function Tell(document As Object) As String\n"
                   "  On Error GoTo Wrong\n"
                   "  GlobalScope.BasicLibraries.LoadLibrary(\"Wetspell\")\n"
                   "  CheckSeason(document)\n"
                   "  Tell = \"nothing was wrong\"\n"
                   "  Exit Function\n"
                   "Wrong:\n"
                   "  Tell = Error$\n"
                   "End Function\n"));
  const auto tell = [&](const Document& about) {
    const auto script =
        Reference<css::script::provider::XScriptProviderSupplier>(empty.model(), UNO_QUERY_THROW)
            ->getScriptProvider()
            ->getScript("vnd.sun.star.script:Probe.Words.Tell?language=Basic&location=document");
    const Any model(Reference<css::frame::XModel>(about.model(), UNO_QUERY_THROW));
    Sequence<sal_Int16> places;
    Sequence<Any> outs;
    return text(script->invoke({&model, 1}, places, outs));
  };
  EXPECT_THAT(tell(empty), HasSubstr("No table of visits was found"));
  EXPECT_EQ(tell(document), "nothing was wrong");
}

} // namespace
} // namespace wetspell::host
