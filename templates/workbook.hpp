// The season workbook: the template, and the template with rows already filled in.
#pragma once

#include "season/field.hpp"
#include "season/settings.hpp"
#include "table/cell.hpp"

#include <string>
#include <utility>
#include <vector>

namespace wetspell::workbook {

/// Rows for one table, with the fields they are given in. Only typed fields can be given: what the workbook
/// works out stands in formulas.
struct FilledTable {
  TableKind table;
  std::vector<Field> fields;
  std::vector<std::vector<Cell>> rows; ///< each as long as `fields`; numbers are in the workbook's units
};

struct WorkbookContent {
  std::vector<std::pair<Setting, Cell>> settings; ///< those that differ from a fresh workbook
  std::vector<FilledTable> tables;     ///< a table that is not named stays as it is in a fresh workbook
  bool print_filled_rows_only = false; ///< on paper, leave out the rows that are still empty
};

/// The workbook as one flat OpenDocument spreadsheet (.fods). The same content gives the same bytes.
/// A table with more rows than the template has ready becomes longer. Throws std::invalid_argument for
/// content that no workbook can hold: an unknown or derived field, a row of the wrong length.
std::string season_workbook(const WorkbookContent& content = {});

} // namespace wetspell::workbook
