// Read a quantity as people type it. What cannot be read is refused with the reason, never guessed.
#pragma once

#include "quantity/quantity.hpp"
#include "table/cell.hpp"

#include <string_view>

namespace wetspell {

enum class DateOrder : std::uint8_t { unknown, day_first, month_first };

/// What the reader may assume about a cell.
struct ReadOptions {
  Kind kind = Kind::depth;
  Unit assume = Unit::none;                  ///< unit of a bare number; none: usual_unit(kind)
  DateOrder date_order = DateOrder::unknown; ///< 3/4/2026 is refused as ambiguous while unknown

  friend bool operator==(const ReadOptions&, const ReadOptions&) = default;
};

/// Reads a typed text. See docs/quantities.md for what is understood and what is refused.
Quantity read(std::string_view text, const ReadOptions& options);

/// Reads a cell: blank stays blank, a number is in the assumed unit, a date serves dates and times only,
/// an error is bad.
Quantity read(const Cell& cell, const ReadOptions& options);

} // namespace wetspell
