// A season's summary for people (text), for tables (CSV) and for programs (JSON).
#pragma once

#include "estimate/summary.hpp"

#include <string>
#include <string_view>

namespace wetspell {

/// The programme first, then pool by pool, then what was left out; one figure a line.
std::string summary_text(const Season& season, const SeasonSummary& summary, std::string_view file);

/// One row a figure: pool, group, name, title, value, unit, low, high, level, n, note; the programme's
/// figures have no pool, those of one group name it.
std::string summary_csv(const Season& season, const SeasonSummary& summary);

/// {"file", "pools": [{"pool", "figures": [{"name", "value", "unit", "low", "high", "level", "n", "note"}]}],
/// "programme": [figures as above, with "group"], "left_out": [{"sheet", "row", "column", "field", "pool",
/// "value", "why"}], "remarks": [...]}. Values in the workbook's units; days as ISO 8601 dates; null for what
/// is not known.
std::string summary_json(const Season& season, const SeasonSummary& summary, std::string_view file);

} // namespace wetspell
