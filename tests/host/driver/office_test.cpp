// The driver itself: an office starts, computes, obeys, and leaves nothing behind.
// Values and error numbers: what Calc documents for its own functions.

#include "base/text.hpp"
#include "driver/failure.hpp"
#include "driver/files.hpp"
#include "harness/host.hpp"
#include "harness/pdf.hpp"

#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using driver::Document;
using driver::Failure;
using driver::Office;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

std::string textOf(const css::uno::Any& any) {
  rtl::OUString text;
  EXPECT_TRUE(any >>= text);
  return addin::fromOffice(text);
}

/// The words of the Failure a call ends with; empty when it does not.
template <class Call> std::string failureOf(Call call) {
  try {
    call();
  } catch (const Failure& failure) {
    return failure.what();
  }
  return {};
}

class InOffice : public HostTest {};

TEST_F(InOffice, ComputesWithBuiltInFunctions) {
  EXPECT_EQ(value("=SUM(1;2;3.5)"), 6.5);
  EXPECT_EQ(shown("=SUM(1;2;3.5)"), "6.5");
  EXPECT_EQ(error("=SUM(1;2)"), 0);
}

TEST_F(InOffice, ReportsTheErrorACellShows) {
  EXPECT_EQ(error("=1/0"), 532);
  EXPECT_EQ(error("=NOSUCHFUNCTIONATALL(1)"), 525);
  EXPECT_EQ(shown("=NOSUCHFUNCTIONATALL(1)"), "#NAME?");
  EXPECT_EQ(error("=NA()"), 32767);
}

TEST_F(InOffice, TellsTypedFromWritten) {
  document.setText("A1", "2.5");
  document.type("A2", "2.5");
  EXPECT_EQ(document.read("A1").value, 0) << "a text, whatever it looks like";
  EXPECT_EQ(document.read("A2").value, 2.5);
  document.setFormula("A3", "=A2*2");
  EXPECT_EQ(document.read("A3").formula, "=A2*2");
}

TEST_F(InOffice, UndoesAndObeysCommands) {
  document.setValue("B2", 7);
  ASSERT_EQ(document.undoTitles().size(), 1U);
  document.undo();
  EXPECT_EQ(document.read("B2").text, "");
  document.redo();
  EXPECT_EQ(document.read("B2").text, "7");
  document.dispatch(".uno:SelectAll");
  document.dispatch(".uno:ClearContents");
  EXPECT_EQ(document.read("B2").text, "");
}

TEST_F(InOffice, DumpsWhatIsUsed) {
  document.setValue("A1", 1);
  document.setText("B1", "pool");
  document.setFormula("B2", "=A1+1");
  const std::string name = document.sheetNames().front();
  EXPECT_EQ(document.dumpSheet(name), "1\tpool\n\t2\n");
  EXPECT_EQ(document.dumpStored(name + ".A1:B2"), "1\tpool\n\t=A1+1\n");
}

TEST_F(InOffice, NamesTheWrongAddress) {
  EXPECT_THAT(failureOf([&] { document.read("Nowhere.A1"); }), HasSubstr("no sheet 'Nowhere'"));
  EXPECT_THAT(failureOf([&] { document.read("not an address"); }), HasSubstr("'not an address'"));
}

TEST_F(InOffice, PutsNothingBesideAnOpenDocument) {
  const driver::TemporaryFolder folder("wetspell-test-");
  document.store(folder.path() / "season.ods");
  const Document open = Document::open(office(), folder.path() / "season.ods");
  open.setValue("A1", 1);
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
    names.push_back(entry.path().filename().string());
  }
  EXPECT_THAT(names, ElementsAre("season.ods"));
}

// Root may write to anything; only for other users does this hold what it says.
TEST_F(InOffice, OpensAFileThatMayOnlyBeRead) {
  const driver::TemporaryFolder folder("wetspell-test-");
  const auto file = folder.path() / "season.ods";
  document.setValue("A1", 7);
  document.store(file);
  std::filesystem::permissions(file, std::filesystem::perms::owner_read);
  const Document open = Document::open(office(), file);
  EXPECT_EQ(open.read("A1").value, 7);
  open.setValue("A2", 8);
  EXPECT_EQ(reopened(open, ".ods").read("A2").value, 8) << "a checked copy can be stored elsewhere";
}

