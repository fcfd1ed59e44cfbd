#include "command/program.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {
namespace {

TEST(AskCommand, WritesOneTextForEveryPerson) {
  const Folder folder;
  write(folder / "visits.csv", "Pool,Date,Person,Water,Depth\n"
                               "P1,2026-04-10,R/W,no standing water,20\n"
                               "P1,2026-04-17,AL,no standing water,19\n");
  const Said said = run({"ask", (folder / "visits.csv").string(), "--out", (folder / "out").string()});
  ASSERT_EQ(said.exit, 0) << said.err;
  EXPECT_NE(said.out.find("Hello AL,"), std::string::npos) << said.out;
  const std::string one = text_of(folder / "out/ask-R-W.txt");
  EXPECT_NE(one.find("Pool P1, 2026-04-10"), std::string::npos) << one;
  EXPECT_EQ(one.find("2026-04-17"), std::string::npos) << "another person's visit";
}

TEST(AskCommand, SaysWhenThereIsNothingToAskAndWhatItCannotRead) {
  const Folder folder;
  write(folder / "visits.csv", "Pool,Date,Person,Water,Depth\nP1,2026-04-10,RW,standing water,20\n");
  EXPECT_EQ(run({"ask", (folder / "visits.csv").string()}).out, "Nobody is to be asked anything.\n");
  EXPECT_EQ(run({"ask", (folder / "none.csv").string()}).exit, 2);
  EXPECT_EQ(run({"ask"}).exit, 2);
}

} // namespace
} // namespace wetspell::test
