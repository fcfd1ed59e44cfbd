// The sheet on which a person corrects what the headings of a workbook were taken for. What was changed there
// is told from what was written there, stays, and wins when the audit is run again.
#pragma once

#include "audit/audit.hpp"

#include <optional>
#include <string>
#include <vector>

namespace wetspell {

/// Columns of the sheet, from 0. The last one says what was written into the row, to tell what a person
/// changed.
enum HeadingsColumn : std::size_t {
  headings_heading,
  headings_where,
  headings_field,
  headings_unit,
  headings_confidence,
  headings_reason,
  headings_written,
  headings_columns
};

/// A row in which a person's word counts.
struct CorrectedHeading {
  std::string heading, field, unit;
};

struct Corrections {
  GivenMap map;
  std::vector<CorrectedHeading> rows; ///< the newest first: where two are about one heading, it counts
};

/// What a person changed on such a sheet, now or in an earlier run. A field that was emptied says nothing. A
/// table without the headings of the sheet holds no corrections. Refuses in words a field or unit that is not
/// known.
Result<Corrections> corrections_on(const Table& sheet);

struct HeadingsSheet {
  Table cells;                                ///< the first row holds the headings
  std::vector<std::optional<Place>> leads_to; ///< per row: the first column with that heading
};

/// A row for every heading and what it was taken for, in the order of the tables; then the corrections of
/// headings that are not there now, so that they are not lost.
HeadingsSheet headings_sheet(const Audit& audit, const Corrections& corrections);

/// The words for the drop-downs: all that may stand under Field (with the counts of animals that the audit
/// has come across), and under Unit.
std::vector<std::string> words_for_field(const Audit& audit);
std::vector<std::string> words_for_unit();

} // namespace wetspell
