// Every rule against its fixture: where it must hold, where it must fail and how, where it cannot decide.
#include "engine/check/fixture.hpp"
#include "engine/check/question_words.hpp"

#include <gtest/gtest.h>

#include <regex>

namespace wetspell {
namespace {

using test::ExpectedFinding;
using test::FixtureSection;

std::string told(const Finding& finding) {
  std::string text = std::string(spec(finding.field).name) + " in " + to_text(finding.place) + " (\"" +
                     finding.value + "\"): " + finding.message;
  for (const Change& change : finding.changes)
    text += " [" + to_text(change.place) + " = " + to_text(change.content) + "]";
  return text;
}

bool fits(const Finding& finding, const ExpectedFinding& expected) {
  return spec(finding.field).name == expected.field && finding.place.row == expected.row + 1 &&
         finding.message.find(expected.text) != std::string::npos;
}

class RuleFixture : public testing::TestWithParam<const RuleSpec*> {
protected:
  /// The rule's own findings in a section, and its tally.
  void run(const FixtureSection& section) {
    SCOPED_TRACE(test::fixture_path(GetParam()->name) + ":" + std::to_string(section.line));
    auto season = read_season(section.tables, test::fixture_today());
    ASSERT_TRUE(season.has_value()) << season.error().text;
    EXPECT_TRUE(season.value().remarks.empty()) << season.value().remarks.front();
    const CheckReport report = check(season.value());
    std::vector<const Finding*> own;
    for (const Finding& finding : report.findings)
      if (finding.rule == GetParam())
        own.push_back(&finding);
    const Tally& tally = report.tallies[static_cast<std::size_t>(GetParam() - rules().data())];
    if (section.kind == "holds") {
      EXPECT_GE(tally.holds, 1U);
      EXPECT_EQ(tally.undecided, 0U);
      EXPECT_EQ(tally.could_not_run, 0U);
    } else if (section.kind == "undecided") {
      EXPECT_GE(tally.undecided, 1U);
      EXPECT_EQ(tally.could_not_run, 0U);
    }
    if (section.kind == "fails") {
      EXPECT_GE(tally.fails, 1U);
      EXPECT_FALSE(section.expected.empty());
    } else {
      EXPECT_EQ(tally.fails, 0U);
    }
    compare(own, section.expected);
  }

private:
  static void compare(std::vector<const Finding*>& own, const std::vector<ExpectedFinding>& all) {
    for (const ExpectedFinding& expected : all) {
      const auto found =
          std::find_if(own.begin(), own.end(), [&](const Finding* f) { return fits(*f, expected); });
      if (found == own.end()) {
        ADD_FAILURE() << "missing: " << expected.field << " " << expected.row << " \"" << expected.text
                      << "\"";
        continue;
      }
      lint(**found);
      replacements(**found, expected);
      own.erase(found);
    }
    for (const Finding* finding : own)
      ADD_FAILURE() << "not expected: " << told(*finding);
  }

  static void lint(const Finding& finding) {
    const std::string& message = finding.message;
    EXPECT_LE(message.size(), 220U) << message;
    EXPECT_EQ(message.back(), '.') << message;
    EXPECT_EQ(message.find("  "), std::string::npos) << message;
    EXPECT_FALSE(std::regex_search(message, std::regex("\\b[Rr]ows? [0-9]")))
        << "it is told to whoever was there, who sees no rows: " << message;
    // A blank cell has nothing to quote: there a value beside it stands for it.
    const std::string quoted = finding.value.empty() ? "\"" : finding.value;
    EXPECT_TRUE(message.find_first_of("0123456789") != std::string::npos ||
                message.find(quoted) != std::string::npos)
        << "neither a number nor what was typed: " << message;
    EXPECT_FALSE(finding.advice.empty());
    EXPECT_EQ(test::wrong_in_question(finding.asked()), "") << finding.asked();
    EXPECT_EQ(finding.key.size(), 16U);
    for (const Change& change : finding.changes)
      EXPECT_FALSE(change.content.empty()) << "a proposal must not delete what was typed: " << message;
  }

  static void replacements(const Finding& finding, const ExpectedFinding& expected) {
    EXPECT_EQ(finding.changes.size(), expected.replacements.size()) << told(finding);
    for (const auto& [field, content] : expected.replacements) {
      const auto known = field_named(finding.table, field);
      ASSERT_TRUE(known.has_value()) << field;
      EXPECT_TRUE(std::any_of(
          finding.changes.begin(), finding.changes.end(),
          [&content = content](const Change& change) { return to_text(change.content) == content; }))
          << field << " = " << content << " is not proposed: " << told(finding);
    }
  }
};

TEST_P(RuleFixture, HoldsFailsAndCannotDecide) {
  const auto sections = test::load_fixture(test::fixture_path(GetParam()->name));
  for (const char* kind : {"holds", "fails", "undecided"})
    EXPECT_TRUE(std::any_of(sections.begin(), sections.end(),
                            [&](const FixtureSection& section) { return section.kind == kind; }))
        << GetParam()->name << " has no section \"" << kind << "\"";
  for (const FixtureSection& section : sections) {
    ASSERT_TRUE(section.kind == "holds" || section.kind == "fails" || section.kind == "undecided")
        << section.kind;
    run(section);
  }
}

std::vector<const RuleSpec*> all_rules() {
  std::vector<const RuleSpec*> all;
  for (const RuleSpec& rule : rules())
    all.push_back(&rule);
  return all;
}

std::string test_name(const testing::TestParamInfo<const RuleSpec*>& tested) {
  std::string name(tested.param->name);
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(All, RuleFixture, testing::ValuesIn(all_rules()), test_name);

} // namespace
} // namespace wetspell
