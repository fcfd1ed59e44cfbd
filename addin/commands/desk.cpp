#include "commands/desk.hpp"

#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "sheet/findings_sheet.hpp"
#include "sheet/prepare_rows.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/undo_step.hpp"
#include "table/day.hpp"

#include <algorithm>
#include <set>

namespace wetspell::addin {

namespace {

Season seasonOf(const SheetDocument& document) {
  auto season = read_season(tablesOf(document), serial_of_today());
  if (!season)
    refuse(season.error().text);
  return std::move(season).value();
}

/// The changes of the chosen findings. Two findings may propose different contents for one cell: the first
/// counts.
template <class Chosen>
std::size_t apply(const SheetDocument& document, const Checked& before, Chosen chosen) {
  std::vector<Change> changes;
  std::set<std::string> cells;
  std::size_t answered = 0;
  for (const Finding& finding : before.report.findings) {
    if (finding.changes.empty() || !finding.open() || !chosen(finding))
      continue;
    const bool free = std::none_of(finding.changes.begin(), finding.changes.end(), [&](const Change& change) {
      return cells.count(to_text(change.place)) > 0;
    });
    if (!free)
      continue;
    for (const Change& change : finding.changes) {
      requireWritable(document, change.place);
      cells.insert(to_text(change.place));
      changes.push_back(change);
    }
    ++answered;
  }
  if (changes.empty())
    return 0;
  requireChangeable(document);
  requireFindingsWritable(document, before.season); // before anything is changed
  const UndoStep step(document, "Apply proposed replacements");
  for (const Change& change : changes)
    write(document, change.place, change.content);
  const Checked after = look(document);
  writeFindings(document, after.season, after.report);
  return answered;
}

} // namespace

Checked look(const SheetDocument& document, const Progress& progress) {
  Checked checked{seasonOf(document), {}};
  const std::vector<GivenAnswer> answers = answers_in(checked.season);
  CheckOptions options;
  options.answers = answers;
  options.progress = progress;
  checked.report = wetspell::check(checked.season, options);
  return checked;
}

Checked checkSeason(const SheetDocument& document, const Progress& progress) {
  requireChangeable(document);
  Checked checked = look(document, progress);
  requireFindingsWritable(document, checked.season);
  const UndoStep step(document, "Check the season");
  writeFindings(document, checked.season, checked.report);
  return checked;
}

std::size_t applyMarked(const SheetDocument& document, const std::vector<std::string>& marks) {
  return apply(document, look(document), [&](const Finding& finding) {
    return std::find(marks.begin(), marks.end(), finding.key) != marks.end();
  });
}

std::size_t applyLevel(const SheetDocument& document, std::string_view word) {
  const Level level = levelNamed(word);
  return apply(document, look(document),
               [&](const Finding& finding) { return finding.rule->level == level; });
}

Level levelNamed(std::string_view word) {
  for (const Level level : {Level::fix, Level::ask, Level::note})
    if (name(level) == word)
      return level;
  refuse("A level is fix, ask or note, not '" + std::string(word) + "'.");
}

const Finding* findingMarked(const Checked& checked, std::string_view mark) {
  const auto& findings = checked.report.findings;
  const auto found =
      std::find_if(findings.begin(), findings.end(), [&](const Finding& each) { return each.key == mark; });
  return found == findings.end() ? nullptr : &*found;
}

void makeRoom(const SheetDocument& document, std::size_t rows) {
  requireChangeable(document);
  const Season season = seasonOf(document);
  const UndoStep step(document, "Make room for more visits");
  prepareRows(document, season, TableKind::visits, rows);
}

std::size_t clearSeason(const SheetDocument& document) {
  requireChangeable(document);
  const Season season = seasonOf(document);
  requireFindingsWritable(document, season);
  const UndoStep step(document, "Clear the findings");
  return clearFindings(document, season);
}

} // namespace wetspell::addin
