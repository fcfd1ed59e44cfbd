// Signs and words around the one or two numbers of a text.
#pragma once

#include "quantity/around.hpp"
#include "quantity/scan.hpp"

namespace wetspell {

/// What stands around the one or two amounts of a text.
struct Marks {
  bool about = false;
  bool over = false;
  bool under = false;
  bool between = false;
  bool from = false;
  bool minus = false;
  Reason trouble{};

  void take(Around around) {
    about = about || around == Around::about;
    over = over || around == Around::over;
    under = under || around == Around::under;
    between = between || around == Around::between;
    from = from || around == Around::from;
    minus = minus || around == Around::minus;
  }
};

enum class Joint : std::uint8_t { none, range, plus_minus };

/// All that stands before the first number; moves past it.
Marks read_before(Cursor& cursor, Kind kind);
/// The sign or word that joins two amounts, if another amount follows it; moves past it only then.
Joint read_joint(Cursor& cursor, const Marks& marks);
/// One mark behind a number: moves past it, or leaves the cursor and says no.
bool take_after(Cursor& cursor, Marks& marks, Kind kind);

/// Marks of doubt before a date or a time: "about 9:30", "~9:30". Whether there were any; moves past them.
bool skip_about(Cursor& cursor);
/// Whether all that is left are marks of doubt ("?", "approx"); moves past them.
bool skip_doubt(Cursor& cursor, bool& about);

} // namespace wetspell
