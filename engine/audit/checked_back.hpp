// Checks the tidy rows and leads everything that is found back to the source.
#pragma once

#include "audit/audit.hpp"

namespace wetspell {

/// A table of visits without a row, for sources that have none.
Table empty_visits();

class CheckedBack {
public:
  explicit CheckedBack(Audit& audit) : audit_(audit) {}
  /// Reads the tidy tables and the workbook's own lists as a season, checks it, fills the audit.
  void check(std::vector<Table> lists, const AuditOptions& how);

private:
  [[nodiscard]] const TidyTable* tidy_at(const Place& place) const;
  [[nodiscard]] Place back(const Place& place) const;
  [[nodiscard]] std::string rows_in_source(const std::string& words, const TidyTable& tidy,
                                           std::size_t table) const;
  void take_findings(CheckReport report);
  void count_reasons();
  void count_rows();
  void tell_lacking();

  Audit& audit_;
};

} // namespace wetspell
