// Readers for folded text, one for each family of kinds. read() chooses.
#pragma once

#include "quantity/read.hpp"
#include "quantity/scan.hpp"

namespace wetspell {

/// A quantity that is bad for this reason.
Quantity bad(Reason reason);

/// Temperature, depth, length, area, volume, per cent and counts. `assume` fits the kind.
Quantity read_measure(Cursor cursor, Kind kind, Unit assume);
/// A bare number in a unit that fits the kind. `step` is that of its last digit; 0: as its shortest digits
/// have it.
Quantity bare_number(double value, double step, Kind kind, Unit assume);

Quantity read_date(Cursor cursor, DateOrder order);
Quantity read_time(Cursor cursor, DateOrder order);

} // namespace wetspell