TEST_F(InOffice, PrintsTheSheetsThatAreAskedForAndLeavesTheOthersAsTheyWere) {
  const driver::TemporaryFolder folder("wetspell-test-");
  const auto sheets = document.model()->getSheets();
  sheets->insertNewByName("Otter", 1);
  sheets->insertNewByName("Heron", 2);
  const std::string first = document.sheetNames().front();
  document.setText(first + ".A1", "badger");
  document.setText("Otter.A1", "otter");
  document.setText("Heron.A1", "heron");
  const auto steps = document.undoTitles();
  document.storeSheets({"Heron", first}, folder.path() / "two.pdf");
  EXPECT_THAT(wordsOnPages(folder.path() / "two.pdf"),
              AllOf(HasSubstr("heron"), HasSubstr("badger"), Not(HasSubstr("otter"))));
  EXPECT_EQ(document.undoTitles(), steps);
  document.storeSheet("Otter", folder.path() / "one.pdf");
  EXPECT_THAT(wordsOnPages(folder.path() / "one.pdf"),
              AllOf(HasSubstr("otter"), Not(HasSubstr("heron")), Not(HasSubstr("badger"))));
  document.store(folder.path() / "all.pdf");
  EXPECT_THAT(wordsOnPages(folder.path() / "all.pdf"),
              AllOf(HasSubstr("badger"), HasSubstr("otter"), HasSubstr("heron")));
}

class Formats : public HostTest, public ::testing::WithParamInterface<const char*> {};

TEST_P(Formats, KeepFormulasAndText) {
  document.setValue("A1", 0.1);
  document.setText("A2", "½ ft, 17.8 °C");
  document.setFormula("A3", "=A1*3");
  const Document again = reopened(document, GetParam());
  EXPECT_EQ(again.read("A1").value, 0.1);
  EXPECT_EQ(again.read("A2").text, "½ ft, 17.8 °C");
  EXPECT_EQ(again.read("A3").formula, "=A1*3");
}

INSTANTIATE_TEST_SUITE_P(Stored, Formats, ::testing::Values(".ods", ".fods", ".xlsx"));

TEST(Extension, TellsItsVersion) {
  const auto version = office().service("org.wetspell.Version");
  EXPECT_EQ(textOf(office().call(version, "text")), WETSPELL_VERSION);
}

TEST(Extension, IsRefusedWhenMadeForAnotherPlatform) {
  driver::OfficeOptions options = withoutExtension();
  options.extensions = {WETSPELL_FOREIGN_OXT};
  EXPECT_THAT(failureOf([&] { const Office refused(options); }),
              HasSubstr("foreign.oxt is not for this office"));
}

TEST(OtherOffice, ShowsTheDecimalCommaOfItsLocale) {
  Office german(withoutExtension("de-DE"));
  const Document document = Document::create(german);
  document.setFormula("A1", "=SUM(1;2.5)");
  EXPECT_EQ(document.read("A1").text, "3,5");
  document.type("A2", "0,64");
  EXPECT_EQ(document.read("A2").value, 0.64);
}

TEST(OtherOffice, HasNoExtensionUnlessAsked) {
  Office bare(withoutExtension());
  EXPECT_THAT(failureOf([&] { bare.service("org.wetspell.Version"); }),
              HasSubstr("is the extension installed?"));
}

/// Names among the temporary files that offices of ours make.
std::vector<std::string> traces() {
  std::vector<std::string> found;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::temp_directory_path())) {
    const std::string name = entry.path().filename().string();
    // lu…: the office's temporary folders; SingleOfficeIPC: where a second start would find the first.
    if (name.find("wetspell") != std::string::npos || name.find("SingleOfficeIPC") != std::string::npos ||
        name.starts_with("lu")) {
      found.push_back(name);
    }
  }
  return found;
}

bool exists(const std::string& name) {
  return std::filesystem::exists(std::filesystem::temp_directory_path() / name);
}

/// What the call added to the temporary files and did not take away; other programs may run meanwhile,
/// so only names that appear while the office lives are looked at.
template <class Call> std::vector<std::string> leftBehind(Call call) {
  const std::vector<std::string> before = traces();
  std::vector<std::string> made;
  call([&] { made = traces(); });
  std::vector<std::string> left;
  for (const std::string& name : made) {
    if (std::find(before.begin(), before.end(), name) == before.end() && exists(name)) {
      left.push_back(name);
    }
  }
  EXPECT_GT(made.size(), before.size()) << "the office made nothing that could be left behind";
  return left;
}

TEST(OtherOffice, LeavesNothingBehind) {
  EXPECT_THAT(leftBehind([](auto look) {
                Office one(withoutExtension());
                const Document unsaved = Document::create(one);
                unsaved.setValue("A1", 1);
                look();
              }),
              ElementsAre());
}

TEST(OtherOffice, IsEndedWhenItsTimeIsOverAndLeavesNothingBehind) {
  EXPECT_THAT(leftBehind([](auto look) {
                driver::OfficeOptions options = withoutExtension();
                options.lifeLimit = std::chrono::seconds(3);
                Office one(options);
                const Document document = Document::create(one);
                look();
                const auto start = std::chrono::steady_clock::now();
                const std::string words = failureOf([&] {
                  while (std::chrono::steady_clock::now() - start < std::chrono::seconds(60)) {
                    document.recalculate();
                  }
                });
                EXPECT_THAT(words, HasSubstr("longer than 3 s"));
              }),
              ElementsAre());
}

} // namespace
} // namespace wetspell::host
