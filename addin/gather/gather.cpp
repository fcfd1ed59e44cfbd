#include "gather/gather.hpp"

#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "gather/answers.hpp"
#include "gather/gathered_sheets.hpp"
#include "gather/handout_words.hpp"
#include "gather/open_folder.hpp"
#include "gather/put_rows.hpp"
#include "gather/workbook_bytes.hpp"
#include "sheet/findings_sheet.hpp"
#include "sheet/owned.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/undo_step.hpp"
#include "table/day.hpp"

#include <com/sun/star/frame/XController.hpp>
#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace wetspell::addin {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// Files of other kinds that lie beside the workbooks (pictures, mostly): counted, not listed one by one.
class Others {
public:
  void add(const std::filesystem::path& name) {
    ++count_;
    endings_.insert(name.has_extension() ? name.extension().string() : "without an ending");
  }
  void remark(std::vector<std::string>& remarks) const {
    if (count_ == 0)
      return;
    std::string endings;
    for (const std::string& ending : endings_)
      endings += (endings.empty() ? "" : ", ") + ending;
    remarks.push_back(fmt::format("{} no workbook by {} and {} passed over ({}).",
                                  count_ == 1 ? "1 file is" : fmt::format("{} files are", count_),
                                  count_ == 1 ? "its name" : "their names", count_ == 1 ? "was" : "were",
                                  endings));
  }

private:
  std::size_t count_ = 0;
  std::set<std::string> endings_;
};

std::string foldersInside(std::size_t count) {
  if (count == 0)
    return {};
  return fmt::format("{} inside it {} not opened: only what lies in the folder itself is read.",
                     count == 1 ? "1 folder" : fmt::format("{} folders", count), count == 1 ? "was" : "were");
}

/// Files that were opened and closed leave the office without a current view, and undoing a new sheet without
/// one ends the office (seen in 7.4). Only a visible window can become the current one again.
void bringBack(const Reference<css::frame::XModel>& document) {
  const Reference<css::frame::XController> view = document->getCurrentController();
  if (!view.is() || !view->getFrame().is())
    return;
  view->getFrame()->deactivate(); // or else it takes itself for active still, and nothing happens
  view->getFrame()->activate();
}

/// A handout has visits too, but what was gathered into one would go no further.
void requireNoHandout(const SheetDocument& document) {
  const auto sheets = document->getSheets();
  for (const std::string_view own : {handout_words::read_first, handout_words::you})
    if (!sheets->hasByName(toOffice(own)))
      return;
  refuse(fmt::format(
      "This is a handout, with the sheets '{}' and '{}'; what came back is gathered into the season's "
      "workbook.",
      handout_words::read_first, handout_words::you));
}

std::vector<CameFile> readAll(const Context& context, const SheetDocument& document, const Season& season,
                              Gathering& gathering, const Progress& progress) {
  std::vector<CameFile> came;
  Others others;
  const auto take = [&](const std::string& name, Result<std::vector<Table>> sheets) {
    if (!may_be_workbook(name))
      others.add(name);
    else if (sheets)
      came.push_back(came_in(name, std::move(sheets).value(), season));
    else
      came.push_back(not_opened(name, sheets.error().text));
  };
  const Reference<css::frame::XModel> model(document, UNO_QUERY_THROW);
  const FolderRead read = openFolder(context, gathering.folder, fromOffice(model->getURL()), take, progress);
  bringBack(model);
  if (!read.whole)
    refuse("The gathering was cancelled; nothing was changed.");
  for (CameFile& file : came)
    if (const auto comments = read.comments.find(file.file); comments != read.comments.end())
      file.remarks.insert(file.remarks.end(), comments->second.begin(), comments->second.end());
  others.remark(gathering.remarks);
  const std::string inside = foldersInside(read.folders);
  if (came.empty())
    refuse("The folder " + gathering.folder + " holds no workbook and no table; nothing was changed." +
           (inside.empty() ? "" : " " + inside));
  if (!inside.empty())
    gathering.remarks.push_back(inside);
  return came;
}

/// Formulas are worked out once, when all is written, and not after every block of cells.
class Calm {
public:
  explicit Calm(const SheetDocument& document)
      : formulas_(document, UNO_QUERY_THROW), before_(formulas_->isAutomaticCalculationEnabled()) {
    formulas_->enableAutomaticCalculation(false);
  }
  ~Calm() {
    try {
      formulas_->enableAutomaticCalculation(before_);
    } catch (const css::uno::Exception&) { // a document that was closed meanwhile works nothing out
    }
  }
  Calm(const Calm&) = delete;
  Calm& operator=(const Calm&) = delete;

private:
  Reference<css::sheet::XCalculatable> formulas_;
  bool before_;
};

void requireAllWritable(const SheetDocument& document, const Season& season, const GatherPlan& plan) {
  requireChangeable(document);
  for (const char* block : {chooseBlock, gatheredBlock})
    if (const auto owned = ownedBlock(document, block))
      requireUnprotected(*owned);
  if (!plan.visits.empty())
    requireRoomFor(document, season, TableKind::visits);
  if (!plan.life.empty())
    requireRoomFor(document, season, TableKind::life);
  for (const CarriedCell& carried : plan.carried)
    requireWritable(document, *season.place(carried.field, carried.row));
}

