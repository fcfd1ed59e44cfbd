// Which column holds which field, in which unit, how surely and why.
#pragma once

#include "audit/evidence.hpp"
#include "audit/find_tables.hpp"
#include "audit/given_map.hpp"
#include "season/settings.hpp"

#include <optional>
#include <string>
#include <vector>

namespace wetspell {

/// A mapping that is less sure than this is left open rather than guessed.
inline constexpr double sure_enough = 0.6;

enum class Layout : std::uint8_t { row_a_visit, row_a_reading, column_a_visit, cell_a_visit };
std::string_view name(Layout layout); ///< "a row a visit"
/// The same in words for the table's kind: "a row a pool".
std::string_view in_words(Layout layout, std::optional<TableKind> kind);

/// The column beside it in which the rest of a quantity stands, in a smaller unit.
struct Rest {
  std::size_t column = 0; ///< of the block's grid
  Unit unit = Unit::none;
};

/// What one column was taken for.
struct Mapping {
  std::size_t column = 0; ///< of the block's grid
  std::string heading;
  std::optional<Field> field;       ///< nothing: left open
  Part part = Part::none;           ///< a piece of a date or of a reading instead of a field
  std::optional<CountColumn> count; ///< counts of one animal instead of a field
  Unit unit = Unit::none;           ///< of bare numbers
  bool unit_open = false;           ///< the field needs a unit and none can be told
  std::optional<Rest> rest;         ///< where the inches stand beyond whole feet
  bool unit_supposed = false;       ///< the unit is that of the table's other units; no one wrote it
  double confidence = 0;
  std::string reason;
  [[nodiscard]] bool open() const { return !field && part == Part::none && !count; }
};

struct BlockMap {
  std::optional<TableKind> kind; ///< nothing: not a table of ours
  Layout layout = Layout::row_a_visit;
  std::vector<Mapping> columns; ///< one a column of the block
  std::vector<Mapping> words;   ///< of a table with a row a reading: one a word that says what was read
  std::string reason;           ///< why the table is taken for one of its kind, or for none
  std::string pool;             ///< the pool of the whole table, where its title or sheet names it
  bool pool_in_lines = false;   ///< lines between the rows name the pools
  bool pools_by_name = false;   ///< they do so by a name alone: "Otter Pool"
  std::string date;             ///< the day of the whole table, where its title names it; as it stands there
  bool date_in_lines = false;   ///< lines between the rows name the days
  [[nodiscard]] const Mapping* of(Field field) const;
  [[nodiscard]] const Mapping* of(Part part) const;
};

/// What is known beside the table itself.
struct MapHints {
  const GivenMap* given = nullptr;
  const Settings* settings = nullptr; ///< of the workbook, where it has a table of them
  bool own_headings = false; ///< headings that are the catalogue's word for word count, whatever stands below
  std::string pool;          ///< the pool that the sheet's name stands for; empty: none
};

BlockMap map_headings(const Block& block, const MapHints& hints);

/// The pool named by words such as "Pool: B07" or "Site 12"; empty when they name none.
std::string pool_named_in(std::string_view text);
/// The same of one of several lines, which may be a name and nothing else: "Otter Pool".
std::string pool_of_line(std::string_view text);

/// The day named by words such as "Date: 7 April 2012", as it stands there; empty when they name none.
std::string date_named_in(std::string_view text);
/// The same of a line between rows, which may be the day and nothing else.
std::string date_of_line(std::string_view text);

} // namespace wetspell
