#include "command/program.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <sstream>

namespace wetspell::test {
namespace {

using nlohmann::json;

std::vector<json> read(const std::vector<std::string>& options, std::string_view input) {
  std::vector<std::string> words{"read"};
  words.insert(words.end(), options.begin(), options.end());
  const Said said = run(words, input);
  EXPECT_EQ(said.exit, 0) << said.err;
  std::vector<json> lines;
  std::istringstream out(said.out);
  for (std::string line; std::getline(out, line);)
    lines.push_back(json::parse(line));
  return lines;
}

TEST(ReadCommand, GivesOneObjectALineWithEveryField) {
  const auto lines =
      read({"--kind", "depth", "--assume", "in"}, "25\n2' 1 1/2\"\ndry\nn/a\n>48\n24-26\n\n12 14\n");
  ASSERT_EQ(lines.size(), 8u);
  for (const json& line : lines)
    for (const char* field : {"text", "status", "si", "si_high", "count", "unit", "reason"})
      EXPECT_TRUE(line.contains(field)) << field << " in " << line;
  // 1 in = 0.0254 m exactly (NIST SP 811)
  EXPECT_DOUBLE_EQ(lines[0]["si"], 25 * 0.0254);
  EXPECT_DOUBLE_EQ(lines[1]["si"], 25.5 * 0.0254);
  EXPECT_EQ(lines[2]["si"], 0);
  EXPECT_EQ(lines[3]["status"], "missing");
  EXPECT_TRUE(lines[3]["si"].is_null());
  EXPECT_EQ(lines[4]["status"], "over");
  EXPECT_EQ(lines[5]["status"], "range");
  EXPECT_DOUBLE_EQ(lines[5]["si_high"], 26 * 0.0254);
  EXPECT_EQ(lines[6]["status"], "missing");
  EXPECT_EQ(lines[7]["status"], "bad");
  EXPECT_TRUE(lines[7]["si"].is_null());
  EXPECT_NE(lines[7]["reason"].get<std::string>().find("two values"), std::string::npos);
}

TEST(ReadCommand, CountsPacesAndSteps) {
  const auto lines = read({"--kind", "length"}, "23 paces\n46 steps\n");
  EXPECT_EQ(lines[0]["status"], "paces");
  EXPECT_EQ(lines[0]["count"], 23);
  EXPECT_TRUE(lines[0]["si"].is_null());
  EXPECT_EQ(lines[1]["status"], "steps");
  EXPECT_EQ(lines[1]["count"], 46);
}

TEST(ReadCommand, SaysDatesInIso) {
  const auto lines = read({"--kind", "date"}, "21 March 2026\n3/4/2026\n");
  EXPECT_EQ(lines[0]["si"], "2026-03-21");
  EXPECT_EQ(lines[1]["status"], "bad");
  EXPECT_EQ(read({"--kind", "date", "--date-order", "day-first"}, "3/4/2026\n")[0]["si"], "2026-04-03");
}

TEST(ReadCommand, TakesLinesOfAnyBytes) {
  const auto lines = read({"--kind", "depth"}, "\xFF\xFE 12\n\x01\n");
  ASSERT_EQ(lines.size(), 2u);
  EXPECT_EQ(lines[0]["status"], "bad");
  EXPECT_EQ(lines[1]["status"], "bad");
}

TEST(ReadCommand, RefusesInWordsWhatItDoesNotKnow) {
  const Said kind = run({"read", "--kind", "colour"});
  EXPECT_EQ(kind.exit, 2);
  EXPECT_NE(kind.err.find("'colour'"), std::string::npos);
  const Said unit = run({"read", "--kind", "depth", "--assume", "°F"});
  EXPECT_EQ(unit.exit, 2);
  EXPECT_NE(unit.err.find("not a unit of depth"), std::string::npos);
}

} // namespace
} // namespace wetspell::test
