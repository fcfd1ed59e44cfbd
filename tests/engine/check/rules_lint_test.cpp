// The catalogue of rules as a whole: names, words, levels, needs.
#include "check/rule.hpp"
#include "engine/check/question_words.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace wetspell {
namespace {

TEST(Rules, AreAtLeastFortyFive) {
  EXPECT_GE(rules().size(), 45U);
}

TEST(Rules, NamesAreKebabCaseAndUnique) {
  std::set<std::string_view> seen;
  for (const RuleSpec& rule : rules()) {
    EXPECT_TRUE(seen.insert(rule.name).second) << rule.name;
    EXPECT_FALSE(rule.name.empty());
    EXPECT_EQ(rule.name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-"), std::string_view::npos)
        << rule.name;
    EXPECT_NE(rule.name.front(), '-');
    EXPECT_NE(rule.name.back(), '-');
    EXPECT_EQ(rule_named(rule.name), &rule);
  }
  EXPECT_EQ(rule_named("no-such-rule"), nullptr);
}

TEST(Rules, ExpectationIsOneSentenceWithoutCodes) {
  for (const RuleSpec& rule : rules()) {
    const auto text = rule.expectation;
    ASSERT_GE(text.size(), 15U) << rule.name;
    EXPECT_TRUE(text.front() >= 'A' && text.front() <= 'Z') << rule.name;
    EXPECT_NE(text.back(), '.') << rule.name << ": the pages add the period";
    EXPECT_EQ(text.find('_'), std::string_view::npos) << rule.name;
  }
}

TEST(Rules, AdviceTellsWhatToDo) {
  // Words with which an instruction begins; a new rule may add one.
  const std::set<std::string_view> verbs{
      "Ask",   "Check",  "Look",  "Write", "Correct", "Compare", "Read", "Choose", "Measure", "Walk", "Count",
      "Take",  "Note",   "Swap",  "Tell",  "Add",     "Use",     "Keep", "Move",   "Clear",   "Find", "Enter",
      "Visit", "Remove", "Leave", "Mark",  "Give",    "Set",     "Fill", "Match",  "Confirm", "See"};
  for (const RuleSpec& rule : rules()) {
    const auto text = rule.advice;
    ASSERT_FALSE(text.empty()) << rule.name;
    EXPECT_TRUE(verbs.contains(text.substr(0, text.find_first_of(" ,")))) << rule.name << ": " << text;
    EXPECT_EQ(text.find('_'), std::string_view::npos) << rule.name;
    EXPECT_EQ(text.back(), '.') << rule.name;
  }
}

TEST(Rules, QuestionSpeaksToWhoeverWasThere) {
  for (const RuleSpec& rule : rules()) {
    ASSERT_FALSE(rule.question.empty()) << rule.name;
    EXPECT_EQ(test::wrong_in_question(rule.question), "") << rule.name << ": " << rule.question;
    EXPECT_LE(rule.question.size(), 120U) << rule.name;
  }
}

TEST(Rules, SourceIsStated) {
  for (const RuleSpec& rule : rules())
    EXPECT_FALSE(rule.source.empty()) << rule.name;
}

TEST(Rules, EveryLevelScopeAndFamilyOccurs) {
  std::set<Level> levels;
  std::set<Scope> scopes;
  std::set<Family> families;
  for (const RuleSpec& rule : rules()) {
    levels.insert(rule.level);
    scopes.insert(rule.scope);
    families.insert(rule.family);
  }
  EXPECT_EQ(levels.size(), 3U);
  EXPECT_EQ(scopes.size(), 4U);
  EXPECT_EQ(families.size(), 8U);
}

TEST(Rules, StandFamilyByFamily) {
  const auto all = rules();
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end(),
                             [](const RuleSpec& a, const RuleSpec& b) { return a.family < b.family; }));
}

TEST(Rules, NeedFieldsOfTheTableTheyLookAt) {
  for (const RuleSpec& rule : rules()) {
    const auto needs = [&](TableKind table) {
      const auto of_table = [&](Field field) { return spec(field).table == table; };
      return std::any_of(rule.needs.begin(), rule.needs.end(), of_table) ||
             std::any_of(rule.needs_one_of.begin(), rule.needs_one_of.end(), of_table);
    };
    TableKind looked_at = TableKind::visits;
    if (std::holds_alternative<PoolRule>(rule.look))
      looked_at = TableKind::pools;
    else if (std::holds_alternative<PersonRule>(rule.look))
      looked_at = TableKind::people;
    else if (std::holds_alternative<LifeRule>(rule.look) ||
             std::holds_alternative<FollowingLifeRule>(rule.look))
      looked_at = TableKind::life;
    EXPECT_TRUE(needs(looked_at)) << rule.name;
  }
}

} // namespace
} // namespace wetspell
