// The rows of a located table as records.
#pragma once

#include "base/in_parts.hpp"
#include "season/column_reader.hpp"
#include "season/locate.hpp"

#include <algorithm>

namespace wetspell {

using ColumnReaders = std::vector<std::unique_ptr<ColumnReader>>;

/// Columns in which something typed makes a row a record.
inline std::vector<std::size_t> typed_columns(const Located& at, TableKind kind) {
  std::vector<std::size_t> columns;
  for (const FieldSpec& s : fields(kind))
    if (const std::int32_t column = at.columns[position(s.field)]; column >= 0 && s.role == Role::typed)
      columns.push_back(static_cast<std::size_t>(column));
  return columns;
}

inline bool typed_row(const Table& table, std::size_t row, const std::vector<std::size_t>& columns) {
  return std::any_of(columns.begin(), columns.end(),
                     [&](std::size_t column) { return holds_something(table.at(row, column)); });
}

/// The rows in which something was typed.
inline std::vector<std::uint32_t> typed_rows(const Season& season, TableKind kind) {
  const Located& at = season.where(kind);
  const auto typed = typed_columns(at, kind);
  std::vector<std::uint32_t> rows;
  rows.reserve(at.end_row - std::min(at.first_row, at.end_row));
  for (std::size_t row = at.first_row; row < at.end_row; ++row)
    if (typed_row(*at.table, row, typed))
      rows.push_back(static_cast<std::uint32_t>(row));
  return rows;
}

template <class Record>
void read_row(const Table& table, std::uint32_t row, const ColumnReaders& readers, Record& record) {
  record.row = row;
  for (const auto& reader : readers)
    if (const Cell& cell = table.at(row, reader->column()); !cell.empty())
      reader->read_into(record, cell);
}

/// A record for every row in which something was typed.
template <class Record>
void read_rows(const Season& season, TableKind kind, const Lookups& lookups, FixedArray<Record>& records) {
  if (!season.where(kind).found())
    return;
  const auto rows = typed_rows(season, kind);
  records = FixedArray<Record>(rows.size());
  constexpr std::size_t least = 20'000;
  in_ranges(rows.size(), least, [&](std::size_t first, std::size_t end) {
    Lookups own = lookups; // they keep what they have looked up
    const auto readers = column_readers(season, kind, own);
    for (std::size_t i = first; i < end; ++i)
      read_row(*season.where(kind).table, rows[i], readers, records.make(i));
  });
}

/// The same for the few that hold texts.
template <class Record>
void read_rows(const Season& season, TableKind kind, Lookups& lookups, std::vector<Record>& records) {
  if (!season.where(kind).found())
    return;
  const auto readers = column_readers(season, kind, lookups);
  for (const std::uint32_t row : typed_rows(season, kind))
    read_row(*season.where(kind).table, row, readers, records.emplace_back());
}

} // namespace wetspell
