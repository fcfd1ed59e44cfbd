// Rows in our own layout, each with the way back to the cells it came from.
#pragma once

#include "audit/dates.hpp"
#include "audit/map_headings.hpp"

#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

namespace wetspell {

/// A table of the source with its map.
struct Mapped {
  Block block;
  BlockMap map;
  DateSense dates;
  std::string date_reason; ///< how the order of day and month was decided; empty: nothing to decide
};

/// A cell under a mapped column that could not be used.
struct Unread {
  Place place;
  std::size_t table = 0; ///< index of the source table
  std::string heading;
  std::string text;     ///< as it stands there
  std::string reason;   ///< with the words it is about
  std::string sort;     ///< the reason alone, for counting
  std::size_t rows = 1; ///< tidy rows that it concerns
};

/// Stands in a tidy row behind a number whose unit cannot be told. The number is there, so that nobody takes
/// it for missing, and no season reads it in a unit that it may not have.
inline constexpr std::string_view unit_asked = "(unit?)";

/// What became of a row.
enum class RowState : std::uint8_t { usable, after_answers, unusable };

/// A cell of a source table's grid.
struct Spot {
  std::uint32_t table = 0;
  std::uint32_t row = 0;
  std::uint32_t column = 0;
};

class TidyTable {
public:
  /// `fields` in the order of the columns, with the unit of each one's bare numbers.
  TidyTable(TableKind kind, std::vector<Field> fields, std::vector<Unit> units, std::size_t rows,
            std::size_t sources);

  [[nodiscard]] TableKind kind() const { return kind_; }
  [[nodiscard]] const std::vector<Field>& fields() const { return fields_; }
  [[nodiscard]] Unit unit(std::size_t column) const { return units_[column]; }
  [[nodiscard]] std::size_t rows() const { return from_.size(); }
  [[nodiscard]] std::size_t row_limit() const { return cells_.rows() - 1; }
  /// The column of a field; -1: none.
  [[nodiscard]] std::int32_t column(Field field) const;

  /// Begins the next row; gives its number. `grid_column`: where the row's own cell is not the first.
  std::size_t add_row(std::uint32_t table, std::uint32_t grid_row, std::uint32_t grid_column = 0);
  /// See Table::open_row.
  void open_row(std::size_t row) { cells_.open_row(row + 1); }
  [[nodiscard]] Cell& at(std::size_t row, std::size_t column) { return cells_.at(row + 1, column); }
  [[nodiscard]] const Cell& at(std::size_t row, std::size_t column) const {
    return cells_.at(row + 1, column);
  }
  /// All rows of a source table have the field in this column of its grid.
  void comes_from(std::uint32_t table, std::size_t column, std::uint32_t grid_column);
  /// This one cell comes from elsewhere.
  void comes_from(std::size_t row, std::size_t column, Spot spot);
  /// The source cell; the row's own cell where the value has none.
  [[nodiscard]] Spot origin(std::size_t row, std::size_t column) const;
  /// The row's own cell.
  [[nodiscard]] Spot origin(std::size_t row) const { return from_[row]; }

  /// With the heading row; the cells are gone from here afterwards.
  Table take_cells();

  std::vector<RowState> states; ///< per row

private:
  TableKind kind_;
  std::vector<Field> fields_;
  std::vector<Unit> units_;
  Table cells_;
  std::vector<Spot> from_;
  std::vector<std::vector<std::int32_t>> columns_; ///< per source table, per column: of its grid or -1
  std::unordered_map<std::uint64_t, Spot> elsewhere_;
};

struct Tidy {
  std::vector<TidyTable> tables; ///< at most one a kind
  std::vector<Unread> unread;    ///< at most unread_kept
  std::size_t unread_count = 0;
  std::vector<std::string> remarks; ///< kinds of reading that are none of our fields
  [[nodiscard]] const TidyTable* of(TableKind kind) const;
  /// Takes what was left unread elsewhere.
  void take_unread(Tidy other);
};
inline constexpr std::size_t unread_kept = 100'000;

/// Reads the rows of all tables that are ours.
Tidy read_rows(const std::vector<Mapped>& tables);

} // namespace wetspell
