#include "command/program.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace wetspell::test {
namespace {

TEST(Program, SaysItsVersionAndHelpsEverywhere) {
  EXPECT_EQ(run({"--version"}).out.substr(0, 9), "wetspell ");
  EXPECT_EQ(run({"--help"}).exit, 0);
  for (const char* command : {"check", "read", "new", "rules", "functions", "fields", "limits"}) {
    const Said said = run({command, "--help"});
    EXPECT_EQ(said.exit, 0) << command;
    EXPECT_EQ(said.out.substr(0, 9), "wetspell ") << command;
    EXPECT_NE(said.out.find("--help"), std::string::npos) << command;
  }
}

TEST(Program, RefusesUnknownCommandsAndOptions) {
  EXPECT_EQ(run({"chek"}).exit, 2);
  EXPECT_EQ(run({"rules", "--colour"}).exit, 2);
  EXPECT_EQ(run({}).exit, 2);
}

TEST(Program, ListsEveryCatalogueInThreeForms) {
  for (const char* command : {"rules", "functions", "fields", "limits"}) {
    EXPECT_GT(nlohmann::json::parse(run({command, "--format", "json"}).out).size(), 10u) << command;
    EXPECT_FALSE(run({command}).out.empty());
    EXPECT_EQ(run({command, "--format", "markdown"}).out.front(), '#') << command;
    EXPECT_EQ(run({command, "--format", "xml"}).exit, 2);
  }
  EXPECT_GE(nlohmann::json::parse(run({"rules", "--format", "json"}).out).size(), 45u);
}

TEST(Program, NeverWritesANewWorkbookOverAnOldOne) {
  const Folder folder;
  write(folder / "season.ods", "mine");
  EXPECT_EQ(run({"new", (folder / "season.ods").string()}).exit, 2);
  EXPECT_EQ(text_of(folder / "season.ods"), "mine");
  EXPECT_EQ(run({"new", (folder / "season.xls").string()}).exit, 2);
}

} // namespace
} // namespace wetspell::test
