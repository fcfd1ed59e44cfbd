// Sheets of one old workbook, audited.
#pragma once

#include "audit/audit.hpp"

#include <utility>
#include <vector>

namespace wetspell::testing {

template <class... Sheets> Audit audited(const GivenMap* given, Sheets... sheets) {
  std::vector<Table> all;
  (all.push_back(std::move(sheets)), ...);
  return audit("old.ods", std::move(all), {given, 46280});
}

} // namespace wetspell::testing
