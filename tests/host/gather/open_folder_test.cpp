// Files that came back and mean harm, or came to harm: macros, links to the outside, broken archives, stray
// cells, passwords, thousands of files. Each is read without what it wants, or told with the reason.
#include "driver/files.hpp"
#include "gather/open_folder.hpp"
#include "gather/without_outside.hpp"
#include "harness/host.hpp"
#include "harness/listener.hpp"

#include "base/text.hpp"

#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/document/XEmbeddedScripts.hpp>
#include <com/sun/star/document/XEventsSupplier.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/script/XLibraryContainer.hpp>
#include <com/sun/star/sheet/XSheetAnnotations.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <gmock/gmock.h>

#include <array>
#include <fstream>
#include <map>
#include <sstream>

#include <sys/stat.h>

namespace wetspell::host {
namespace {

namespace fs = std::filesystem;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Key;
using ::testing::Pair;
using ::testing::UnorderedElementsAre;

std::string bytesOf(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream bytes;
  bytes << in.rdbuf();
  return bytes.str();
}

void put(const fs::path& file, const std::string& bytes) {
  std::ofstream(file, std::ios::binary) << bytes;
}

/// A flat workbook with `cells` in its first row.
std::string flat(const std::string& cells) {
  return R"(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet">)"
         R"(<office:body><office:spreadsheet><table:table table:name="Visits"><table:table-row>)" +
         cells + R"(</table:table-row></table:table></office:spreadsheet></office:body></office:document>)";
}

css::beans::PropertyValue property(const char* name, const css::uno::Any& value) {
  return {addin::toOffice(name), -1, value, css::beans::PropertyState_DIRECT_VALUE};
}
css::uno::Any words(const std::string& text) {
  return css::uno::Any(addin::toOffice(text));
}
template <std::size_t N>
css::uno::Sequence<css::beans::PropertyValue> sequence(const std::array<css::beans::PropertyValue, N>& all) {
  return {all.data(), static_cast<sal_Int32>(N)};
}

/// Gives the document a Basic macro that writes a file, called when it is opened and by a cell.
void addMacroThatWrites(const Document& document, const fs::path& file) {
  const css::uno::Reference<css::document::XEmbeddedScripts> scripts(document.model(), UNO_QUERY_THROW);
  const css::uno::Reference<css::script::XLibraryContainer> libraries(scripts->getBasicLibraries(),
                                                                      UNO_QUERY_THROW);
  const rtl::OUString standard("Standard");
  const css::uno::Reference<css::container::XNameContainer> library =
      libraries->hasByName(standard) ? css::uno::Reference<css::container::XNameContainer>(
                                           libraries->getByName(standard), UNO_QUERY_THROW)
                                     : libraries->createLibrary(standard);
  library->insertByName(
      "M", words("Function Leave()\nDim n : n = FreeFile\nOpen \"" + file.string() +
                 "\" For Output As #n\nPrint #n, \"was here\"\nClose #n\nLeave = 1\nEnd Function\n"));
  const std::array script{
      property("EventType", words("Script")),
      property("Script", words("vnd.sun.star.script:Standard.M.Leave?language=Basic&location=document"))};
  css::uno::Reference<css::document::XEventsSupplier>(document.model(), UNO_QUERY_THROW)
      ->getEvents()
      ->replaceByName("OnLoad", css::uno::Any(sequence(script)));
  document.setFormula("H1", "=LEAVE()");
}

class OpenFolder : public HostTest {
protected:
  driver::TemporaryFolder folder{"wetspell-test-"};
  std::map<std::string, std::string> problems; ///< by file
  std::map<std::string, std::vector<Table>> sheets;
  std::map<std::string, std::vector<std::string>> comments;

