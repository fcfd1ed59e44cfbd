#include "workbook.hpp"

#include "entry.hpp"
#include "fods.hpp"
#include "names.hpp"
#include "sheets.hpp"

namespace wetspell::workbook {

std::string season_workbook(const WorkbookContent& content) {
  const Filling filling(content);
  Workbook workbook;
  workbook.title = "Season workbook for seasonal pools";
  workbook.subject = "Visits to seasonal pools: type once, see what is doubtful, ask in time";
  workbook.description = "Made by Wetspell. Nothing in this workbook is a legal wetland determination.";
  workbook.version = WETSPELL_VERSION;
  workbook.sheets = {start_sheet(filling),   pools_sheet(filling),   people_sheet(filling),
                     visits_sheet(filling),  life_sheet(filling),    findings_sheet(filling),
                     classes_sheet(filling), species_sheet(filling), limits_sheet(filling)};
  workbook.entries = entry_checks(filling);
  workbook.names = names(filling);
  return to_fods(workbook);
}

} // namespace wetspell::workbook
