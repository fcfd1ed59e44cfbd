// Handouts and the ask list from the workbook that is open: by the service, by a command, by a macro.

#include "commands/season_in_office.hpp"

#include "base/text.hpp"
#include "driver/files.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <gmock/gmock.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace wetspell::host {
namespace {

using addin::fromOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

class Handouts : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};
  driver::TemporaryFolder folder{"wetspell-handouts"};

  [[nodiscard]] Any address() const { return Any(driver::urlOf(folder.path())); }
  [[nodiscard]] Document handout(const std::string& name) const {
    return Document::open(office(), folder.path() / name);
  }
};

TEST_F(Handouts, AreWrittenInBothFormatsWithoutTouchingTheSeason) {
  const std::string before = snapshot(document, "");
  Sequence<rtl::OUString> files;
  ASSERT_TRUE(desk.call("handout", {any("rw"), address()}) >>= files);
  EXPECT_EQ(files.getLength(), 2);
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_TRUE(document.undoTitles().empty());
  for (const char* name : {"handout-RW.ods", "handout-RW.xlsx"}) {
    const Document made = handout(name);
    EXPECT_THAT(made.sheetNames(), ElementsAre("Read first", "Visits", "Life", "Questions", "You", "Words"));
    EXPECT_EQ(made.read("You.A4").text, "RW");
    EXPECT_EQ(made.read("You.A9").text, "B01") << "RW has been to B01 and B07";
    EXPECT_EQ(made.read("You.A10").text, "B07");
    EXPECT_EQ(made.read("You.A11").text, "");
    const FindingRow wide = desk.finding("wider-than-long");
    const std::string questions = made.dumpStored("Questions.A4:G20");
    EXPECT_THAT(questions, HasSubstr(wide.at("key")));
    EXPECT_THAT(questions, HasSubstr(wide.at("message")));
    EXPECT_THAT(questions, Not(HasSubstr(desk.finding("end-before-start").at("key")))) << "KLUG was there";
  }
}

TEST_F(Handouts, AreNeverWrittenOverAFileThatSomebodyMayHaveFilledIn) {
  std::ofstream(folder.path() / "handout-KLUG.xlsx") << "filled in";
  EXPECT_THAT(refusal([&] {
                desk.call("handout", {any("KLUG"), address()});
              }),
              HasSubstr("is there already"));
  EXPECT_FALSE(std::filesystem::exists(folder.path() / "handout-KLUG.ods"));
}

TEST_F(Handouts, SayInWordsWhatTheyCannotDo) {
  EXPECT_THAT(refusal([&] {
                desk.call("handout", {any("XX"), address()});
              }),
              HasSubstr("There is no person with the code 'XX'."));
  std::ofstream(folder.path() / "a file") << "and no folder";
  const Any nowhere(driver::urlOf(folder.path() / "a file"));
  EXPECT_THAT(refusal([&] { desk.call("handout", {any("RW"), nowhere}); }), HasSubstr("cannot be written"));
}

TEST_F(Handouts, AreWrittenForThePersonOfTheRowBesideTheWorkbook) {
  const auto file = folder.path() / "season.ods";
  document.store(file);
  const Document saved = Document::open(office(), file);
  select(saved, at(Field::visit_pool, 3)); // KLUG's
  saved.dispatch("org.wetspell.command:handout");
  EXPECT_TRUE(std::filesystem::exists(folder.path() / "handout-KLUG.ods"));
  select(saved, at(Field::person_code, 0));
  saved.dispatch("org.wetspell.command:handout");
  EXPECT_TRUE(std::filesystem::exists(folder.path() / "handout-RW.ods"));
  select(saved, "Limits.A1");
  EXPECT_THAT(refusal([&] { saved.dispatch("org.wetspell.command:handout"); }),
              HasSubstr("Put the cursor on a person first"));
}

} // namespace
} // namespace wetspell::host
