// What the cells of a column look like: how many read as what, between which numbers.
#pragma once

#include "audit/find_tables.hpp"
#include "quantity/quantity.hpp"
#include "season/choice.hpp"

#include <vector>

namespace wetspell {

/// A sample of a column's cells, evenly over the table.
struct Evidence {
  std::size_t looked = 0;         ///< records looked at
  std::vector<const Cell*> cells; ///< those that hold something other than "not known"
  [[nodiscard]] std::size_t filled() const { return cells.size(); }
};
Evidence look_at(const Block& block, std::size_t column);

/// How the cells read as a kind of quantity.
struct AsKind {
  std::size_t filled = 0;
  std::size_t readable = 0;
  std::vector<double> bare; ///< numbers without a unit, as typed, from the smallest to the largest
  Unit typed = Unit::none;  ///< the unit most often typed in the cells
  std::size_t with_unit = 0;
  std::size_t with_typed = 0; ///< cells that say `typed`
  /// Whether most cells say one unit: half of all, and more than say others.
  [[nodiscard]] bool most_say() const {
    return with_typed > 0 && with_typed * 2 >= readable && with_typed * 2 > with_unit;
  }
  /// Whether units are the rule, but not one of them.
  [[nodiscard]] bool say_different() const {
    return with_unit * 2 >= readable && with_unit > 0 && !most_say();
  }
  [[nodiscard]] double share() const {
    return filled == 0 ? 0 : static_cast<double>(readable) / static_cast<double>(filled);
  }
  [[nodiscard]] double lowest() const { return bare.empty() ? 0 : bare.front(); }
  [[nodiscard]] double highest() const { return bare.empty() ? 0 : bare.back(); }
  /// The numbers without one in twenty at either end, where slips of the pen stand.
  [[nodiscard]] double low() const { return bare.empty() ? 0 : bare[bare.size() / 20]; }
  [[nodiscard]] double high() const { return bare.empty() ? 0 : bare[bare.size() - 1 - bare.size() / 20]; }
  [[nodiscard]] double share_with_decimals() const;
};
AsKind as_kind(const Evidence& evidence, Kind kind);

/// The share of cells that are a word of the list.
double share_in(const Evidence& evidence, const ChoiceList& list);
/// The share of cells that name an animal of the species catalogue.
double share_of_species(const Evidence& evidence);
/// The share of number cells (or texts of a number only).
double share_of_numbers(const Evidence& evidence);
/// The share of cells that say a day and could be nothing else.
double share_of_dates(const Evidence& evidence);

} // namespace wetspell
