// One cell of a table, as it was typed: empty, number, text, date or error.
#pragma once

#include <cstdint>
#include <string>
#include <utility>

namespace wetspell {

enum class CellKind : std::uint8_t { empty, number, text, date, error };

/// A cell's content. A blank is a kind of its own and never a zero.
struct Cell {
  CellKind kind = CellKind::empty;
  double number = 0; ///< number cells: the number; date cells: days since 1899-12-30, time as fraction
  std::string text;  ///< text cells: UTF-8; error cells: the error as the sheet shows it

  static Cell of_number(double value) { return {CellKind::number, value, {}}; }
  static Cell of_date(double serial) { return {CellKind::date, serial, {}}; }
  /// Text; an empty text is an empty cell.
  static Cell of_text(std::string value) {
    return value.empty() ? Cell{} : Cell{CellKind::text, 0, std::move(value)};
  }
  static Cell of_error(std::string value) { return {CellKind::error, 0, std::move(value)}; }

  [[nodiscard]] bool empty() const { return kind == CellKind::empty; }
  bool operator==(const Cell&) const = default;
};

/// The cell as a person would write it: shortest digits that give the number back, dates as 2026-03-21.
std::string to_text(const Cell& cell);

} // namespace wetspell
