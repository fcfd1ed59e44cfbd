// One amount inside a text: a number, mixed number or fraction, and its unit if one is typed.
#pragma once

#include "quantity/scan.hpp"

namespace wetspell {

struct Amount {
  double written = 0;
  double step = 0;        ///< the step of the last digit, in `unit`; for a fraction its unit fraction
  Unit unit = Unit::none; ///< none: bare
  bool typed = false;     ///< a unit stands in the text
  bool compound = false;  ///< feet and inches, metres and centimetres
  bool fraction = false;  ///< a fraction alone, 3/4
  bool slashed = false;   ///< ... written with a plain slash
  bool whole = true;      ///< neither decimals nor a fraction
  Reason trouble{};
};

/// Whether an amount may start here: a number, perhaps after a minus sign.
bool amount_ahead(Cursor cursor);

/// Reads the amount that starts here. `kind` settles what a sign or a short word stands for ("c", "m").
Amount read_amount(Cursor& cursor, Kind kind);
/// The unit of a bare amount when it follows behind a mark: "48+ in". Moves past it only when it is one.
bool take_late_unit(Cursor& cursor, Amount& amount, Kind kind);

} // namespace wetspell
