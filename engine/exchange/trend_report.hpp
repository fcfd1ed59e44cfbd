// Trends over several seasons for people (text), for tables (CSV) and for programs (JSON).
#pragma once

#include "estimate/trend_figures.hpp"

#include <span>
#include <string>

namespace wetspell {

/// The programme's figures first, then pool by pool; one trend a line. Says so when the seasons are too few.
std::string trends_text(std::span<const Trend> trends, std::size_t seasons, const Settings& settings);

/// One row a trend: pool, group, name, figure, change a year, unit, from, to, p, years, note.
std::string trends_csv(std::span<const Trend> trends, const Settings& settings);

/// {"trends": [{"pool", "group", "name", "unit", "years", "values", "slope", "low", "high", "p", "n",
/// "note"}]}: values and slope in the units of `settings`; null for what is not known.
std::string trends_json(std::span<const Trend> trends, const Settings& settings);

} // namespace wetspell