  fs::path at(const std::string& name) const { return folder.path() / name; }
  /// Gives the number of folders inside.
  std::size_t open(driver::Office& in = office()) {
    const auto read = addin::openFolder(in.context(), folder.path(), {},
                                        [&](const std::string& name, Result<std::vector<Table>> tables) {
                                          if (tables)
                                            sheets.emplace(name, std::move(tables).value());
                                          else
                                            problems.emplace(name, tables.error().text);
                                        });
    EXPECT_TRUE(read.whole);
    comments = read.comments;
    return read.folders;
  }
  const Cell& cell(const std::string& file, std::size_t row, std::size_t column) {
    return sheets.at(file).front().at(row, column);
  }
};

TEST_F(OpenFolder, CommentsOnCellsAreTold) {
  document.setText("A1", "Pool");
  document.store(at("none.ods"));
  const css::uno::Reference<css::sheet::XSheetAnnotationsSupplier> sheet(
      document.sheet(document.sheetNames().front()), UNO_QUERY_THROW);
  sheet->getAnnotations()->insertNew({0, 3, 6}, addin::toOffice("not sure,\nstick broken"));
  for (const char* name : {"a.ods", "b.xlsx"})
    document.store(at(name));
  open();
  const std::string told = "A comment on '" + document.sheetNames().front() +
                           "', cell D7, was left out: 'not sure, stick broken'.";
  EXPECT_THAT(comments,
              UnorderedElementsAre(Pair("a.ods", ElementsAre(told)), Pair("b.xlsx", ElementsAre(told))));
  for (int i = 0; i < 20; ++i)
    sheet->getAnnotations()->insertNew({0, 0, i}, addin::toOffice("many"));
  document.store(at("a.ods"));
  open();
  ASSERT_EQ(comments.at("a.ods").size(), 11U);
  EXPECT_EQ(comments.at("a.ods").back(), "11 more comments were left out.");
}

TEST_F(OpenFolder, ReadsEveryKindOfWorkbook) {
  document.setText("A1", "Pool");
  document.setValue("B1", 2.5);
  for (const char* name : {"a.ods", "b.xlsx", "c.fods", "D.csv"})
    document.store(at(name));
  open();
  EXPECT_TRUE(problems.empty()) << problems.begin()->second;
  ASSERT_EQ(sheets.size(), 4U);
  for (const auto& [name, tables] : sheets) {
    EXPECT_EQ(tables.front().at(0, 0), Cell::of_text("Pool")) << name;
    EXPECT_EQ(tables.front().at(0, 1), Cell::of_number(2.5)) << name;
  }
}

TEST_F(OpenFolder, MacrosOfAVolunteersWorkbookNeverRun) {
  const driver::TemporaryFolder elsewhere("wetspell-test-");
  const fs::path trace = elsewhere.path() / "trace.txt";
  {
    const Document made = Document::create(office(), {.runMacros = true});
    made.setText("A1", "Pool");
    addMacroThatWrites(made, trace);
    made.store(at("macro.ods"));
  }
  fs::remove(trace);
  open();
  EXPECT_EQ(cell("macro.ods", 0, 0), Cell::of_text("Pool"));
  EXPECT_FALSE(fs::exists(trace)) << "the macro ran";
  const Document allowed = Document::open(office(), at("macro.ods"), {.runMacros = true});
  allowed.recalculate();
  EXPECT_TRUE(fs::exists(trace)) << "where macros may run, it does";
}

TEST_F(OpenFolder, WhatAWorkbookLinksToIsNotRead) {
  const driver::TemporaryFolder elsewhere("wetspell-test-");
  document.setValue("A1", 7);
  document.store(elsewhere.path() / "other.ods");
  const std::string name = document.sheetNames().front();
  put(at("link.fods"),
      flat(R"(<table:table-cell table:formula="of:=['file://)" + (elsewhere.path() / "other.ods").string() +
           "'#$" + name +
           R"(.A1]" office:value-type="float" office:value="5"><text:p>5</text:p></table:table-cell>)"));
  open();
  EXPECT_EQ(cell("link.fods", 0, 0), Cell::of_number(5)) << "7 stands there, 5 was seen when it was stored";
}

TEST_F(OpenFolder, NothingIsFetchedFromTheNet) {
  const Listener listener;
  put(at("net.fods"),
      flat(
          R"(<table:table-cell table:formula="of:=COM.MICROSOFT.WEBSERVICE(&quot;)" + listener.address() +
          R"(&quot;)"
          ")\" office:value-type=\"string\"><text:p>before</text:p></table:table-cell>"
          R"(<table:table-cell table:formula="of:=[')" +
          listener.address() +
          R"(other.ods'#$Sheet1.A1]" office:value-type="float" office:value="3"><text:p>3</text:p></table:table-cell>)"));
  driver::OfficeOptions options = withoutExtension();
  options.online = true;
  driver::Office online(options);
  open(online);
  EXPECT_TRUE(sheets.contains("net.fods"));
  EXPECT_FALSE(listener.somebodyCame());
}

TEST_F(OpenFolder, DamagedFilesAreToldWithTheReason) {
  document.setText("A1", "Pool");
  document.store(at("whole.ods"));
  const std::string whole = bytesOf(at("whole.ods"));
  put(at("empty.ods"), "");
  put(at("cut.ods"), whole.substr(0, whole.size() / 2));
  std::string scribbled = whole;
  const std::size_t content = scribbled.find("content.xml");
  std::fill_n(scribbled.begin() + static_cast<std::ptrdiff_t>(content) + 60, 200, '#');
  put(at("scribbled.ods"), scribbled);
  put(at("page.xlsx"), "<html><body>sign in first</body></html>");
  put(at("letter.docx"), whole);
  fs::create_directory(at("spring"));
  ASSERT_EQ(mkfifo(at("pipe.ods").c_str(), 0600), 0);
  EXPECT_EQ(open(), 1U) << "the folder inside";
  EXPECT_THAT(sheets, UnorderedElementsAre(Key("whole.ods")));
  EXPECT_THAT(problems["empty.ods"], HasSubstr("no bytes"));
  EXPECT_THAT(problems["cut.ods"], HasSubstr("cut short"));
  EXPECT_THAT(problems["scribbled.ods"], HasSubstr("damaged"));
  EXPECT_THAT(problems["page.xlsx"], HasSubstr("a web page"));
  EXPECT_THAT(problems["letter.docx"], HasSubstr("no workbook"));
  EXPECT_THAT(problems["pipe.ods"], HasSubstr("no file"));
}

TEST_F(OpenFolder, AWorkbookUnderAPasswordIsToldSo) {
  const std::array how{property("FilterName", words("calc8")), property("Password", words("frog"))};
  css::uno::Reference<css::frame::XStorable>(document.model(), UNO_QUERY_THROW)
      ->storeToURL(driver::urlOf(at("secret.ods")), sequence(how));
  open();
  EXPECT_THAT(problems["secret.ods"], HasSubstr("password"));
}

TEST_F(OpenFolder, WhatUnpacksToMoreThanItSaysIsNotOpened) {
  document.setText("A1", "Pool");
  for (const char* name : {"large.ods", "large.xlsx", "large.fods"}) {
    document.store(at(name));
    constexpr std::uintmax_t megabyte = 1U << 20;
    EXPECT_TRUE(addin::without_outside(office().context(), at(name), megabyte)) << name;
    const auto refused = addin::without_outside(office().context(), at(name), 1000);
    ASSERT_FALSE(refused) << name;
    EXPECT_THAT(refused.error().text, HasSubstr("unpacked it takes more than"));
  }
}

TEST_F(OpenFolder, AnOldWorkbookUnderAPasswordIsToldSo) {
  const std::array how{property("FilterName", words("MS Excel 97")), property("Password", words("frog"))};
  css::uno::Reference<css::frame::XStorable>(document.model(), UNO_QUERY_THROW)
      ->storeToURL(driver::urlOf(at("secret.xls")), sequence(how));
  put(at("letter.xls"), "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1" + std::string(4096, '\0'));
  open();
  EXPECT_THAT(problems["secret.xls"], HasSubstr("password"));
  EXPECT_THAT(problems["letter.xls"], HasSubstr("password"));
}

TEST_F(OpenFolder, AStrayCellFarOutIsNamed) {
  document.setText("A1", "Pool");
  document.setValue("AMJ1048576", 1);
  document.store(at("stray.ods"));
  open();
  EXPECT_THAT(problems["stray.ods"], AllOf(HasSubstr("AMJ1048576"), HasSubstr("Delete")));
}

TEST_F(OpenFolder, ThousandsOfFilesAreToldOneByOne) {
  constexpr int many = 3000;
  for (int i = 0; i < many; ++i)
    put(at("photo" + std::to_string(i) + ".jpg"), "\xFF\xD8\xFF");
  put(at("form.csv"), "Pool,Depth\nB01,12\n");
  put(at(".~lock.form.csv#"), "");
  open();
  EXPECT_EQ(problems.size(), static_cast<std::size_t>(many));
  EXPECT_EQ(cell("form.csv", 1, 0), Cell::of_text("B01"));
}

TEST_F(OpenFolder, MoreWorkbooksThanAnySeasonSendsAreRefusedBeforeOneIsOpened) {
  for (std::size_t i = 0; i < addin::mostFiles; ++i)
    put(at("form" + std::to_string(i) + ".csv"), "");
  put(at("photo.jpg"), "\xFF\xD8\xFF");
  open();
  EXPECT_EQ(problems.size(), addin::mostFiles + 1) << "as many as that are told one by one";
  put(at("one more.XLSX"), "");
  std::size_t opened = 0;
  const auto refused = [&] {
    try {
      addin::openFolder(office().context(), folder.path(), {}, [&](const auto&, auto) { ++opened; });
    } catch (const css::uno::RuntimeException& problem) {
      return addin::fromOffice(problem.Message);
    }
    return std::string("nothing was refused");
  };
  EXPECT_THAT(refused(), AllOf(HasSubstr("holds 5001 workbooks and tables"), HasSubstr("5000 are the most"),
                               HasSubstr("nothing was read")));
  EXPECT_EQ(opened, 0U);
}

TEST_F(OpenFolder, AFolderIsNamedByPathOrByAddress) {
  EXPECT_EQ(addin::folderNamed("/tmp/a b"), fs::path("/tmp/a b"));
  EXPECT_EQ(addin::folderNamed("file:///tmp/a%20b"), fs::path("/tmp/a b"));
  EXPECT_THROW(addin::openFolder(office().context(), at("gone"), {}, [](const auto&, auto) {}),
               css::uno::RuntimeException);
}

} // namespace
} // namespace wetspell::host
