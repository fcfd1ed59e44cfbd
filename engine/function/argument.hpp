// What the functions share when they look at their arguments.
#pragma once

#include "function/refusal.hpp"
#include "measure/class_table.hpp"
#include "measure/pacing.hpp"
#include "quantity/read.hpp"

#include <optional>

namespace wetspell {

/// A reading's one number in SI, or nothing when the cell is blank or says that it was not measured.
Result<std::optional<Quantity>> number_in(const ParameterSpec& parameter, const Argument& argument,
                                          Unit assume);
/// The same for one cell among several.
Result<std::optional<Quantity>> number_in(const ParameterSpec& parameter, const Cell& cell, Unit assume);

/// The same for what cannot be zero: a zero is a blank, as Calc hands it over, and a number that would rather
/// be a date is refused, because its format cannot be seen.
Result<std::optional<Quantity>> measure_in(const ParameterSpec& parameter, const Cell& cell, Unit assume);

/// A number without a unit in one cell, a date as the number that it is in the sheet; nothing for a blank
/// cell and for "not measured".
Result<std::optional<double>> plain_number_in(const ParameterSpec& parameter, const Cell& cell);

/// A day in one cell: a date, a text that is one, or the number that a date is in the sheet.
Result<std::optional<double>> day_in(const ParameterSpec& parameter, const Cell& cell);

/// A number as a result: without the last digits, which conversions leave behind (24.000000000000004).
Value number_value(double number);

/// The unit an option names, or `standard` when it is left out or its cell is blank. The runner has checked
/// it.
Unit unit_or(const Argument& argument, Unit standard);

/// "paces" or "steps"; paces when left out.
Result<CountedAs> counted_as(const ParameterSpec& parameter, const Argument& argument);

/// The class table given as a range, or `standard` when it is left out.
Result<ClassTable> classes_or(const ParameterSpec& parameter, const Argument& argument,
                              const ClassTable& standard);

/// The label of the class in which a reading lies; blank for a blank, the label for "not known" when the cell
/// says so.
Result<Value> class_label(const ParameterSpec& parameter, const Argument& reading, Unit assume,
                          const ClassTable& table);

/// An option's blank: left out, a blank cell, or the zero into which a sheet turns a blank cell here.
bool option_left_out(const Argument& argument);

} // namespace wetspell
