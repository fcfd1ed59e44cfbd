#include "season/visit_rows.hpp"

#include "season/heading.hpp"
#include "season/heading_row.hpp"
#include "season/read_parts.hpp"

namespace wetspell {

namespace {

/// Whether nothing in the rows below the first one could be anything but a reading.
bool nothing_but_readings(const Table& table) {
  HeadingRows headings(table);
  for (std::size_t row = 1; row < table.rows(); ++row) {
    for (std::size_t column = 0; column < table.columns(); ++column) {
      const Cell& cell = table.at(row, column);
      if (cell.kind() == CellKind::text &&
          (names_setting(cell.text()) || lone_unit(cell.text()) != Unit::none))
        return false;
    }
    if (!headings.at(row).empty())
      return false;
  }
  return true;
}

bool blank(const Table& table, std::size_t row, const Located& at) {
  return std::none_of(at.columns.begin(), at.columns.end(), [&](std::int32_t column) {
    return column >= 0 && holds_something(table.at(row, static_cast<std::size_t>(column)));
  });
}

} // namespace

VisitRows::VisitRows(Season season)
    : season_(std::move(season)), lookups_(lookups_of(season_)),
      readers_(column_readers(season_, TableKind::visits, lookups_)) {}

const Season* VisitRows::with(std::span<const Cell> cells) {
  Table& table = *season_.sheets.front();
  Located& visits = season_.located[static_cast<std::size_t>(TableKind::visits)];
  const bool alone = std::ranges::count(season_.located, &table, &Located::table) == 1;
  if (visits.table != &table || visits.heading_row != 0 || !alone ||
      !season_.where(TableKind::pools).found() || !season_.where(TableKind::people).found())
    return nullptr;
  Table full({.sheet = table.sheet()}, 1 + cells.size() / table.columns(), table.columns());
  for (std::size_t column = 0; column < table.columns(); ++column)
    full.at(0, column) = table.at(0, column);
  for (std::size_t i = 0; i < cells.size(); ++i)
    full.at(1 + i / table.columns(), i % table.columns()) = cells[i];
  if (!nothing_but_readings(full))
    return nullptr;
  table = std::move(full);
  visits.end_row = table.rows();
  while (visits.end_row > visits.first_row && blank(table, visits.end_row - 1, visits))
    --visits.end_row;
  const auto rows = typed_rows(season_, TableKind::visits);
  season_.visits = FixedArray<Visit>(rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i)
    read_row(table, rows[i], readers_, season_.visits.make(i));
  return &season_;
}

} // namespace wetspell
