#pragma once
// The sheet 'Ask list': what to ask whom, a row a question, and one text a person, ready to be copied into a
// mail.

#include "gather/ask_table.hpp"
#include "sheet/sheets.hpp"

namespace wetspell::addin {

// Name of the block; in files for ever.
inline constexpr const char* askBlock = "wetspell_ask_list";

/// In place of the list that was there.
void writeAskList(const SheetDocument& document, const Season& season, const std::vector<AskList>& lists);

} // namespace wetspell::addin
