// A class table as somebody edited it in the workbook.
#include "measure/class_table.hpp"
#include "measure/refuse.hpp"
#include "quantity/read.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <tuple>

namespace wetspell {

namespace {

constexpr double open_end = std::numeric_limits<double>::infinity();

Quantity read_limit(const Cell& cell, Unit unit) {
  const Kind kind = spec(unit).kind == Kind::length ? Kind::depth : spec(unit).kind;
  return read(cell, {.kind = kind, .assume = unit});
}

/// Two texts that are no limits: the headings above the table.
bool is_heading(const Cell& from, const Cell& to, Unit unit) {
  return from.kind() == CellKind::text && to.kind() == CellKind::text &&
         read_limit(from, unit).status == Status::bad && read_limit(to, unit).status == Status::bad;
}

/// The limit in the table's unit; `open` for a blank cell.
Result<double> limit(const Cell& cell, double open, const ClassTable& like, const std::string& label) {
  if (cell.empty()) {
    return open;
  }
  const Quantity quantity = read_limit(cell, like.unit);
  const double value = quantity.status == Status::value ? convert(quantity.written, quantity.unit, like.unit)
                                                        : Quantity::no_value;
  if (!std::isfinite(value)) {
    return bad_argument(fmt::format("The limit \"{}\" of the class \"{}\" cannot be read as one number.",
                                    to_text(cell), label));
  }
  return value;
}

/// Joins classes that are one whole number apart where that means no gap, and refuses what is left of gaps.
std::optional<Problem> joined(ClassTable& table) {
  for (std::size_t i = 1; i < table.rows.size(); ++i) {
    ClassRow& lower = table.rows[i - 1];
    const ClassRow& upper = table.rows[i];
    const bool same_value = lower.low == lower.high && upper.low == upper.high && lower.low == upper.low;
    if (upper.low < lower.high || same_value) {
      return bad_argument(fmt::format("The classes \"{}\" and \"{}\" overlap.", lower.label, upper.label));
    }
    if (upper.low == lower.high) {
      continue;
    }
    const bool whole = lower.high == std::floor(lower.high) && upper.low - lower.high == 1;
    if (table.side != LimitSide::to_higher || !whole) {
      return bad_argument(
          fmt::format("No class holds what lies between {} and {}, the limits of \"{}\" and \"{}\".",
                      in_words(lower.high), in_words(upper.low), lower.label, upper.label));
    }
    lower.high = upper.low;
  }
  return std::nullopt;
}

} // namespace

Result<ClassTable> class_table_from(std::span<const Cell> cells, std::size_t columns,
                                    const ClassTable& like) {
  if (columns < 3 || cells.size() % columns != 0) {
    return bad_argument(
        fmt::format("A table of {} classes needs three columns: label, from, to.", like.name));
  }
  ClassTable table{
      .name = like.name, .unit = like.unit, .side = like.side, .rows = {}, .not_known = like.not_known};
  bool not_known_read = false;
  for (std::size_t at = 0; at < cells.size(); at += columns) {
    const Cell& from = cells[at + 1];
    const Cell& to = cells[at + 2];
    const std::string label = to_text(cells[at]);
    if ((at == 0 && is_heading(from, to, like.unit)) || (cells[at].empty() && from.empty() && to.empty())) {
      continue;
    }
    if (label.find_first_not_of(" \t") == std::string::npos || cells[at].kind() == CellKind::error) {
      return bad_argument(fmt::format("Row {} of the {} classes has no label.", at / columns + 1, like.name));
    }
    if (class_named(table, label) &&
        (not_known_read || class_named(table, label).value() < table.rows.size())) {
      return bad_argument(fmt::format("The class \"{}\" stands twice in the {} classes.", label, like.name));
    }
    if (from.empty() && to.empty()) {
      if (not_known_read) {
        return bad_argument(
            fmt::format("\"{}\" and \"{}\" have no limits; only the class for what is not known has "
                        "none.",
                        table.not_known, label));
      }
      table.not_known = label;
      not_known_read = true;
      continue;
    }
    const auto low = limit(from, -open_end, like, label);
    if (!low) {
      return low.error();
    }
    const auto high = limit(to, open_end, like, label);
    if (!high) {
      return high.error();
    }
    if (low.value() > high.value()) {
      return bad_argument(fmt::format("The class \"{}\" runs from {} down to {}; from must not be over to.",
                                      label, in_words(low.value()), in_words(high.value())));
    }
    table.rows.push_back({.label = label, .low = low.value(), .high = high.value()});
  }
  if (table.rows.empty()) {
    return not_enough(fmt::format("The table of {} classes holds no class with limits.", like.name));
  }
  std::ranges::sort(table.rows, {}, [](const ClassRow& row) { return std::tuple(row.low, row.high); });
  if (auto problem = joined(table)) {
    return *std::move(problem);
  }
  return table;
}

} // namespace wetspell
