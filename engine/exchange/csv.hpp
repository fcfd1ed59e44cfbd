// Tables from and to comma-separated text (RFC 4180), any usual delimiter, UTF-8.
#pragma once

#include "base/result.hpp"
#include "table/table.hpp"

#include <string>
#include <string_view>

namespace wetspell {

/// Reads a delimited text. The delimiter (comma, semicolon, tab, bar) is the one that divides the lines
/// most evenly. Plain numbers (point as decimal sign, no grouping) become number cells, everything else text;
/// fields in quotes stay text. Refuses text that is not UTF-8, and quotes that never close, with the line's
/// number.
Result<Table> table_from_csv(std::string_view text, std::string sheet);

/// The same for files that nobody prepared: any usual encoding (see decode.hpp), and quotation marks that
/// never close are taken for signs (U+2033). Refuses only what is too large.
Result<Table> table_from_any_text(std::string bytes, std::string sheet);

/// Writes a table. Text that a spreadsheet program would take for a formula is made harmless by a leading
/// apostrophe.
std::string csv_from_table(const Table& table);

} // namespace wetspell
