// The parts of mapping a table's headings.
#pragma once

#include "audit/candidates.hpp"
#include "audit/column_units.hpp"
#include "audit/map_headings.hpp"

#include <algorithm>
#include <vector>

namespace wetspell {

/// A column given to a field.
struct Taken {
  std::size_t column = 0;
  Candidate candidate;
};

/// The table as one kind: which columns would hold what.
struct AsTable {
  TableKind kind{};
  std::vector<Taken> taken;
  double score = 0;
  bool possible = false;
  [[nodiscard]] bool has(Field field) const {
    return std::any_of(taken.begin(), taken.end(),
                       [&](const Taken& t) { return t.candidate.field == field; });
  }
};

/// What a sheet offers beside the fields of its columns.
struct Beside {
  bool pool = false;     ///< named in a title, a line or by the sheet
  bool date = false;     ///< in pieces, or named in a title or a line
  bool readings = false; ///< a row a reading
  bool counts = false;   ///< columns of single animals
};
/// Whether the fields make a table of their kind.
bool is_possible(const AsTable& table, const Beside& beside);

/// The fields by which the rows of a table are known.
Field pool_field(TableKind kind);
Field date_field(TableKind kind);
/// How many of the readings that only visits to pools have; weather does not pass for them.
std::size_t pool_readings(const AsTable& table);

/// Gives a mapped quantity without a unit the one of its bare numbers, or says that it stays open.
void settle_unit(Mapping& mapping, const Column& column, const UnitHints& hints);
/// The same for every mapped column; the system is that of the columns themselves.
void settle_units(BlockMap& map, const std::vector<Column>& columns, UnitHints hints);

} // namespace wetspell
