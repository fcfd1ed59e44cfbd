// A check's report for people (text), for tables (CSV) and for programs (JSON).
#pragma once

#include "check/check.hpp"

#include <string>
#include <string_view>

namespace wetspell {

std::string report_text(const Season& season, const CheckReport& report, std::string_view file);
std::string report_csv(const Season& season, const CheckReport& report);
/// {"file", "rows_checked", "findings": [{"rule", "level", "sheet", "row", "column", "field", "value",
/// "message", "advice", "replacement"}]}; row as Calc numbers it, column as Calc letters it, replacement null
/// for none.
std::string report_json(const Season& season, const CheckReport& report, std::string_view file);

} // namespace wetspell
