#include "gather/answers.hpp"

#include "season/choice.hpp"

#include <algorithm>

namespace wetspell {

namespace {

GivenAnswer& answer_to(std::vector<GivenAnswer>& all, const std::string& key) {
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const GivenAnswer& each) { return each.key == key; });
  return found == all.end() ? all.emplace_back(GivenAnswer{key, {}, {}}) : *found;
}

} // namespace

std::vector<GivenAnswer> with_answers(std::vector<GivenAnswer> held, const std::vector<CameFile>& came) {
  for (const CameFile& file : came)
    for (const CameAnswer& answer : file.answers) {
      GivenAnswer& given = answer_to(held, answer.key);
      const Choice word = choice_from(answer.text, answer_words());
      if (word.chosen() && given.answer.empty())
        given.answer = answer.text;
      const std::string note = file.file + ": " + answer.text;
      const bool said = word.chosen() && choice_from(given.answer, answer_words()).index == word.index;
      if (said || given.note.find(note) != std::string::npos)
        continue;
      given.note += (given.note.empty() ? "" : "; ") + note;
    }
  return held;
}

std::size_t newly_answered(const CheckReport& report, const std::vector<GivenAnswer>& held) {
  return static_cast<std::size_t>(
      std::count_if(report.findings.begin(), report.findings.end(), [&](const Finding& finding) {
        if (finding.answer.empty() && finding.note.empty())
          return false;
        return std::none_of(held.begin(), held.end(), [&](const GivenAnswer& each) {
          return each.key == finding.key && each.answer == finding.answer && each.note == finding.note;
        });
      }));
}

} // namespace wetspell
