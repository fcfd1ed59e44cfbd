#include "handout.hpp"

#include "fods.hpp"
#include "handout_plan.hpp"

#include <fmt/format.h>

namespace wetspell::workbook {

std::string handout_workbook(const Season& season, std::size_t person, std::span<const Question> questions) {
  const HandoutPlan plan(season, person, questions);
  Workbook workbook;
  workbook.title = fmt::format("Visits of {}", plan.who().code);
  workbook.subject = "Visits to seasonal pools: type what you read and send it back";
  workbook.description = "Made by Wetspell. Nothing in this workbook is a legal wetland determination.";
  workbook.version = WETSPELL_VERSION;
  workbook.sheets = {handout::read_first_sheet(plan), handout::visits_sheet(plan),
                     handout::life_sheet(plan),       handout::questions_sheet(plan),
                     handout::you_sheet(plan),        handout::words_sheet(plan)};
  workbook.entries = handout::entries(plan);
  return to_fods(workbook);
}

} // namespace wetspell::workbook
