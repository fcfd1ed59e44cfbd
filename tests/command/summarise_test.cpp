#include "command/program.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace wetspell::test {
namespace {

using nlohmann::json;

constexpr const char* visits = "Pool,Date,Person,Water,Depth\n"
                               "P1,2026-04-10,RW,standing water,20\n"
                               "P1,2026-05-10,RW,standing water,12\n"
                               "P2,2026-04-11,RW,no standing water,20\n";

const json* figure(const json& figures, std::string_view name) {
  for (const json& each : figures)
    if (each["name"] == name)
      return &each;
  return nullptr;
}

TEST(SummariseCommand, GivesFiguresAndWhatWasLeftOut) {
  const Folder folder;
  write(folder / "visits.csv", visits);
  const Said said = run({"summarise", (folder / "visits.csv").string(), "--format", "json"});
  ASSERT_EQ(said.exit, 0) << said.out << said.err;
  const json all = json::parse(said.out);
  EXPECT_EQ(all["file"], (folder / "visits.csv").string());
  ASSERT_EQ(all["pools"].size(), 2u);
  const json* deepest = figure(all["pools"][0]["figures"], "deepest");
  ASSERT_NE(deepest, nullptr) << said.out;
  for (const char* key : {"name", "value", "unit", "low", "high", "level", "n", "note"})
    EXPECT_TRUE(deepest->contains(key)) << key;
  EXPECT_NEAR((*deepest)["value"].get<double>(), 20, 1e-9);
  EXPECT_EQ((*deepest)["unit"], "in");
  EXPECT_EQ((*deepest)["n"], 2);
  ASSERT_EQ(all["left_out"].size(), 1u);
  EXPECT_EQ(all["left_out"][0]["row"], 4);
  EXPECT_EQ(all["left_out"][0]["pool"], "P2");
}

TEST(SummariseCommand, WritesItsThreeFormsIntoAFolder) {
  const Folder folder;
  write(folder / "visits.csv", visits);
  EXPECT_EQ(run({"summarise", (folder / "visits.csv").string(), "--out", (folder / "out").string()}).exit, 0);
  for (const char* ending : {".txt", ".csv", ".json"})
    EXPECT_FALSE(text_of(folder / ("out/visits-summary" + std::string(ending))).empty()) << ending;
  EXPECT_EQ(text_of(folder / "visits.csv"), visits);
}

TEST(SummariseCommand, SeveralSeasonsGiveAListAndWhatCannotBeReadIsTold) {
  const Folder folder;
  write(folder / "a.csv", visits);
  write(folder / "b.csv", visits);
  const Said both =
      run({"summarise", (folder / "a.csv").string(), (folder / "b.csv").string(), "-f", "json"});
  const json all = json::parse(both.out);
  ASSERT_EQ(all.size(), 3u) << "two seasons, and what they say together";
  EXPECT_TRUE(all[2]["trends"].empty()) << "two of one year show nothing";
  const Said one = run({"summarise", (folder / "a.csv").string(), (folder / "none.csv").string()});
  EXPECT_EQ(one.exit, 2);
  EXPECT_NE(one.out.find("Pool P1"), std::string::npos) << "what can be read is summarised";
  EXPECT_NE(one.err.find("none.csv: there is no such file"), std::string::npos) << one.err;
  EXPECT_EQ(run({"summarise"}).exit, 2);
  EXPECT_EQ(run({"summarise", (folder / "a.csv").string(), "--format", "pdf"}).exit, 2);
}

TEST(SummariseCommand, ThreeSeasonsGiveTrends) {
  const Folder folder;
  std::vector<std::string> words{"summarise", "--format", "json", "--out", (folder / "out").string()};
  for (const std::string year : {"2024", "2025", "2026"}) {
    const std::string depth = std::to_string(20 + 2 * (std::stoi(year) - 2024));
    write(folder / (year + ".csv"),
          "Pool,Date,Person,Water,Depth\nP1," + year + "-04-10,RW,standing water," + depth + "\n");
    words.push_back((folder / (year + ".csv")).string());
  }
  const Said said = run(words);
  ASSERT_EQ(said.exit, 0) << said.err;
  const json all = json::parse(said.out);
  ASSERT_EQ(all.size(), 4u);
  const json* found = nullptr;
  for (const json& trend : all[3]["trends"])
    if (trend["name"] == "deepest" && trend["pool"] == "P1" && trend["compared"] == "year by year")
      found = &trend;
  ASSERT_NE(found, nullptr) << said.out;
  EXPECT_NEAR((*found)["slope"].get<double>(), 2, 1e-9) << "inches a year";
  EXPECT_EQ((*found)["unit"], "in");
  EXPECT_EQ((*found)["years"], json({2024.0, 2025.0, 2026.0}));
  EXPECT_NE((*found)["note"].get<std::string>().find("with 3 years"), std::string::npos);
  for (const char* ending : {"txt", "csv", "json"})
    EXPECT_FALSE(text_of(folder / ("out/trends." + std::string(ending))).empty()) << ending;
}

TEST(SummariseCommand, GroupsThatAreNotThereAreTold) {
  const Folder folder;
  std::filesystem::create_directory(folder / "season");
  write(folder / "season/visits.csv", "Pool,Date,Person,Water,Depth\nP1,2026-04-10,RW,standing water,20\n");
  write(folder / "season/pools.csv", "Pool,Owner\nP1,Town\n");
  const std::string season = (folder / "season").string();
  const std::string told = "The pools' table has no column 'County' to group the figures by.";
  const Said text = run({"summarise", season, "--by", "Owner, County"});
  EXPECT_NE(text.out.find(told), std::string::npos) << text.out;
  const Said csv = run({"summarise", season, "--by", "Owner, County", "--format", "csv"});
  EXPECT_NE(csv.err.find(told), std::string::npos) << csv.err;
  const Said as_json = run({"summarise", season, "--by", "County", "--format", "json"});
  EXPECT_EQ(json::parse(as_json.out)["remarks"], json({told}));
}

TEST(PoolCommand, WantsAWorkbookAndACode) {
  EXPECT_EQ(run({"pool"}).exit, 2);
  const Folder folder;
  write(folder / "visits.csv", visits);
  const Said said = run({"pool", (folder / "visits.csv").string(), "P1", "--out", (folder / "out").string()});
  EXPECT_EQ(said.exit, 2);
  EXPECT_NE(said.err.find("is no workbook"), std::string::npos) << said.err;
}

} // namespace
} // namespace wetspell::test
