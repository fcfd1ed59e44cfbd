#include "commands/desk.hpp"

#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "sheet/findings_sheet.hpp"
#include "sheet/owned.hpp"
#include "sheet/prepare_rows.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/undo_step.hpp"
#include "summary/ask_sheet.hpp"
#include "summary/blocks.hpp"
#include "summary/numbers.hpp"
#include "summary/pool_page.hpp"
#include "summary/pools_sheet.hpp"
#include "summary/programme_sheet.hpp"
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
  OneUndoStep step(document, "Apply proposed replacements");
  constexpr std::size_t in_part = 40; // a write may be two changes: content, format
  for (std::size_t begin = 0; begin < changes.size(); begin += in_part) {
    const UndoPart part(document);
    for (std::size_t i = begin; i < std::min(begin + in_part, changes.size()); ++i)
      write(document, changes[i].place, changes[i].content);
  }
  const Checked after = look(document);
  writeFindings(document, after.season, after.report);
  step.keep();
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
  OneUndoStep step(document, "Check the season");
  writeFindings(document, checked.season, checked.report);
  step.keep();
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

void makeRoom(const SheetDocument& document, TableKind table, std::size_t rows) {
  requireChangeable(document);
  const Season season = seasonOf(document);
  OneUndoStep step(document, "Make room for more rows");
  prepareRows(document, season, table, rows);
  step.keep();
}

std::size_t clearSeason(const SheetDocument& document) {
  requireChangeable(document);
  const Season season = seasonOf(document);
  requireFindingsWritable(document, season);
  OneUndoStep step(document, "Clear the findings");
  const std::size_t rows = clearFindings(document, season);
  step.keep();
  return rows;
}

Summarised sumUp(const SheetDocument& document, const Progress& progress) {
  constexpr double check_share = 0.4; // of the whole work
  const auto part = [&](double from, double to) {
    return [&progress, from, to](double share) { return !progress || progress(from + share * (to - from)); };
  };
  Summarised summed{look(document, part(0, check_share)), {}};
  SummaryOptions options;
  options.progress = part(check_share, 1);
  options.group_by = summed.checked.season.settings.group_by;
  if (!summed.checked.report.cancelled)
    summed.summary = summarise(summed.checked.season, summed.checked.report, options);
  if (summed.checked.report.cancelled || summed.summary.cancelled)
    refuse("The summary was cancelled; nothing was written.");
  return summed;
}

Summarised summariseSeason(const Context& context, const SheetDocument& document, const Progress& progress) {
  requireChangeable(document);
  for (const char* name : {poolsBlock, programmeBlock, numbersBlock})
    if (const auto block = ownedBlock(document, name))
      requireUnprotected(*block);
  Summarised summed = sumUp(document, progress);
  const SeasonHistory history = counted_history(summed.checked.season, summed.checked.report);
  OneUndoStep step(document, "Summarise the season");
  {
    const UndoPart part(document);
    writePools(document, history, summed.summary);
  }
  Numbers numbers;
  {
    const UndoPart part(document);
    numbers = writeNumbers(document, history, summed.summary, SummaryOptions{});
  }
  {
    const UndoPart part(document);
    writeProgramme(context, document, history, summed.summary, numbers);
  }
  step.keep();
  return summed;
}

std::string pageOfPool(const Context& context, const SheetDocument& document, const std::string& code,
                       const Progress& progress) {
  requireChangeable(document);
  if (const auto block = ownedBlock(document, pageBlock(code)))
    requireUnprotected(*block);
  const Summarised summed = sumUp(document, progress);
  const auto& pools = summed.checked.season.pools;
  const auto found =
      std::find_if(pools.begin(), pools.end(), [&](const Pool& pool) { return pool.code == code; });
  if (found == pools.end())
    refuse("There is no pool with the code '" + code + "'.");
  const SeasonHistory history = counted_history(summed.checked.season, summed.checked.report);
  OneUndoStep step(document, toOffice("Page of " + code));
  std::string sheet = writePoolPage(context, document, history, summed.checked.report,
                                    summed.summary.pools[static_cast<std::size_t>(found - pools.begin())]);
  step.keep();
  return sheet;
}

std::size_t askListOf(const SheetDocument& document, const Progress& progress) {
  requireChangeable(document);
  if (const auto block = ownedBlock(document, askBlock))
    requireUnprotected(*block);
  const Checked checked = look(document, progress);
  if (checked.report.cancelled)
    refuse("The check was cancelled; nothing was written.");
  const std::vector<AskList> lists = ask_lists(checked.season, checked.report);
  OneUndoStep step(document, "Ask list");
  writeAskList(document, checked.season, lists);
  step.keep();
  return lists.size();
}

std::string poolOfRow(const SheetDocument& document, const Season& season, const std::string& sheet,
                      std::size_t row) {
  if (const auto pool = poolOfLine(document, season, sheet, row))
    return season.pools[*pool].code;
  const auto stands = [&](TableKind kind, std::uint32_t record) {
    const Located& where = season.where(kind);
    return where.found() && where.table->sheet() == sheet && where.table->sheet_row(record) == row;
  };
  for (const Pool& pool : season.pools)
    if (stands(TableKind::pools, pool.row))
      return pool.code;
  const auto codeOf = [&](const Ref& pool) {
    return pool.known() ? season.pools[static_cast<std::size_t>(pool.index)].code : std::string();
  };
  for (const Visit& visit : season.visits)
    if (stands(TableKind::visits, visit.row))
      return codeOf(visit.pool);
  for (const LifeCount& count : season.life)
    if (stands(TableKind::life, count.row))
      return codeOf(count.pool);
  return {};
}

} // namespace wetspell::addin
