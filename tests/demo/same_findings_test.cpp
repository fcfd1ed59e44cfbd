// The demo season in the office and as CSV tables by the engine alone: the same check must find the same. And
// what came back of its handouts stands in the season.
#include "demo/program.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <set>

#include <unistd.h>

namespace wetspell::demo {
namespace {

using nlohmann::json;

std::set<std::string> findings_of(const json& report) {
  std::set<std::string> all;
  for (const json& finding : report["findings"])
    all.insert(finding["rule"].get<std::string>() + " | " + finding["table"].get<std::string>() + " | " +
               std::to_string(finding["record"].get<int>()) + " | " + finding["field"].get<std::string>() +
               " | " + finding["value"].get<std::string>());
  return all;
}

TEST(DemoSeason, IsCheckedAlikeInTheOfficeAndWithoutItAndGathersItsHandouts) {
  const auto out = std::filesystem::temp_directory_path() / ("wetspell-demo-" + std::to_string(::getpid()));
  const std::string script = WETSPELL_DEMO "/season '" WETSPELL_BUILD "' '" + out.string() + "'";
  ASSERT_EQ(test::shell(script), 0);
  const json office = json::parse(test::text_of(out / "findings.json"));
  const int left = test::shell("'" WETSPELL_BUILD "/wetspell' check '" + (out / "tables").string() +
                               "' --format json >'" + (out / "tables.json").string() + "'");
  EXPECT_EQ(left, 1); // the season has cells to fix
  const json alone = json::parse(test::text_of(out / "tables.json"));

  EXPECT_GT(findings_of(office).size(), 30u);
  EXPECT_EQ(findings_of(office), findings_of(alone));
  for (const char* file : {"season-checked.ods", "season-checked.pdf", "page-01.png", "summary.txt",
                           "came-back/handout-DET.xlsx", "season-gathered.ods"})
    EXPECT_TRUE(std::filesystem::exists(out / file)) << file;
  const std::string summary = test::text_of(out / "summary.txt");
  for (const char* words : {"4 files came back with 6 visits: 6 stand in the season, 134 of their 134 cells",
                            "Cells that came in two versions: 1, side by side to choose between: 1.",
                            "Of 5 answers 4 stand at their findings", "before 0 were changed."})
    EXPECT_NE(summary.find(words), std::string::npos) << words << "\n" << summary;
  std::filesystem::remove_all(out);
}

} // namespace
} // namespace wetspell::demo
