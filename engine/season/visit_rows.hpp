// Rows of visits, one after another, beside tables that stay as they are.
#pragma once

#include "season/record_rows.hpp"

#include <span>

namespace wetspell {

/// A season whose other tables were read once, for rows of visits that come and go: a sheet that is looked at
/// as it is typed asks for one row at a time.
class VisitRows {
public:
  /// The first of the season's sheets holds the headings of its visits, in its first row, and nothing below.
  explicit VisitRows(Season season);
  VisitRows(const VisitRows&) = delete;
  VisitRows& operator=(const VisitRows&) = delete;

  /// The season with these rows of visits below the headings and no others, exactly as read_season would have
  /// read it from all sheets; good until the next call. Null where more would follow from the rows than
  /// visits: rows with words of headings, units or settings; any rows when another table stands beside the
  /// visits, or when pools or people have no table, since visits then name them.
  const Season* with(std::span<const Cell> cells);

private:
  Season season_;
  Lookups lookups_;
  ColumnReaders readers_;
};

} // namespace wetspell
