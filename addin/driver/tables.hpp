#pragma once
// Workbooks as tables for the engine, one office for all of them.

#include "driver/office.hpp"

#include <filesystem>
#include <string>

namespace wetspell::driver {

/// One line of JSON: {"file", "tables"} as engine/exchange/tables_json.hpp writes them, or {"file",
/// "problem"} when the office cannot open the file. Opened for reading only; its macros do not run.
std::string tablesLine(Office& office, const std::filesystem::path& file);

} // namespace wetspell::driver
