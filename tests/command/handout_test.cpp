#include "command/program.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {
namespace {

/// What can be refused before an office is asked for anything; tests/host/handout has the rest.
class HandoutCommand : public ::testing::Test {
protected:
  Folder folder;
  std::string season = (folder / "visits.csv").string();
  std::string out = (folder / "out").string();

  void SetUp() override {
    write(season,
          "Pool,Date,Person,Water\nP1,2026-04-10,R/W,standing water\nP1,2026-04-17,AL,standing water\n");
  }
  [[nodiscard]] std::string refused(const std::vector<std::string>& more) const {
    std::vector<std::string> words{"handout"};
    words.insert(words.end(), more.begin(), more.end());
    const Said said = run(words);
    EXPECT_EQ(said.exit, 2) << said.out;
    EXPECT_EQ(said.out, "");
    return said.err;
  }
};

TEST_F(HandoutCommand, SaysWhomTheSeasonHas) {
  EXPECT_EQ(refused({season, "--person", "XX", "--out", out}),
            "wetspell handout: there is no person with the code 'XX'; the season has R/W, AL.\n");
}

TEST_F(HandoutCommand, WantsToKnowForWhomAndWhere) {
  EXPECT_NE(refused({season, "--out", out}).find("either --person CODE or --all"), std::string::npos);
  EXPECT_NE(refused({season, "--person", "AL", "--all", "--out", out}).find("either"), std::string::npos);
  EXPECT_NE(refused({season, "--all"}).find("--out DIR"), std::string::npos);
  EXPECT_NE(refused({"--all", "--out", out}).find("name one season"), std::string::npos);
}

TEST_F(HandoutCommand, NeverWritesOverWhatMayHaveBeenFilledIn) {
  std::filesystem::create_directories(out);
  write(folder / "out/handout-R-W.xlsx", "filled in");
  const std::string why = refused({season, "--all", "--out", out});
  EXPECT_NE(why.find("handout-R-W.xlsx is there already"), std::string::npos) << why;
  EXPECT_EQ(text_of(folder / "out/handout-R-W.xlsx"), "filled in");
  EXPECT_FALSE(std::filesystem::exists(folder / "out/handout-AL.ods"));
}

TEST_F(HandoutCommand, SaysWhatItCannotReadOrMake) {
  EXPECT_NE(refused({"none.csv", "--all", "--out", out}).find("no such file"), std::string::npos);
  EXPECT_NE(refused({season, "--all", "--out", season + "/below"}).find("cannot be made"), std::string::npos);
}

} // namespace
} // namespace wetspell::test
