#include "check/catalogue_text.hpp"
#include "check/rule.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

TEST(RulesPage, HoldsEveryRule) {
  const std::string page = rules_markdown();
  for (const RuleSpec& rule : rules()) {
    EXPECT_NE(page.find("\n### " + std::string(rule.name) + "\n"), std::string::npos) << rule.name;
    EXPECT_NE(page.find(rule.expectation), std::string::npos) << rule.name;
  }
}

TEST(RulesPage, NamesEachFamilyOnce) {
  const std::string page = rules_markdown();
  std::size_t headings = 0;
  for (std::size_t at = page.find("\n## "); at != std::string::npos; at = page.find("\n## ", at + 1))
    ++headings;
  EXPECT_EQ(headings, 8U);
}

} // namespace
} // namespace wetspell
