// `wetspell gather` as people run it: what it says, what it leaves for the shell and on the disk.

#include "gathering/came_back.hpp"
#include "text_of.hpp"

#include <gmock/gmock.h>

#include <cstdlib>
#include <fstream>

#include <sys/wait.h>

namespace wetspell::host {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

class GatherCommand : public CameBack {
protected:
  driver::TemporaryFolder kept{"wetspell-test-"};
  std::filesystem::path season = kept.path() / "season.ods";

  void SetUp() override { document.store(season); }

  struct Said {
    int exit = -1;
    std::string out, err;
  };
  Said run(const std::string& more = {}) const {
    const driver::TemporaryFolder said("wetspell-test-");
    const std::string out = (said.path() / "out").string(), err = (said.path() / "err").string();
    const int status =
        std::system(("'" WETSPELL_PROGRAM "' gather '" + folder.path().string() + "' --into '" +
                     season.string() + "' " + more + " >'" + out + "' 2>'" + err + "'")
                        .c_str());
    return {WEXITSTATUS(status), test::text_of(out), test::text_of(err)};
  }
  std::vector<std::string> beside() const {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(kept.path()))
      names.push_back(entry.path().filename().string());
    return names;
  }
};

TEST_F(GatherCommand, WritesTheSeasonOnceAndThenLeavesItAlone) {
  send("ada.ods", {{"Pool", "Date", "First person", "Depth"}, {"B01", "2026-06-01", "KLUG", "12"}});
  const Said first = run();
  EXPECT_EQ(first.exit, 0) << first.out << first.err;
  EXPECT_THAT(first.out, AllOf(HasSubstr("1 file was read; 1 visit and 0 counts of life added."),
                               HasSubstr("ada.ods: 1 row: 1 added, 0 there already")));
  EXPECT_THAT(beside(), ElementsAre("season.ods"));
  {
    const driver::Document stored = driver::Document::open(office(), season);
    EXPECT_EQ(stored.read(at(Field::visit_source_file, 6)).text, "ada.ods");
    EXPECT_EQ(stored.read(at(Field::visit_depth, 6)).value, 12);
  }
  const std::string bytes = test::text_of(season);
  const Said again = run("--format json");
  EXPECT_EQ(again.exit, 0) << again.err;
  EXPECT_EQ(nlohmann::json::parse(again.out)["changed"], false);
  EXPECT_TRUE(test::text_of(season) == bytes) << "not even written again";
}

TEST_F(GatherCommand, LeavesOneWhereSomebodyHasToLook) {
  send("rowan.ods", {{"Pool", "Date", "First person", "Depth"}, {"B01", "2026-04-18", "RW", "31"}});
  std::ofstream(folder.path() / "empty.ods");
  const Said said = run();
  EXPECT_EQ(said.exit, 1) << said.err;
  EXPECT_THAT(said.out,
              AllOf(HasSubstr("1 cell is to choose between"), HasSubstr("empty.ods: not read: the file")));
}

TEST_F(GatherCommand, RefusesASeasonThatIsOpenElsewhere) {
  send("ada.ods", {{"Pool", "Date", "First person", "Depth"}, {"B01", "2026-06-01", "KLUG", "12"}});
  std::ofstream(kept.path() / ".~lock.season.ods#") << "Rowan";
  const std::string bytes = test::text_of(season);
  const Said said = run();
  EXPECT_EQ(said.exit, 2);
  EXPECT_THAT(said.err, AllOf(HasSubstr("is open in an office"), HasSubstr("stays as it was")));
  EXPECT_TRUE(test::text_of(season) == bytes);
}

TEST_F(GatherCommand, RefusesWhatIsNoSeason) {
  EXPECT_THAT(run().err, HasSubstr("holds no workbook"));
  season.replace_extension(".xlsx");
  const Said said = run();
  EXPECT_EQ(said.exit, 2);
  EXPECT_THAT(said.err, HasSubstr("a season is kept as .ods"));
}

} // namespace
} // namespace wetspell::host
