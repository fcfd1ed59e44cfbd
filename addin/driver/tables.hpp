#pragma once
// Workbooks as tables for the engine, one office for all of them.

#include "driver/office.hpp"
#include "sheet/read_sheets.hpp"

#include <filesystem>
#include <string>

namespace wetspell::driver {

/// One line of JSON: {"file", "tables"} as engine/exchange/tables_json.hpp writes them, or {"file",
/// "problem"} when the office cannot open the file or falls over it. Opened for reading only; its macros do
/// not run, and nothing that it links to is fetched.
std::string tablesLine(Office& office, const std::filesystem::path& file, addin::Sheets which);

} // namespace wetspell::driver
