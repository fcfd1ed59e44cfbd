// What one file that came back holds: rows of visits and of life in the season's columns and units, and
// answers to questions. The audit finds the tables, whatever their layout.
#pragma once

#include "season/season.hpp"

#include <string>
#include <vector>

namespace wetspell {

/// A row as it was typed, for the season's table.
struct CameRow {
  std::string where;       ///< "Visits, row 7"
  std::vector<Cell> cells; ///< per field of the table, in the catalogue's order; nothing typed: empty
};

/// An answer to a finding.
struct CameAnswer {
  std::string key;  ///< the finding's
  std::string text; ///< as typed
};

struct CameFile {
  std::string file;
  std::string problem; ///< why nothing was read, in words; empty: it was
  std::vector<CameRow> visits, life;
  std::vector<CameAnswer> answers;
  std::vector<std::string> remarks; ///< what was left out, and why

  [[nodiscard]] const std::vector<CameRow>& rows(TableKind kind) const {
    return kind == TableKind::life ? life : visits;
  }
};

/// The tables of records that are gathered.
inline constexpr std::array gathered_tables{TableKind::visits, TableKind::life};

/// Reads the sheets of a file for the season. What the file does not say about units and the order of day and
/// month is taken from the season's settings.
CameFile came_in(std::string file, std::vector<Table> sheets, const Season& season);

/// A file that could not be opened.
CameFile not_opened(std::string file, std::string why);

} // namespace wetspell
