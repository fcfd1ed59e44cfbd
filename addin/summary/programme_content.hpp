#pragma once
// What stands on the programme's sheet, before it is a sheet.

#include "estimate/summary.hpp"
#include "table/table.hpp"

#include <optional>
#include <vector>

namespace wetspell::addin {

enum ProgrammeColumn : std::size_t {
  of_what,
  of_group,
  value,
  unit,
  from,
  to,
  level,
  n,
  note,
  programme_columns
};

/// A row of figures, so that its numbers can be given their format.
struct FigureRow {
  std::size_t row = 0;
  Figured figured{};
  bool whole = true;
};

struct ProgrammeContent {
  Table cells;
  std::vector<std::size_t> words, sections, headings; ///< rows
  std::vector<FigureRow> figures;
  std::size_t first_left_out = 0;
  std::vector<std::optional<Place>> left_out; ///< the cells that the rows from there on are about
};

ProgrammeContent programmeContent(const SeasonHistory& history, const SeasonSummary& summary);

} // namespace wetspell::addin
