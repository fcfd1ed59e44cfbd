#include "commands/commands.hpp"

#include "audit/audit_tables.hpp"
#include "audit/blocks.hpp"
#include "check/findings_table.hpp"
#include "commands/choose.hpp"
#include "commands/desk.hpp"
#include "commands/handouts.hpp"
#include "commands/talk.hpp"
#include "commands/window.hpp"
#include "exchange/gather_report.hpp"
#include "gather/gather.hpp"
#include "gather/gathered_sheets.hpp"
#include "sheet/findings_sheet.hpp"
#include "summary/ask_sheet.hpp"
#include "summary/blocks.hpp"

#include <algorithm>
#include <array>

namespace wetspell::addin {

namespace {

struct Growing {
  TableKind table;
  std::size_t more; ///< rows at a time
};
/// Tables that grow with a season; the first one where the cursor stands in none of them.
constexpr std::array<Growing, 5> growing{{{TableKind::visits, 500},
                                          {TableKind::life, 500},
                                          {TableKind::pools, 100},
                                          {TableKind::people, 100},
                                          {TableKind::species, 50}}};

std::string check(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  std::string words;
  {
    ProgressWindow progress(window.context, window.frame, "Checking the season");
    const Checked checked = checkSeason(document, [&](double share) { return progress.show(share); });
    words = verdict(checked.report);
    for (const std::string& remark : checked.season.remarks)
      words += "\n" + remark;
  }
  const Season after = look(document).season; // the findings sheet may be new
  if (const auto place = after.place(Field::finding_where,
                                     static_cast<std::uint32_t>(after.where(TableKind::findings).first_row)))
    turnTo(window.frame, *place);
  return words;
}

/// The marks of the findings in the selected rows of the findings sheet; refuses when there are none.
std::vector<std::string> selectedMarks(const Window& window, const Season& season) {
  const auto selection = selectionIn(window.frame);
  const Located& where = season.where(TableKind::findings);
  std::vector<std::string> marks;
  if (selection && where.found() && selection->sheet == where.table->sheet())
    marks = keysInRows(season, selection->first, selection->last);
  if (marks.empty())
    refuse("Put the cursor on a finding first: a row of the findings sheet.");
  return marks;
}

std::string counted(std::size_t applied) {
  if (applied == 0)
    return "Nothing was changed: there is no open finding with a proposed replacement.";
  return std::to_string(applied) + (applied == 1 ? " replacement was" : " replacements were") +
         " made; one undo takes them back.";
}

std::string applySelected(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  return counted(applyMarked(document, selectedMarks(window, look(document).season)));
}

std::string applyFix(const Window& window) {
  return counted(applyLevel(documentOf(window.frame), "fix"));
}
std::string applyAsk(const Window& window) {
  return counted(applyLevel(documentOf(window.frame), "ask"));
}

std::string showPlace(const Window& window, const Place& place) {
  turnTo(window.frame, place);
  return isRowVisible(documentOf(window.frame), place)
             ? std::string()
             : "Row " + std::to_string(place.row) + " of '" + place.sheet +
                   "' is hidden just now. Take the filter off, or show the row, to see it.";
}

/// By its mark and not by the address written in the row: the visits may have been sorted since.
std::string goToFinding(const Window& window) {
  const Checked checked = look(documentOf(window.frame));
  const std::string mark = selectedMarks(window, checked.season).front();
  const Finding* finding = findingMarked(checked, mark);
  if (finding == nullptr)
    refuse("What this finding is about has changed since the check; check the season again.");
  return showPlace(window, finding->place);
}

std::string backToFinding(const Window& window) {
  const Checked checked = look(documentOf(window.frame));
  const auto selection = selectionIn(window.frame);
  const Finding* best = nullptr;
  for (const Finding& finding : checked.report.findings) {
    if (!selection || finding.place.sheet != selection->sheet || finding.place.row < selection->first ||
        finding.place.row > selection->last)
      continue;
    if (best == nullptr || finding.place.column == selection->column)
      best = &finding;
  }
  if (best == nullptr)
    refuse("There is no finding about this row.");
  const auto place = rowOfKey(checked.season, best->key);
  if (!place)
    refuse("The findings sheet does not show this finding yet; check the season again.");
  return showPlace(window, *place);
}

const Growing& tableInSight(const Window& window, const Season& season) {
  const auto selection = selectionIn(window.frame);
  const auto found = std::find_if(growing.begin(), growing.end(), [&](const Growing& each) {
    const Located& where = season.where(each.table);
    return selection && where.found() && where.table->sheet() == selection->sheet;
  });
  return found == growing.end() ? growing.front() : *found;
}

std::string makeRoomHere(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  const Season season = look(document).season;
  const Growing& chosen = tableInSight(window, season);
  makeRoom(document, chosen.table, chosen.more);
  return std::to_string(chosen.more) + " more rows are ready on the sheet '" +
         season.where(chosen.table).table->sheet() + "'.";
}

std::string summariseAll(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  ProgressWindow progress(window.context, window.frame, "Summarising the season");
  const Summarised summed =
      summariseSeason(window.context, document, [&](double share) { return progress.show(share); });
  turnToBlock(window.frame, programmeBlock);
  return std::to_string(summed.summary.pools.size()) +
         " pools are summarised; readings left out: " + std::to_string(summed.summary.left_out.size()) +
         ". One undo takes the sheets back.";
}

std::string gatherHere(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  const auto folder = askForFolder(window.context, window.frame, "The folder with what came back");
  if (!folder)
    return {};
  ProgressWindow progress(window.context, window.frame, "Gathering what came back");
  const Gathering gathering =
      gatherFolder(window.context, document, *folder, [&](double share) { return progress.show(share); });
  turnToBlock(window.frame, gathering.plan.open_lines() > 0 ? chooseBlock : gatheredBlock);
  return gathering_verdict(gathering) + (gathering.changed ? " One undo takes all of it back." : "");
}

std::string pageOfThisPool(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  const auto selection = selectionIn(window.frame);
  const std::string code =
      selection ? poolOfRow(document, look(document).season, selection->sheet, selection->first)
                : std::string();
  if (code.empty())
    refuse("Put the cursor on a pool first: a row of the pools, of the visits, or of 'Pools this season'.");
  ProgressWindow progress(window.context, window.frame, "Working out the page");
  pageOfPool(window.context, document, code, [&](double share) { return progress.show(share); });
  turnToBlock(window.frame, pageBlock(code));
  return {};
}

std::string askAll(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  std::size_t people = 0;
  {
    ProgressWindow progress(window.context, window.frame, "Reading the season");
    people = askListOf(document, [&](double share) { return progress.show(share); });
  }
  turnToBlock(window.frame, askBlock);
  return people == 0 ? std::string("Nobody is to be asked anything.") : std::string();
}

std::string auditAll(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  std::string words;
  {
    ProgressWindow progress(window.context, window.frame, "Auditing the workbook");
    const Audit audit = auditDocument(document, fileNameOf(window.frame->getController()->getModel()),
                                      [&](double share) { return progress.show(share); });
    for (const std::string& line : verdict_lines(audit))
      words += line + "\n";
  }
  turnToBlock(window.frame, auditBlock);
  return words + "One undo takes the sheets of the audit back.";
}

/// From a list, with the person of the row in front; without a visible window the person of the row.
std::string personFor(const Window& window, const Season& season) {
  const auto selection = selectionIn(window.frame);
  std::string here = selection ? personOfRow(season, selection->sheet, selection->first) : std::string();
  if (!isVisible(window.frame)) {
    if (here.empty())
      refuse(
          "Put the cursor on a person first: a row of the people, of the visits, or of the counts of life.");
    return here;
  }
  if (season.people.empty())
    refuse("The season names no people: list them on the sheet of people first.");
  std::vector<std::string> lines;
  std::size_t first = 0;
  for (const Person& person : season.people) {
    if (person.code == here)
      first = lines.size();
    lines.push_back(person.name.empty() ? person.code : person.code + "  ·  " + person.name);
  }
  const auto line = chooseLine(window, "For whom is the workbook?", lines, first);
  return line ? season.people[*line].code : std::string();
}

std::string handOutHere(const Window& window) {
  const SheetDocument document = documentOf(window.frame);
  const std::string person = personFor(window, look(document).season);
  if (person.empty())
    return {};
  const auto folder = isVisible(window.frame) ? chooseFolder(window, "Folder for the workbook of " + person)
                                              : folderOf(document);
  if (!folder)
    return {};
  std::string words =
      "Two files were written; both are the same workbook, send whichever the person can open:";
  for (const std::string& file : handOut(window.context, document, person, *folder))
    words += "\n" + file.substr(file.rfind('/') + 1);
  return words;
}

std::string clear(const Window& window) {
  clearSeason(documentOf(window.frame));
  return "The findings and the answers to them are gone; one undo brings them back.";
}

constexpr std::array all{
    Command{"check", check},
    Command{"applySelected", applySelected},
    Command{"applyFix", applyFix},
    Command{"applyAsk", applyAsk},
    Command{"goToFinding", goToFinding},
    Command{"backToFinding", backToFinding},
    Command{"makeRoom", makeRoomHere},
    Command{"clearFindings", clear},
    Command{"summarise", summariseAll},
    Command{"poolPage", pageOfThisPool},
    Command{"askList", askAll},
    Command{"audit", auditAll},
    Command{"handout", handOutHere},
    Command{"gather", gatherHere},
};

} // namespace

std::span<const Command> commands() {
  return all;
}

const Command* commandNamed(std::string_view name) {
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Command& each) { return each.name == name; });
  return found == all.end() ? nullptr : &*found;
}

} // namespace wetspell::addin
