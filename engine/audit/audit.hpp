// The audit of an old sheet: what can be used, what not and why. The cells that came in are never changed.
#pragma once

#include "audit/tidy.hpp"
#include "check/check.hpp"

#include <array>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace wetspell {

struct RowCounts {
  std::size_t usable = 0;        ///< complete, and nothing is doubtful
  std::size_t after_answers = 0; ///< a doubt, or a cell that could not be read, that an answer settles
  std::size_t unusable = 0;      ///< no pool, no day or no animal can be read
  [[nodiscard]] std::size_t all() const { return usable + after_answers + unusable; }
};

/// What became of one column.
struct AuditedColumn {
  std::string
      spot; ///< the column's letters, or the row's number where the table is turned; "B:E" for several
  Mapping mapping;
};

/// A row of the table that is no record, and why.
struct AuditedRow {
  std::size_t row = 0; ///< as the sheet numbers it (the column, from 1, where the table is turned)
  RowUse use{};
  std::string text;
};

/// One table of the source.
struct AuditedTable {
  std::string sheet;
  std::size_t first_row = 0, last_row = 0; ///< of headings and records, as the sheet numbers them
  std::optional<TableKind> kind;           ///< nothing: none of ours
  Layout layout{};
  std::string reason;
  std::string date_reason;
  std::size_t records = 0; ///< rows that hold something and are no sums or titles
  std::vector<AuditedColumn> columns;
  std::vector<AuditedRow> passed;
  std::size_t times = 0; ///< dates beside which a time of day stands, which is left alone
  RowCounts rows;        ///< of the tidy rows that came from here
};

/// A finding of the check, led back to the source.
struct AuditFinding {
  std::size_t table = 0; ///< index of the source table
  Finding finding;       ///< places and row numbers are those of the source
  std::size_t rows = 1;  ///< tidy rows of which the same is said: those of a heading that stands for many
};

/// A rule that could not run, and the columns it lacks.
struct LackingRule {
  const RuleSpec* rule = nullptr;
  std::vector<Field> missing;
};

struct CommonReason {
  std::string words;
  std::size_t rows = 0;
};

/// Where a source table's grid stands on its sheet.
struct Frame {
  Place first;
  bool turned = false;
};

struct Audit {
  std::string file;
  std::vector<AuditedTable> tables;
  RowCounts rows;
  std::vector<CommonReason> reasons; ///< why rows are not simply usable, the commonest first
  std::vector<AuditFinding> findings;
  std::vector<Unread> unread;
  std::size_t unread_count = 0; ///< all of them, also those that are not kept one by one
  std::vector<LackingRule> lacking;
  std::vector<std::string> remarks;
  bool cancelled = false;         ///< stopped by the person; half an audit would look like a whole one
  std::vector<TidyTable> tidy;    ///< the way back; its cells stand in `season`
  std::vector<Frame> frames;      ///< per source table
  std::unique_ptr<Season> season; ///< its settings are those in which the findings speak
  Settings settings;              ///< of the file, or those of a fresh workbook where it has none
  /// The source cell of a tidy cell.
  [[nodiscard]] Place source(const TidyTable& table, std::size_t row, std::size_t column) const {
    return place(table.origin(row, column));
  }
  /// The source cell of a tidy row: its own cell, or its first one.
  [[nodiscard]] Place source(const TidyTable& table, std::size_t row) const {
    return place(table.origin(row));
  }
  [[nodiscard]] Place place(const Spot& spot) const;
};

struct AuditOptions {
  const GivenMap* given = nullptr; ///< headings as a person mapped them
  double today = 0;                ///< days since 1899-12-30
  /// Called now and then with the share done (0 to 1); returning false cancels.
  std::function<bool(double)> progress = {};
  bool own_headings = false;          ///< as in MapHints
  const Settings* settings = nullptr; ///< taken where the sheets have no table of settings of their own
};

/// Audits the sheets of one file. Always gives an answer; what is no table of ours is said to be none.
Audit audit(std::string file, std::vector<Table> sheets, const AuditOptions& options);

} // namespace wetspell
