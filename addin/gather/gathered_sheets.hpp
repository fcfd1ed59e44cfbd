#pragma once
// The sheets 'To choose' and 'Gathered'.

#include "gather/choose.hpp"
#include "sheet/sheets.hpp"

namespace wetspell::addin {

// Names of the blocks; in files for ever.
inline constexpr const char* chooseBlock = "wetspell_to_choose";
inline constexpr const char* gatheredBlock = "wetspell_gathered";

/// What stands in a block of ours; an empty table where there is none.
Table tableOfBlock(const SheetDocument& document, const char* name);

/// The lines with a drop-down for the choice, in place of those that were there.
void writeToChoose(const SheetDocument& document, const Table& lines);
void writeGathered(const SheetDocument& document, const Table& files);

} // namespace wetspell::addin
