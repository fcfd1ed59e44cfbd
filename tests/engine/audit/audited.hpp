// Sheets of one old workbook, audited.
#pragma once

#include "audit/audit.hpp"

#include <gtest/gtest.h>

#include <string_view>
#include <utility>
#include <vector>

namespace wetspell::testing {

template <class... Sheets> Audit audited(const GivenMap* given, Sheets... sheets) {
  std::vector<Table> all;
  (all.push_back(std::move(sheets)), ...);
  return audit("old.ods", std::move(all), {given, 46280});
}

/// What the first column under a heading was taken for.
inline const Mapping& column(const Audit& audit, std::string_view heading) {
  static const Mapping none;
  for (const AuditedTable& table : audit.tables)
    for (const AuditedColumn& each : table.columns)
      if (each.mapping.heading == heading)
        return each.mapping;
  ADD_FAILURE() << "no heading " << heading;
  return none;
}

} // namespace wetspell::testing