void carry(const SheetDocument& document, const Season& season, const std::vector<CarriedCell>& cells) {
  constexpr std::size_t in_part = 40; // a write may be two changes: content, format
  for (std::size_t begin = 0; begin < cells.size(); begin += in_part) {
    const UndoPart part(document);
    for (std::size_t i = begin; i < std::min(begin + in_part, cells.size()); ++i)
      write(document, *season.place(cells[i].field, cells[i].row), cells[i].cell);
  }
}

bool sameCells(const Table& one, const Table& other) {
  if (one.rows() != other.rows() || one.columns() != other.columns())
    return false;
  for (std::size_t row = 0; row < one.rows(); ++row)
    for (std::size_t column = 0; column < one.columns(); ++column)
      if (one.at(row, column) != other.at(row, column))
        return false;
  return true;
}

CheckReport checkWith(const Season& season, const std::vector<GivenAnswer>& answers) {
  CheckOptions options;
  options.answers = answers;
  return wetspell::check(season, options);
}

/// An answer whose question is no longer asked has no place in the season; its words are told with its file.
void remarkUnasked(const std::vector<CameFile>& came, const CheckReport& report,
                   std::vector<GatheredFile>& files) {
  for (const CameFile& file : came) {
    std::string words;
    std::size_t count = 0;
    for (const CameAnswer& answer : file.answers) {
      if (std::any_of(report.findings.begin(), report.findings.end(),
                      [&](const Finding& finding) { return finding.key == answer.key; }))
        continue;
      ++count;
      words += (words.empty() ? "'" : ", '") + answer.text + "'";
    }
    const auto to = std::find_if(files.begin(), files.end(),
                                 [&](const GatheredFile& each) { return each.file == file.file; });
    if (count > 0 && to != files.end())
      to->remarks.push_back(
          count == 1
              ? fmt::format("1 answer is to a question that is no longer asked: {}.", words)
              : fmt::format("{} answers are to questions that are no longer asked: {}.", count, words));
  }
}

} // namespace

Gathering gatherFolder(const Context& context, const SheetDocument& document,
                       const std::filesystem::path& path, const Progress& progress) {
  requireChangeable(document);
  requireNoHandout(document);
  auto read = read_season(tablesOf(document), serial_of_today());
  if (!read)
    refuse(read.error().text);
  const Season& season = read.value();
  Gathering gathering;
  gathering.folder = path.string();
  const std::vector<CameFile> came = readAll(context, document, season, gathering, progress);

  const Table linesBefore = tableOfBlock(document, chooseBlock);
  const Table filesBefore = tableOfBlock(document, gatheredBlock);
  gathering.plan = plan_gathering(season, choose_lines(linesBefore), came);
  const GatherPlan& plan = gathering.plan;
  const Table lines = choose_table(plan.lines);
  const bool newLines = !plan.lines.empty() && !sameCells(lines, linesBefore);
  const bool newCells = !plan.visits.empty() || !plan.life.empty() || !plan.carried.empty();
  const bool anyAnswers =
      std::any_of(came.begin(), came.end(), [](const CameFile& file) { return !file.answers.empty(); });
  const std::vector<GivenAnswer> held = answers_in(season);
  const std::vector<GivenAnswer> answers = with_answers(held, came);
  const auto answered = [&](const CheckReport& report) {
    gathering.answered = newly_answered(report, held);
    remarkUnasked(came, report, gathering.plan.files);
  };
  // Whether an answer belongs to anything is seen by checking; rows that are added may be what it is about.
  if (anyAnswers && !newCells)
    answered(checkWith(season, answers));
  const auto newFiles = [&] { return !sameCells(gathered_table(filesBefore, gathering), filesBefore); };
  gathering.changed = newLines || newCells || gathering.answered > 0 || newFiles();
  if (!gathering.changed)
    return gathering;

  requireAllWritable(document, season, plan);
  if (anyAnswers)
    requireFindingsWritable(document, season);
  const Calm calm(document);
  OneUndoStep step(document, "Gather what came back");
  carry(document, season, plan.carried);
  putRows(document, TableKind::visits, plan.visits);
  putRows(document, TableKind::life, plan.life);
  if (anyAnswers) {
    auto now = read_season(tablesOf(document), serial_of_today());
    if (!now)
      refuse(now.error().text);
    const CheckReport report = checkWith(now.value(), answers);
    if (newCells)
      answered(report);
    const UndoPart part(document);
    if (gathering.answered > 0)
      writeFindings(document, now.value(), report);
  }
  if (newLines) {
    const UndoPart part(document);
    writeToChoose(document, lines);
  }
  if (newFiles()) {
    const UndoPart part(document);
    writeGathered(document, gathered_table(filesBefore, gathering));
  }
  step.keep();
  return gathering;
}

} // namespace wetspell::addin
