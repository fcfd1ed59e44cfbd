// What to ask whom as a table, for a sheet.
#pragma once

#include "gather/ask_list.hpp"
#include "table/table.hpp"

namespace wetspell {

namespace AskColumn {
enum Column : std::size_t { person, name, pool, day, what, written, doubt, question, letter };
}
inline constexpr std::size_t ask_columns = AskColumn::letter + 1;

/// A row a question, with a heading row above; in a person's first row the whole text for a mail.
Table ask_table(const Season& season, const std::vector<AskList>& lists, Place origin);

} // namespace wetspell
