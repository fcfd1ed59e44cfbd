#pragma once
// Handouts from the workbook that is open: written by the engine, stored by this office.

#include "commands/desk.hpp"

#include <string>
#include <vector>

namespace wetspell::addin {

/// Writes the workbook for the person with this code into the folder (an address, "file:///..."), as .ods and
/// as .xlsx; gives the addresses of both. Refuses in words, and writes nothing, when the season has no such
/// person or a file of that name is there already.
std::vector<std::string> handOut(const Context& context, const SheetDocument& document,
                                 const std::string& person, const std::string& folder);

/// The code of the person that a row (from 1) of a sheet is about: a row of the people, the visits or the
/// counts of life. Empty for any other row.
std::string personOfRow(const Season& season, const std::string& sheet, std::size_t row);

} // namespace wetspell::addin
