// Class tables: named classes between limits, editable in the workbook.
#pragma once

#include "base/result.hpp"
#include "quantity/quantity.hpp"
#include "table/cell.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

struct ClassRow {
  std::string label; ///< "over 12 to 24 in"
  double low = 0;    ///< in the table's unit; -infinity where open
  double high = 0;   ///< in the table's unit; +infinity where open; equal to `low`: a class of that one value
};

/// To which class a value on a limit belongs. At the outer limits of the table it belongs to the outermost
/// class, and a class of one value (dry) takes that value whatever the side.
enum class LimitSide : std::uint8_t {
  to_lower,  ///< the shallower class: (low, high]
  to_higher, ///< the class begins at its lower limit: [low, high)
};

struct ClassTable {
  std::string name; ///< what is classed, as it stands in messages: "depth"
  Unit unit = Unit::none;
  LimitSide side = LimitSide::to_lower;
  std::vector<ClassRow> rows; ///< from lowest to highest
  std::string not_known;      ///< label of the class for "not known"
};

/// Depth in inches: no standing water; over 0 to 6; ... over 48 (common practice, no source).
const ClassTable& default_depth_classes();
/// Fill in per cent: 0 to 24, 25 to 49, 50 to 74, 75 to 100 (common practice, no source). Limits 0, 25, 50,
/// 75, 100.
const ClassTable& default_fill_classes();
/// Wet spells in days: brief, short, medium, long, lasting. Judgement, no source.
const ClassTable& default_spell_classes();

/// Index of the class of `value` (in `unit`). Limits compare in the table's unit, with a relative tolerance
/// of 1e-9, so that a value typed in any unit falls where it should: 91.44 cm falls where 36 in falls.
/// Refuses a value no class holds and a unit of another kind (bad_argument), and a value that is not finite
/// (not_a_number).
Result<std::size_t> classify(const ClassTable& table, double value, Unit unit);

/// The class of a quantity as written: values, and ranges, "over" and "under" when they lie within one class.
/// A range belongs where the numbers between its ends belong (24 to 36 in is "over 24 to 36"), and "under 6
/// in" does not mean dry, which has words of its own. Refuses blank and missing with not_enough, a range over
/// several classes, paces and what cannot be read with bad_argument in words.
Result<std::size_t> classify(const ClassTable& table, const Quantity& quantity);

/// Index of the class with this label (capitals and blanks aside), or of the not-known label as rows.size().
/// Refuses an empty label (not_enough) and one that is not in the table (bad_argument).
Result<std::size_t> class_named(const ClassTable& table, std::string_view label);

/// Middle and standard uncertainty (rectangular, GUM 4.3.7) of a class in SI. Refuses an open class and the
/// class for "not known" (not_enough), and an index beyond them (bad_argument).
struct ClassMiddle {
  double si = 0;
  double uncertainty = 0; ///< 0 for a class of one value
};
Result<ClassMiddle> middle(const ClassTable& table, std::size_t index);

/// A class table from cells, row by row: the first three of `columns` columns are label, from, to; the name,
/// the unit and the limits' side are those of `like`. A blank limit is open; a label without limits is the
/// one for "not known"; a first row of headings and blank rows are passed over. Limits may carry units. Rows
/// may stand in any order and come out from lowest to highest. Where a class begins at its lower limit,
/// limits one whole number apart (0 to 24, 25 to 49) leave no gap. Refuses no class at all (not_enough), and
/// gaps, overlaps, limits that cannot be read, limits the wrong way round, and labels that are missing or
/// stand twice (bad_argument).
Result<ClassTable> class_table_from(std::span<const Cell> cells, std::size_t columns, const ClassTable& like);

} // namespace wetspell
