// Reads the cells of source tables into tidy tables; what every layout shares.
#pragma once

#include "audit/tidy.hpp"
#include "table/lately.hpp"

namespace wetspell {

/// What tells a row's visit.
struct Key {
  Cell pool, date;                          ///< the date as it stands there
  std::optional<std::uint32_t> date_column; ///< of the grid
};

/// The keys of rows: what a blank, a ditto mark or a title above stands for is settled here.
class KeyReader {
public:
  explicit KeyReader(const Mapped& table);

  /// Pool and date: as typed, from the row above where the column is written once for several rows, from the
  /// line above the rows, or from the title; pieces of a date are put together. Rows must be asked in order.
  Key at(std::size_t row);
  /// Goes on at a row as if all rows before it had been asked for; none must have been.
  void begin_at(std::size_t row);
  [[nodiscard]] bool has_date() const;
  [[nodiscard]] bool has_pool() const;
  [[nodiscard]] const Mapping* pool_column() const { return pool_; }
  [[nodiscard]] const Mapping* date_column() const { return date_ != nullptr ? date_ : day_; }

private:
  Cell pool(std::size_t row);
  Cell date(std::size_t row);
  void pass_sections(std::size_t row);
  [[nodiscard]] bool written_once(const Mapping* column) const;

  const Mapped& table_;
  const Mapping* pool_ = nullptr;
  const Mapping* date_ = nullptr;
  const Mapping *year_ = nullptr, *month_ = nullptr, *day_ = nullptr;
  bool pool_once_ = false, date_once_ = false;
  Cell above_pool_, above_date_;
  std::size_t next_passed_ = 0;
};

/// Adds rows of source tables to the tidy ones and keeps account of what could not be read.
class RowReader {
public:
  RowReader(const std::vector<Mapped>& tables, Tidy& tidy) : tables_(tables), tidy_(tidy) {}

  /// Writes pool and date into the row; without either, or with a date that nobody can read, it is unusable.
  /// `told`: that the date cannot be read was said already, of the visit beside whose readings it stands.
  void keys(TidyTable& to, std::size_t row, const Key& key, Spot at, Field pool, Field date,
            bool told = false);
  /// Reads one cell into a field. `unit`: of a bare number; none with `unit_open`: a bare number cannot be
  /// used.
  void cell(TidyTable& to, std::size_t row, std::size_t column, const Cell& from, Spot at, Unit unit,
            bool unit_open);
  /// `rows`: how many tidy rows, this one among them, the cell concerns.
  void unread(TidyTable& to, std::size_t row, Spot at, const Cell& cell, std::string reason, std::string sort,
              std::size_t rows = 1);
  /// What another reader of the same tables left unread.
  void take_unread(Tidy other) { tidy_.take_unread(std::move(other)); }

private:
  /// Readings of one tidy column under the options that were asked last.
  struct Readings {
    ReadOptions options;
    Lately<Quantity> known;
  };
  Quantity reading(std::size_t column, const Cell& cell, const ReadOptions& options);
  const ReadDate& day_of(std::uint32_t table, const Cell& cell);

  const std::vector<Mapped>& tables_;
  Tidy& tidy_;
  std::vector<Readings> readings_;
  std::uint32_t dated_ = 0; ///< the table whose dates are known
  Lately<ReadDate> dates_;
};

/// A row without one of the fields that its table cannot do without is unusable.
void settle_keys(TidyTable& table);

// One layout each; called with the tidy tables that they fill.
void read_records(const std::vector<Mapped>& tables, std::uint32_t index, TidyTable& to, RowReader& reader);
void read_counts(const std::vector<Mapped>& tables, std::uint32_t index, TidyTable& to, RowReader& reader);
void read_cells(const std::vector<Mapped>& tables, std::uint32_t index, TidyTable& to, RowReader& reader);

/// The readings of a table with a row a reading, sorted into visits before any is read.
class ReadingGroups {
public:
  explicit ReadingGroups(const Mapped& table, std::uint32_t index);
  [[nodiscard]] std::size_t visits() const { return visits_; }
  /// How many rows bear each word of the table's map.
  [[nodiscard]] const std::vector<std::size_t>& rows() const { return rows_; }
  void read(TidyTable& to, RowReader& reader) const;

private:
  struct Reading {
    std::uint32_t row, visit;
    std::int32_t word; ///< of the table's map; -1: none stands in the row
  };

  const Mapped& table_;
  std::uint32_t index_;
  std::vector<Reading> readings_;
  std::size_t visits_ = 0;
  std::vector<std::size_t> rows_;
};

} // namespace wetspell
