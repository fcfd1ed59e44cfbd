// What comes back of the handouts: who fills in what, and what people do to a file meanwhile.
#pragma once

#include "demo/programme.hpp"
#include "demo/sheet_rows.hpp"

#include <optional>
#include <string>
#include <vector>

namespace wetspell::demo {

/// A file that somebody sends back.
struct Returned {
  std::string person;         ///< whose handout it is
  std::string ending;         ///< which of its two formats
  std::string file;           ///< the name under which it comes
  std::string sheet;          ///< what the sheet of visits is called now; empty: as it was
  std::optional<Field> moved; ///< the column that stands behind all others now
  std::vector<SheetRow> visits;
  bool answers = false; ///< to all questions
};

/// One person renames the sheet and answers the questions, one moves a column and writes metres, one sends
/// two files that say something else of one visit.
std::vector<Returned> invent_returns(const Programme& programme, Chance& chance);

} // namespace wetspell::demo
