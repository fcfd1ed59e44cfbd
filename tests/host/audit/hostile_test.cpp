// Files that are broken, far too large or made to harm: each is refused in words, in bounded time and memory,
// and the files beside it are read all the same.

#include "audit/audit_in_office.hpp"
#include "command/program.hpp"
#include "driver/files.hpp"
#include "engine/season/sheets.hpp"

#include <boost/process.hpp>
#include <gmock/gmock.h>

#include <chrono>

#include <unistd.h>

namespace wetspell::host {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

class Hostile : public ::testing::Test {
protected:
  driver::TemporaryFolder folder{"wetspell-test-"};
  [[nodiscard]] std::filesystem::path file(const std::string& name) const { return folder.path() / name; }

  /// Audits a file and one that is well; the second must come out whatever the first is.
  [[nodiscard]] test::Said beside_a_good_one(const std::filesystem::path& bad) const {
    store(workbook_of(small_old_sheet()), file("good.ods"));
    test::Said said = test::run({"audit", bad.string(), file("good.ods").string(), "--format", "json"});
    EXPECT_EQ(said.exit, 2) << said.err;
    EXPECT_THAT(said.out, HasSubstr("good.ods")) << said.err;
    EXPECT_THAT(said.err, HasSubstr(bad.filename().string()));
    return said;
  }
};

/// A flat workbook with one sheet of these rows.
std::string flat(const std::string& rows) {
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>"
         "<office:document xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" "
         "xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\" "
         "xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\" office:version=\"1.3\" "
         "office:mimetype=\"application/"
         "vnd.oasis.opendocument.spreadsheet\"><office:body><office:spreadsheet>"
         "<table:table table:name=\"Old\">" +
         rows + "</table:table></office:spreadsheet></office:body></office:document>";
}
std::string cell(const std::string& words, const std::string& more = {}) {
  return "<table:table-cell office:value-type=\"string\"" + more + "><text:p>" + words +
         "</text:p></table:table-cell>";
}
std::string number(const std::string& value) {
  return "<table:table-cell office:value-type=\"float\" office:value=\"" + value + "\"/>";
}
std::string row(const std::string& cells, const std::string& more = {}) {
  return "<table:table-row" + more + ">" + cells + "</table:table-row>";
}
/// Rows of an old sheet that can be read.
const std::string good_rows = row(cell("Pool") + cell("Date") + cell("Depth (cm)")) +
                              row(cell("B07") + cell("2019-04-01") + number("30")) +
                              row(cell("B08") + cell("2019-04-02") + number("31"));

TEST_F(Hostile, BrokenArchives) {
  for (const char* ending : {".ods", ".xlsx"}) {
    const auto whole = file(std::string("whole") + ending), half = file(std::string("half") + ending);
    store(workbook_of(small_old_sheet()), whole);
    const std::string bytes = test::text_of(whole);
    test::write(half, std::string_view(bytes).substr(0, bytes.size() / 2));
    EXPECT_THAT(beside_a_good_one(half).err, HasSubstr("the file is cut short")) << ending;
  }
}

TEST_F(Hostile, AnArchiveThatUnpacksToFarTooMuch) {
  store(workbook_of(small_old_sheet()), file("whole.ods"));
  std::string bytes = test::text_of(file("whole.ods"));
  // The size that each of its parts says it has unpacked.
  constexpr std::string_view entry{"PK\x01\x02", 4}, two_gigabytes{"\xFF\xFF\xFF\x7F", 4};
  std::size_t parts = 0;
  for (std::size_t at = bytes.find(entry); at != std::string::npos; at = bytes.find(entry, at + 1), ++parts)
    bytes.replace(at + 24, two_gigabytes.size(), two_gigabytes);
  ASSERT_GE(parts, 3U);
  test::write(file("bomb.ods"), bytes);
  EXPECT_THAT(beside_a_good_one(file("bomb.ods")).err,
              HasSubstr("no workbook of visits is larger than 4096 MB"));
}

TEST_F(Hostile, NamesThatSayWhatTheFileIsNot) {
  test::write(file("text.xls"), "Pool\tDate\nB07\t2019-04-01\n");
  EXPECT_THAT(beside_a_good_one(file("text.xls")).err,
              HasSubstr("its name ends in .xls, but what it holds is text"));
}

TEST_F(Hostile, EmptyFilesAndOnesThatMayNotBeRead) {
  for (const char* name : {"empty.ods", "empty.xlsx", "empty.xls"}) {
    test::write(file(name), "");
    EXPECT_THAT(beside_a_good_one(file(name)).err, HasSubstr("it has no bytes at all"));
  }
  // Root may read anything; the words are those of the system, for whoever may not.
  store(workbook_of(small_old_sheet()), file("closed.xlsx"));
  std::filesystem::permissions(file("closed.xlsx"), std::filesystem::perms::none);
  if (::access(file("closed.xlsx").c_str(), R_OK) == 0) {
    EXPECT_EQ(audited(file("closed.xlsx"))["rows"]["usable"], 2);
  } else {
    EXPECT_THAT(beside_a_good_one(file("closed.xlsx")).err, HasSubstr("cannot be read: Permission denied"));
  }
}

TEST_F(Hostile, ACellFarOutOrNearTheEdgeOfTheSheet) {
  test::write(file("far.fods"),
              flat(good_rows + row("<table:table-cell/>", " table:number-rows-repeated=\"1048572\"") +
                   row("<table:table-cell table:number-columns-repeated=\"1023\"/>" + cell("far"))));
  EXPECT_THAT(beside_a_good_one(file("far.fods")).err,
              HasSubstr("is in use down to its cell AMJ1048576: 1073741824 cells"));
  std::string wide;
  for (int i = 3; i < 16384; ++i)
    wide += cell("more " + std::to_string(i));
  std::string rows = good_rows;
  rows.insert(rows.find("</table:table-row>"), wide);
  test::write(file("wide.fods"), flat(rows));
  EXPECT_EQ(audited(file("wide.fods"))["rows"]["usable"], 2);
}

TEST_F(Hostile, ALongText) {
  const std::string text(32'767, 'x');
  std::string rows = good_rows;
  rows.replace(rows.find(number("31")), number("31").size(), cell(text));
  test::write(file("long.fods"), flat(rows));
  const json audit = audited(file("long.fods"));
  ASSERT_EQ(audit["unread"].size(), 1U);
  EXPECT_EQ(audit["unread"][0]["text"].get<std::string>().size(), text.size());
}

// A few hundred bytes that unfold to 17 thousand million cells.
TEST_F(Hostile, AFileThatUnfoldsWithoutEnd) {
  test::write(file("bomb.fods"), flat(row(cell("Pool", " table:number-columns-repeated=\"16384\""),
                                          " table:number-rows-repeated=\"1048576\"")));
  store(workbook_of(small_old_sheet()), file("good.ods"));
  const auto office = std::filesystem::path(WETSPELL_PROGRAM).parent_path() / "wetspell-office";
  namespace bp = boost::process;
  bp::ipstream out;
  const auto start = std::chrono::steady_clock::now();
  bp::child child(office.string(), "tables", file("bomb.fods").string(), file("good.ods").string(),
                  "--memory", "1000", bp::std_out > out, bp::std_err > bp::null);
  std::string bomb, good;
  std::getline(out, bomb);
  std::getline(out, good);
  child.wait();
  EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(120));
  EXPECT_THAT(json::parse(bomb)["problem"].get<std::string>(),
              HasSubstr("the office was ended because it took more than 1000 MB of memory"));
  EXPECT_EQ(json::parse(good)["tables"][0]["sheet"], "Old");
}

} // namespace
} // namespace wetspell::host
