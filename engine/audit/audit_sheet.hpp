// The audit as a sheet for people: what can be used first, then every doubt, each with the way to its cell.
#pragma once

#include "audit/audit.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace wetspell {

enum class AuditLine : std::uint8_t { title, verdict, words, section, heading, body };

/// Columns of the sheet; the lower parts have fewer.
inline constexpr std::size_t audit_columns = 7;

struct AuditSheet {
  Table cells;
  std::vector<AuditLine> lines;               ///< one a row
  std::vector<std::optional<Place>> leads_to; ///< where a row's first cell leads, one a row; without a
                                              ///< sheet: to that row of this one
};

/// How many lines of one part stand on the sheet at most; the reports for programs have all.
inline constexpr std::size_t audit_lines_told = 20'000;

AuditSheet audit_sheet(const Audit& audit);

} // namespace wetspell
