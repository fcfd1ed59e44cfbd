#include "audit/tidy.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

std::string heading(Field field, Unit unit) {
  const FieldSpec& s = spec(field);
  const bool shown = unit != Unit::none && s.type == FieldType::quantity;
  return shown ? fmt::format("{} ({})", s.heading, symbol(unit)) : std::string(s.heading);
}

} // namespace

TidyTable::TidyTable(TableKind kind, std::vector<Field> fields, std::vector<Unit> units, std::size_t rows,
                     std::size_t sources)
    : kind_(kind), fields_(std::move(fields)), units_(std::move(units)),
      cells_(Place{std::string(spec(kind).name), 1, 0}, rows + 1, fields_.size()),
      columns_(sources, std::vector<std::int32_t>(fields_.size(), -1)) {
  for (std::size_t column = 0; column < fields_.size(); ++column)
    cells_.at(0, column) = Cell::of_text(heading(fields_[column], units_[column]));
  from_.reserve(rows);
  states.reserve(rows);
}

std::int32_t TidyTable::column(Field field) const {
  const auto found = std::find(fields_.begin(), fields_.end(), field);
  return found == fields_.end() ? -1 : static_cast<std::int32_t>(found - fields_.begin());
}

std::size_t TidyTable::add_row(std::uint32_t table, std::uint32_t grid_row, std::uint32_t grid_column) {
  from_.push_back({table, grid_row, grid_column});
  states.push_back(RowState::usable);
  return from_.size() - 1;
}

void TidyTable::comes_from(std::uint32_t table, std::size_t column, std::uint32_t grid_column) {
  columns_[table][column] = static_cast<std::int32_t>(grid_column);
}

void TidyTable::comes_from(std::size_t row, std::size_t column, Spot spot) {
  elsewhere_[row * fields_.size() + column] = spot;
}

Spot TidyTable::origin(std::size_t row, std::size_t column) const {
  if (const auto found = elsewhere_.find(row * fields_.size() + column); found != elsewhere_.end())
    return found->second;
  const Spot& own = from_[row];
  const std::int32_t at = columns_[own.table][column];
  return {own.table, own.row, at < 0 ? own.column : static_cast<std::uint32_t>(at)};
}

Table TidyTable::take_cells() {
  Table cells = std::move(cells_);
  cells_ = Table();
  return cells;
}

void Tidy::take_unread(Tidy other) {
  const std::size_t room = unread_kept - std::min(unread_kept, unread.size());
  const auto end = other.unread.begin() + static_cast<std::ptrdiff_t>(std::min(room, other.unread.size()));
  std::move(other.unread.begin(), end, std::back_inserter(unread));
  unread_count += other.unread_count;
}

const TidyTable* Tidy::of(TableKind kind) const {
  for (const TidyTable& table : tables)
    if (table.kind() == kind)
      return &table;
  return nullptr;
}

} // namespace wetspell
