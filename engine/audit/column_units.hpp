// The unit of a column's bare numbers: said, typed beside them, named above, or told by where they lie.
#pragma once

#include "audit/evidence.hpp"
#include "audit/title_units.hpp"
#include "season/settings.hpp"

#include <optional>
#include <string>

namespace wetspell {

struct ColumnUnit {
  Unit unit = Unit::none; ///< none: cannot be told
  double confidence = 0;
  std::string reason;
  bool supposed = false; ///< by the table's other units alone: a person should know
};

/// What tells the unit of a column where neither its words nor its cells do.
struct UnitHints {
  TitleUnits titles;
  const Settings* settings = nullptr;          ///< of the workbook, where it has any
  std::optional<UnitSystem> table_system = {}; ///< that of the table's other columns
};

/// The unit told by what is nearest: `said` (by the words of the heading), the cells, the hints, the numbers.
ColumnUnit unit_told(Kind kind, Unit said, const AsKind& as, const UnitHints& hints);

/// The unit told by the numbers alone. `system`: that of the table's other columns, where they say one.
ColumnUnit unit_by_numbers(Kind kind, const AsKind& as, std::optional<UnitSystem> system);

/// "30 numbers between 4 and 27".
std::string numbers_in_words(const AsKind& as);

/// The system a unit belongs to; nothing for per cent, paces and the like.
std::optional<UnitSystem> system_of(Unit unit);

/// Whether numbers in this unit can be a pool's: no water at 60 °C, no pool 40 m deep.
bool possible(Kind kind, Unit unit, const AsKind& as);

} // namespace wetspell
