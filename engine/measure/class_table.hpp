// Class tables: named classes between limits, editable in the workbook.
#pragma once

#include "base/result.hpp"
#include "quantity/quantity.hpp"
#include "table/cell.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

struct ClassRow {
  std::string label; ///< "over 12 to 24 in"
  double low = 0;    ///< in the table's unit; -infinity where open
  double high = 0;   ///< in the table's unit; +infinity where open
};

/// To which class a value on a limit belongs.
enum class LimitSide : std::uint8_t {
  to_lower,  ///< the shallower class: (low, high]
  to_higher, ///< the class begins at its lower limit: [low, high)
};

struct ClassTable {
  std::string name;
  Unit unit = Unit::none;
  LimitSide side = LimitSide::to_lower;
  std::vector<ClassRow> rows;
  std::string not_known; ///< label of the class for "not known"
};

/// Depth in inches: no standing water; over 0 to 6; ... over 48 (common practice, no source).
const ClassTable& default_depth_classes();
/// Fill in per cent: 0 to 24, 25 to 49, 50 to 74, 75 to 100 (common practice, no source).
const ClassTable& default_fill_classes();

/// Index of the class of `value` (in `unit`). Limits compare in the table's unit, exactly for values that
/// were typed in any unit: 91.44 cm falls where 36 in falls. bad_argument when no class holds the value.
Result<std::size_t> classify(const ClassTable& table, double value, Unit unit);

/// The class of a quantity as written: values, and ranges, "over" and "under" when they lie within one class.
/// Refuses blank and missing with not_enough, and a range over several classes with bad_argument in words.
Result<std::size_t> classify(const ClassTable& table, const Quantity& quantity);

/// Index of the class with this label (case and blanks aside), or of the not-known label as rows.size().
Result<std::size_t> class_named(const ClassTable& table, std::string_view label);

/// A class table from cells: columns label, from, to; a blank limit is open. Checks order, gaps and overlap.
Result<ClassTable> class_table_from(std::span<const Cell> cells, std::size_t columns, const ClassTable& like);

/// Middle and standard uncertainty (rectangular) of a class in SI; not_enough for an open class.
struct ClassMiddle {
  double si = 0;
  double uncertainty = 0;
};
Result<ClassMiddle> middle(const ClassTable& table, std::size_t index);

} // namespace wetspell
