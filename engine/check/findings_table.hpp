// Findings as a table in the catalogue's columns, and answers read back from one.
#pragma once

#include "check/check.hpp"

#include <vector>

namespace wetspell {

/// One row a finding, columns in the order of fields(TableKind::findings), without a heading row.
Table findings_table(const Season& season, const CheckReport& report, Place origin);

/// The answers a person typed into the findings table of the season, if it has one.
std::vector<GivenAnswer> answers_in(const Season& season);

/// One sentence: "3 to fix, 12 to ask, 4 notes in 187 rows; 2 answered."
std::string verdict(const CheckReport& report);

} // namespace wetspell
