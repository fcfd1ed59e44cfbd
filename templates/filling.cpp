#include "filling.hpp"

#include "formula.hpp"
#include "layout.hpp"
#include "starting_rows.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

namespace wetspell::workbook {
namespace {

const Cell blank;

constexpr std::size_t far_below = 9999; // no programme has as many pools or people

void check(const FilledTable& table) {
  for (const Field field : table.fields)
    if (spec(field).table != table.table || spec(field).role == Role::derived)
      throw std::invalid_argument(
          fmt::format("{} cannot be filled into {}", spec(field).name, spec(table.table).name));
  for (const auto& row : table.rows)
    if (row.size() != table.fields.size())
      throw std::invalid_argument(fmt::format("a row of {} has {} cells, not {}", spec(table.table).name,
                                              row.size(), table.fields.size()));
}

} // namespace

Filling::Filling(const WorkbookContent& content)
    : tables_(starting_rows()), settings_(settings_catalogue().size()),
      print_filled_only_(content.print_filled_rows_only) {
  for (const FilledTable& table : content.tables) {
    check(table);
    std::erase_if(tables_, [&](const FilledTable& other) { return other.table == table.table; });
    tables_.push_back(table);
  }
  for (const SettingSpec& setting : settings_catalogue())
    settings_[static_cast<std::size_t>(setting.setting)] = Cell::of_text(std::string(setting.default_value));
  for (const auto& [setting, cell] : content.settings)
    settings_[static_cast<std::size_t>(setting)] = cell;
}

const Cell& Filling::at(Field field, std::size_t row) const {
  for (const FilledTable& table : tables_) {
    if (table.table != spec(field).table || row >= table.rows.size())
      continue;
    const auto found = std::find(table.fields.begin(), table.fields.end(), field);
    return found == table.fields.end()
               ? blank
               : table.rows[row][static_cast<std::size_t>(found - table.fields.begin())];
  }
  return blank;
}

const Cell& Filling::setting(Setting setting) const {
  return settings_[static_cast<std::size_t>(setting)];
}

std::size_t Filling::filled(TableKind kind) const {
  for (const FilledTable& table : tables_)
    if (table.table == kind)
      return table.rows.size();
  return 0;
}

std::size_t Filling::ready(TableKind kind) const {
  return std::max(layout(kind).rows, filled(kind));
}

std::size_t Filling::printed(TableKind kind) const {
  const std::size_t least = std::min(layout(kind).printed_least, ready(kind));
  // The check widens the print to what it writes.
  return print_filled_only_ || kind == TableKind::findings ? std::max(least, filled(kind)) : ready(kind);
}

std::size_t Filling::last_row(TableKind kind) const {
  const bool goes_on = kind == TableKind::pools || kind == TableKind::people;
  return std::max(layout(kind).heading_row + ready(kind), goes_on ? far_below : 0);
}

std::string Filling::range(Field field) const {
  const FieldSpec& what = spec(field);
  const TableLayout& where = layout(what.table);
  const std::size_t column = column_of(field);
  return fixed_range(spec(what.table).sheet, column, where.heading_row + 1, column, last_row(what.table));
}

void put(SheetCell& into, const Cell& cell, Look look) {
  switch (cell.kind()) {
  case CellKind::empty:
    break;
  case CellKind::number:
  case CellKind::date:
    into.number = cell.number();
    into.holds = look == Look::typed_time        ? Holds::time
                 : cell.kind() == CellKind::date ? Holds::date
                                                 : Holds::number;
    break;
  case CellKind::text:
  case CellKind::error: // a fresh workbook has no formula that could be in error; the sign stays as text
    into.text = cell.text();
    into.holds = Holds::text;
    break;
  }
}

} // namespace wetspell::workbook
