// The command line with its office: wetspell handout.

#include "handout/handout_season.hpp"
#include "harness/host.hpp"

#include <boost/process.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

namespace bp = boost::process;
using ::testing::HasSubstr;

struct Said {
  int exit;
  std::string out;
};

Said handout(const std::vector<std::string>& words) {
  std::vector<std::string> all{"handout"};
  all.insert(all.end(), words.begin(), words.end());
  bp::ipstream stream;
  bp::child child(WETSPELL_PROGRAM, bp::args(all), bp::std_out > stream, bp::std_err > bp::null);
  std::string text{std::istreambuf_iterator<char>(stream), {}};
  child.wait();
  return {child.exit_code(), std::move(text)};
}

TEST(HandoutCommand, WritesBothFormatsForEverybody) {
  const driver::TemporaryFolder folder("wetspell-handouts");
  const auto season = folder.path() / "visits.csv";
  std::ofstream(season) << "Pool,Date,Person,Water,Depth\nP1,2026-04-10,R/W,no standing water,20\n"
                           "P2,2026-04-17,AL,standing water,19\n";
  const auto out = folder.path() / "new folder";
  const Said said = handout({season.string(), "--all", "--out", out.string()});
  ASSERT_EQ(said.exit, 0);
  for (const char* name : {"handout-R-W.ods", "handout-R-W.xlsx", "handout-AL.ods", "handout-AL.xlsx"}) {
    EXPECT_THAT(said.out, HasSubstr(name));
    EXPECT_TRUE(std::filesystem::exists(out / name)) << name;
  }
  const auto document = driver::Document::open(office(), out / "handout-R-W.xlsx");
  EXPECT_EQ(document.read("You.A4").text, "R/W");
  EXPECT_EQ(document.read("You.A9").text, "P1");
  EXPECT_EQ(document.read("Questions.D4").text, "Depth");
  EXPECT_EQ(document.read("Questions.E4").text, "20");

  EXPECT_EQ(handout({season.string(), "--person", "AL", "--out", out.string()}).exit, 2)
      << "what is there already is not written over";
  EXPECT_EQ(handout({season.string(), "--person", "al", "--out", folder.path().string()}).exit, 0);
  EXPECT_TRUE(std::filesystem::exists(folder.path() / "handout-AL.ods"));
  EXPECT_FALSE(std::filesystem::exists(folder.path() / "handout-R-W.ods")) << "for one person";
}

} // namespace
} // namespace wetspell::host
