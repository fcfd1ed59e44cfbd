// A season: all records of one workbook or folder of tables, with the way back to every cell.
#pragma once

#include "base/fixed_array.hpp"
#include "base/result.hpp"
#include "measure/class_table.hpp"
#include "measure/pacing.hpp"
#include "season/field.hpp"
#include "season/limits.hpp"
#include "season/records.hpp"
#include "season/settings.hpp"
#include "table/table.hpp"

#include <array>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace wetspell {

/// A table found among the sheets: which columns hold which fields.
struct Located {
  const Table* table = nullptr; ///< null when the season has no such table
  std::size_t heading_row = 0;  ///< inside the table
  std::size_t first_row = 0;    ///< first row below the headings
  std::size_t end_row = 0;      ///< one behind the last row that holds something
  std::vector<std::int32_t>
      columns;             ///< per field of the table kind, in catalogue order: column inside the table or -1
  std::vector<Unit> units; ///< per field: unit of bare numbers (heading's bracket first, then the settings)

  [[nodiscard]] bool found() const { return table != nullptr; }
};

/// A species in one form: when it is to be expected and how many at the most.
struct Species {
  std::string name;
  Choice seen_as;    ///< SeenAs; blank: any
  int first_day = 0; ///< month * 100 + day; 0: open; after last_day: a time over the turn of the year
  int last_day = 0;
  double most = 0; ///< 0: no limit
};

struct Season {
  std::vector<std::unique_ptr<Table>> sheets; ///< the cells as they were typed; Located points into them
  std::array<Located, table_kinds> located;
  Settings settings;
  Limits limits = Limits::defaults();
  ClassTable depth_classes;
  ClassTable fill_classes;
  ClassTable spell_classes;
  std::vector<Species> species;           ///< species names are unique across `species_names`
  std::vector<std::string> species_names; ///< what LifeCount::species points to
  std::vector<Pool> pools;
  std::vector<Person> people;
  FixedArray<Visit> visits;
  FixedArray<LifeCount> life;
  std::vector<std::optional<PaceLength>> paces; ///< per person; empty without usable calibration runs
  std::vector<std::string> remarks; ///< what could not be read beside the rows: a class table, a limit

  [[nodiscard]] const Located& where(TableKind kind) const { return located[static_cast<std::size_t>(kind)]; }
  /// Whether the season has a column for the field.
  [[nodiscard]] bool has(Field field) const;
  /// The cell of a record's field as typed; an empty cell where there is no column.
  [[nodiscard]] const Cell& cell(Field field, std::uint32_t row) const;
  /// Its place in the sheet; nothing where there is no column.
  [[nodiscard]] std::optional<Place> place(Field field, std::uint32_t row) const;
  /// The unit in which a bare number of this field is read.
  [[nodiscard]] Unit unit(Field field) const;
};

/// Reads a season from sheets (or CSV files). `today` in days since 1899-12-30. Refuses with not_enough when
/// there is no table of visits. Missing tables other than that are allowed: rules that need them then say
/// that they could not run.
///
/// Tables: found by their headings, whatever the sheet's name, the order of the columns, and what stands
/// above; several may stand in one sheet, side by side or one below another. Of two tables of one kind the
/// one with more known headings is read, and a remark tells of the other. A row of units right below the
/// headings is read as such. Class tables end at their first blank row. Rows: one in which at least one typed
/// field holds something; formulas in derived columns make no record. References: by code (see CodeIndex), or
/// by a name that only one record has. Without a table of pools (or people) every code that visits and counts
/// write makes a record of its own, so that a lone table of visits can be looked at over time; such records
/// have no cells, and where(...).found() is false.
Result<Season> read_season(std::vector<Table> sheets, double today);

} // namespace wetspell
