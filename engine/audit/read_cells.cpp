// A cell a visit: pools down one side, days along the other.
#include "audit/row_reader.hpp"
#include "season/locate.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

/// A column of readings of one day.
struct DayColumn {
  Spot heading;
  ReadDate date;
  std::size_t first_row = 0, rows = 0; ///< of the tidy table
};

} // namespace

void read_cells(const std::vector<Mapped>& tables, std::uint32_t index, TidyTable& to, RowReader& reader) {
  const Mapped& table = tables[index];
  const Block& block = table.block;
  const Mapping& reading = table.map.columns[block.days->days.front()];
  const bool visits = to.kind() == TableKind::visits;
  const auto column = [&](Field field) { return static_cast<std::size_t>(to.column(field)); };
  const std::size_t pool = column(visits ? Field::visit_pool : Field::life_pool);
  const Field date_field = visits ? Field::visit_date : Field::life_date;
  const std::size_t date = column(date_field);
  const std::size_t value = column(visits ? *reading.field : Field::life_by_first);
  std::vector<DayColumn> days;
  for (const std::size_t day : block.days->days)
    days.push_back(
        {{index, 0, static_cast<std::uint32_t>(day)}, date_from(block.grid.at(0, day), table.dates)});
  to.comes_from(index, pool, static_cast<std::uint32_t>(block.days->names));
  KeyReader keys(table);
  for (std::size_t row = block.first_data; row < block.end_data; ++row) {
    if (!block.is_record(row))
      continue;
    const Cell name = keys.at(row).pool;
    for (DayColumn& day : days) {
      const Cell& cell = block.grid.at(row, day.heading.column);
      if (!holds_something(cell))
        continue;
      const Spot at{index, static_cast<std::uint32_t>(row), day.heading.column};
      const std::size_t tidy_row = to.add_row(index, at.row, at.column);
      to.at(tidy_row, pool) = name;
      to.comes_from(tidy_row, date, day.heading);
      to.at(tidy_row, date) =
          day.date.readable ? Cell::of_date(day.date.serial) : block.grid.at(0, at.column);
      if (!day.date.readable) {
        to.states[tidy_row] = day.date.askable ? RowState::after_answers : RowState::unusable;
        day.first_row = day.rows++ == 0 ? tidy_row : day.first_row;
      }
      if (!visits) {
        to.at(tidy_row, column(Field::life_species)) = Cell::of_text(reading.count->species);
        to.at(tidy_row, column(Field::life_seen_as)) = Cell::of_text(reading.count->seen_as);
      }
      reader.cell(to, tidy_row, value, cell, at, reading.unit, reading.unit_open);
    }
  }
  for (const DayColumn& day : days)
    if (day.rows > 0)
      reader.unread(to, day.first_row, day.heading, block.grid.at(0, day.heading.column), day.date.reason,
                    fmt::format("{}: {}", spec(date_field).heading, day.date.reason), day.rows);
}

} // namespace wetspell
