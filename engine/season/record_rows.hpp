// The rows of a located table as records.
#pragma once

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

/// Appends a record for every row in which something was typed.
template <class Record>
void read_rows(const Season& season, TableKind kind, const ColumnReaders& readers,
               std::vector<Record>& records) {
  const Located& at = season.where(kind);
  const auto typed = typed_columns(at, kind);
  records.reserve(records.size() + at.end_row - std::min(at.first_row, at.end_row));
  for (std::size_t row = at.first_row; row < at.end_row; ++row) {
    if (!typed_row(*at.table, row, typed))
      continue;
    Record& record = records.emplace_back();
    record.row = static_cast<std::uint32_t>(row);
    for (const auto& reader : readers)
      if (const Cell& cell = at.table->at(row, reader->column()); !cell.empty())
        reader->read_into(record, cell);
  }
}

template <class Record>
void read_rows(const Season& season, TableKind kind, Lookups& lookups, std::vector<Record>& records) {
  if (season.where(kind).found())
    read_rows(season, kind, column_readers(season, kind, lookups), records);
}

} // namespace wetspell
