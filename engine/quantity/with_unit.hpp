// A reading that moves to where bare numbers are in another unit.
#pragma once

#include "quantity/unit.hpp"
#include "table/cell.hpp"

namespace wetspell {

/// A bare reading in `unit` with its unit behind it: "30 cm", "about 30 cm", "20-25 cm". What says its unit
/// itself, or is no reading, stays as it was typed.
Cell with_unit(const Cell& cell, Kind kind, Unit unit);

} // namespace wetspell
