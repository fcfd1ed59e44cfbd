#pragma once
// The work behind the commands, the same for the menu, macros and the command line.

#include "check/check.hpp"
#include "season/season.hpp"
#include "sheet/sheets.hpp"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::addin {

/// Told the share done (0 to 1) now and then; false cancels.
using Progress = std::function<bool(double)>;

/// A season read from a document, and what its check found.
struct Checked {
  Season season;
  CheckReport report;
};

/// Reads and checks; writes nothing. Refuses in words when the document has no table of visits.
Checked look(const SheetDocument& document, const Progress& progress = {});

/// Reads, checks and writes the findings, as one undo step.
Checked checkSeason(const SheetDocument& document, const Progress& progress = {});

/// Makes the replacements that the findings with these marks propose and checks again, as one undo step; all
/// or none. Gives how many findings were answered.
std::size_t applyMarked(const SheetDocument& document, const std::vector<std::string>& marks);
std::size_t applyLevel(const SheetDocument& document, std::string_view level);

/// The level of this name; refuses other words.
Level levelNamed(std::string_view word);

const Finding* findingMarked(const Checked& checked, std::string_view mark);

/// `rows` more rows below the visits, ready to type into. Refuses when the sheet has no prepared row to
/// follow.
void makeRoom(const SheetDocument& document, std::size_t rows);

/// Takes the findings away, as one undo step; gives how many rows there were.
std::size_t clearSeason(const SheetDocument& document);

} // namespace wetspell::addin
