#include "command/program.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace wetspell::test {
namespace {

using nlohmann::json;

constexpr const char* clean = "Pool,Date,Person,Water,Depth\nP1,2026-04-10,RW,standing water,20\n";
constexpr const char* spoiled = "Pool,Date,Person,Water,Depth\nP1,2026-04-10,RW,no standing water,20\n";

TEST(CheckCommand, LeavesZeroWhenNothingIsToBeFixed) {
  const Folder folder;
  write(folder / "visits.csv", clean);
  const Said said = run({"check", (folder / "visits.csv").string()});
  EXPECT_EQ(said.exit, 0) << said.out << said.err;
}

TEST(CheckCommand, LeavesOneAndSaysWhereWhenSomethingIs) {
  const Folder folder;
  write(folder / "visits.csv", spoiled);
  const Said said = run({"check", (folder / "visits.csv").string(), "--format", "json"});
  EXPECT_EQ(said.exit, 1) << said.out << said.err;
  const json report = json::parse(said.out);
  EXPECT_EQ(report["file"], (folder / "visits.csv").string());
  EXPECT_EQ(report["rows_checked"], 1);
  bool found = false;
  for (const json& finding : report["findings"]) {
    for (const char* field :
         {"rule", "level", "sheet", "row", "column", "field", "value", "message", "advice", "replacement"})
      EXPECT_TRUE(finding.contains(field)) << field;
    if (finding["level"] != "fix")
      continue;
    found = true;
    EXPECT_EQ(finding["sheet"], "visits");
    EXPECT_EQ(finding["row"], 2);
  }
  EXPECT_TRUE(found) << said.out;
}

TEST(CheckCommand, ReadsAFolderOfTables) {
  const Folder folder;
  write(folder / "visits.csv", "Pool,Date,Person\nP2,2026-04-10,RW\n");
  write(folder / "pools.csv", "Pool code,Pool name\nP1,Split Rock\n");
  const Said said = run({"check", folder / ""});
  EXPECT_NE(said.out.find("P2"), std::string::npos) << said.out << said.err;
}

TEST(CheckCommand, WritesItsFindingsIntoAFolder) {
  const Folder folder;
  write(folder / "visits.csv", spoiled);
  const Said said = run({"check", (folder / "visits.csv").string(), "--out", (folder / "out").string()});
  EXPECT_EQ(said.exit, 1);
  for (const char* ending : {".txt", ".csv", ".json"})
    EXPECT_FALSE(text_of(folder / ("out/visits-findings" + std::string(ending))).empty()) << ending;
  EXPECT_EQ(text_of(folder / "visits.csv"), spoiled);
}

TEST(CheckCommand, SeveralFilesGiveAListAndTheWorstExit) {
  const Folder folder;
  write(folder / "a.csv", clean);
  write(folder / "b.csv", spoiled);
  const Said said = run({"check", (folder / "a.csv").string(), (folder / "b.csv").string(), "-f", "json"});
  EXPECT_EQ(said.exit, 1);
  EXPECT_EQ(json::parse(said.out).size(), 2u);
}

TEST(CheckCommand, LeavesTwoAndSaysWhyWhenItCannotRead) {
  const Folder folder;
  write(folder / "letter.csv", "Dear all,\nthe pools are full.\n");
  write(folder / "open.csv", "Pool,Date\n\"P1,2026-04-10\n");
  for (const auto& file : {folder / "none.csv", folder / "letter.csv", folder / "open.csv"}) {
    const Said said = run({"check", file.string()});
    EXPECT_EQ(said.exit, 2) << file;
    EXPECT_FALSE(said.err.empty()) << file;
  }
  EXPECT_EQ(run({"check"}).exit, 2);
  EXPECT_EQ(run({"check", (folder / "none.csv").string(), "--format", "pdf"}).exit, 2);
}

} // namespace
} // namespace wetspell::test
