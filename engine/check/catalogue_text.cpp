#include "check/catalogue_text.hpp"

#include "check/rule.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

std::string capital(std::string_view text) {
  std::string words(text);
  if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
    words.front() = static_cast<char>(words.front() - 'a' + 'A');
  return words;
}

std::string columns(const RuleSpec& rule) {
  std::string listed;
  for (const Field field : rule.needs)
    listed += fmt::format("{}{} ({})", listed.empty() ? "" : ", ", spec(field).heading,
                          spec(spec(field).table).name);
  for (std::size_t i = 0; i < rule.needs_one_of.size(); ++i) {
    const FieldSpec& field = spec(rule.needs_one_of[i]);
    listed += i > 0 ? " or " : listed.empty() ? "" : ", ";
    listed += fmt::format("{} ({})", field.heading, spec(field.table).name);
  }
  return listed;
}

} // namespace

std::string rules_markdown() {
  std::string page = fmt::format(
      "# The rules of the check\n\n"
      "{} rules look at a season. Each counts the rows for which it holds, fails, cannot decide because "
      "something it needs is missing, or could not run because a column is not there.\n\n"
      "- **fix**: what stands there cannot be right.\n"
      "- **ask**: it is doubtful; the person who was there can tell.\n"
      "- **note**: nothing is wrong, but it is worth knowing.\n\n"
      "One mistake is reported once: when a rule has pointed to a cell with fix or ask, rules further down "
      "that "
      "rest on the same cell count the row as undecided. The limits that the rules compare with stand in "
      "[their own table](limits.md); a workbook can change every one.\n",
      rules().size());
  const RuleSpec* last = nullptr;
  for (const RuleSpec& rule : rules()) {
    if (last == nullptr || last->family != rule.family)
      page += fmt::format("\n## {}\n", capital(name(rule.family)));
    last = &rule;
    page += fmt::format("\n### {}\n\n{}.\n\n- Level: {}. Looks at: {}.\n- What to do: {}\n- Question to "
                        "whoever was there: {}\n- Needs: {}.\n- Source: {}.\n",
                        rule.name, rule.expectation, name(rule.level), name(rule.scope), rule.advice,
                        rule.question, columns(rule), rule.source);
  }
  return page;
}

} // namespace wetspell
