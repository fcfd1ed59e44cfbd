// One time of day inside a text.
#pragma once

#include "quantity/read.hpp"
#include "quantity/scan.hpp"

#include <optional>

namespace wetspell {

struct ClockTime {
  double fraction = 0; ///< of a day
  double step = 0;     ///< fraction of a day: an hour, a minute or a second
  Reason trouble{};
};

/// Reads the time that starts here: 9:05, 14h30, 9 am, 1430, noon; moves past it.
ClockTime read_clock(Cursor& cursor);

/// The time behind a date ("2026-03-21 14:30"), when the text is that.
std::optional<double> time_behind_date(Cursor cursor, DateOrder order);

} // namespace wetspell
