// Entry checks: the drop-down, the limits and the help of every cell that people type into.
#pragma once

#include "filling.hpp"
#include "model.hpp"
#include "season/field.hpp"
#include "season/limits.hpp"
#include "season/settings.hpp"

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace wetspell::workbook {

/// The name of a field's entry check, the same in every workbook.
std::string entry_name(Field field);
std::string entry_name(Setting setting);

/// One check a field, in the order of the catalogue. What is typed with a unit or in words ("2' 3\"", "dry")
/// is always let through: reading it is the engine's work. Limits warn and leave the last word to the person;
/// only what cannot be at all, such as minus three animals, is refused.
std::vector<EntryCheck> entry_checks(const Filling& filling);

/// What entry checks compare with and offer, which one kind of workbook keeps in other places than another.
struct EntrySources {
  /// A limit as a formula, in the unit in which a cell of the kind is read.
  std::function<std::string(Limit, Kind)> limit;
  /// The words for a field, as a condition takes them, by the field of the table in which they are declared.
  std::function<std::string(Field declared)> offered;
  /// What is said of a word that is not among them.
  std::function<std::string(const FieldSpec&, Field declared)> not_offered;
  std::string season_year;                  ///< formula: the year, or no number
  std::string compare_year;                 ///< where a person sees the year
  std::function<std::string(Field)> column; ///< all cells of the field: codes may stand once
};
/// The check of a field whose first cell stands there.
EntryCheck entry_check(const FieldSpec& field, std::string_view sheet, std::size_t column, std::size_t row,
                       const EntrySources& from);

/// The row of a setting on the start page, from 0, and the name that stands for its cell in formulas.
std::size_t setting_row(Setting setting);
std::string setting_name(Setting setting);
/// "$Start.$C$16"
std::string setting_cell(Setting setting);

} // namespace wetspell::workbook
