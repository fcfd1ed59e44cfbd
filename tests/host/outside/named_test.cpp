// Workbooks named on the command line: the office that reads them fetches nothing, whatever they link to, and
// what is stored of them keeps its links.

#include "commands/season_in_office.hpp"
#include "driver/files.hpp"
#include "harness/listener.hpp"
#include "outside/trusting_office.hpp"
#include "text_of.hpp"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <cstdlib>
#include <fstream>

#include <sys/wait.h>

namespace wetspell::host {
namespace {

using driver::Document;
using ::testing::AllOf;
using ::testing::HasSubstr;

class Named : public ::testing::Test {
protected:
  /// What wetspell-office prints; it must have done its work.
  std::string run(const std::string& words) const {
    const auto said = folder.path() / "said";
    const std::string line =
        "'" WETSPELL_OFFICE_COMMAND "' " + words + " --oxt '" WETSPELL_OXT "' >'" + said.string() + "'";
    EXPECT_LE(WEXITSTATUS(std::system(line.c_str())), 1) << line;
    return test::text_of(said);
  }
  void shell(const std::string& line) const { EXPECT_EQ(std::system(line.c_str()), 0) << line; }
  /// The part of a stored workbook that holds its cells.
  std::string contentOf(const std::filesystem::path& file) const {
    shell("unzip -qo '" + file.string() + "' content.xml -d '" + folder.path().string() + "'");
    return test::text_of(folder.path() / "content.xml");
  }

  driver::TemporaryFolder folder{"wetspell-test-"};
  Listener listener;
};

class NamedSeason : public Named, public ::testing::WithParamInterface<const char*> {
protected:
  void SetUp() override {
    opened(smallSeason()).store(season);
    std::string text = contentOf(season);
    // The sheet stands before those of the season.
    text.insert(text.find("<table:table "),
                R"(<table:table table:name="Elsewhere"><table:table-row><table:table-cell )"
                R"(table:formula="of:=COM.MICROSOFT.WEBSERVICE(&quot;)" +
                    listener.address() +
                    R"(word&quot;)"
                    ")\" office:value-type=\"string\"><text:p>before</text:p></table:table-cell>"
                    R"(</table:table-row><table:table-row><table:table-cell><draw:frame svg:width="2cm" )"
                    R"(svg:height="2cm"><draw:image xlink:type="simple" xlink:href=")" +
                    listener.address() +
                    R"(picture.png"/></draw:frame></table:table-cell></table:table-row></table:table>)");
    std::ofstream(folder.path() / "content.xml", std::ios::binary) << text;
    shell("cd '" + folder.path().string() + "' && zip -q season.ods content.xml");
  }
  std::filesystem::path season = folder.path() / "season.ods";
};

TEST_P(NamedSeason, IsReadWithoutFetching) {
  EXPECT_NE(run(std::string(GetParam()) + " '" + season.string() + "'"), "");
  EXPECT_FALSE(listener.somebodyCame());
}

TEST_P(NamedSeason, IsStoredWithItsLinksAndWithoutFetching) {
  const auto out = folder.path() / "out";
  run(std::string(GetParam()) + " '" + season.string() + "' --out '" + out.string() + "'");
  EXPECT_FALSE(listener.somebodyCame());
  std::filesystem::path stored;
  for (const auto& each : std::filesystem::directory_iterator(out))
    if (each.path().extension() == ".ods")
      stored = each.path();
  EXPECT_THAT(contentOf(stored), AllOf(HasSubstr("WEBSERVICE(&quot;" + listener.address() + "word&quot;)"),
                                       HasSubstr("xlink:href=\"" + listener.address() + "picture.png\"")));
}

INSTANTIATE_TEST_SUITE_P(Commands, NamedSeason, ::testing::Values("check", "summarise", "audit"),
                         [](const auto& test) { return test.param; });

TEST_F(Named, ResultsThatAreStoredCountWhereItIsOnlyRead) {
  const auto file = folder.path() / "came.ods";
  writeOutside(file, folder.path() / "secret", "LibreOffice/7.4", listener.address());
  const auto said = nlohmann::json::parse(run("audit '" + file.string() + "' --format json"));
  EXPECT_EQ(said["rows"]["usable"], 6) << said.dump(2);
  EXPECT_FALSE(listener.somebodyCame());
}

TEST_F(Named, AnOfficeOfOursFetchesNothingAlsoAfterItWasStartedAgain) {
  const auto file = folder.path() / "came.ods";
  writeOutside(file, folder.path() / "secret", "LibreOffice/7.4", listener.address());
  Document::open(office(), file);
  office().restart();
  Document::open(office(), file);
  EXPECT_FALSE(listener.somebodyCame());
}

} // namespace
} // namespace wetspell::host
