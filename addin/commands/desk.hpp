#pragma once
// The work behind the commands, the same for the menu, macros and the command line.

#include "audit/audit.hpp"
#include "check/check.hpp"
#include "estimate/summary.hpp"
#include "season/season.hpp"
#include "sheet/sheets.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::addin {

/// Told the share done (0 to 1) now and then; false cancels.
using Progress = std::function<bool(double)>;

/// A season read from a document, and what its check found.
struct Checked {
  Season season;
  CheckReport report;
};

/// Reads and checks; writes nothing. Refuses in words when the document has no table of visits.
Checked look(const SheetDocument& document, const Progress& progress = {});

/// Reads, checks and writes the findings, as one undo step.
Checked checkSeason(const SheetDocument& document, const Progress& progress = {});

/// Makes the replacements that the findings with these marks propose and checks again, as one undo step; all
/// or none. Gives how many findings were answered.
std::size_t applyMarked(const SheetDocument& document, const std::vector<std::string>& marks);
std::size_t applyLevel(const SheetDocument& document, std::string_view level);

/// The level of this name; refuses other words.
Level levelNamed(std::string_view word);

const Finding* findingMarked(const Checked& checked, std::string_view mark);

/// `rows` more rows below a table, ready to type into. Refuses when the sheet has no prepared row to
/// follow.
void makeRoom(const SheetDocument& document, TableKind table, std::size_t rows);

/// Takes the findings away, as one undo step; gives how many rows there were.
std::size_t clearSeason(const SheetDocument& document);

/// A season with what its check found and what its visits say.
struct Summarised {
  Checked checked;
  SeasonSummary summary;
};

/// Reads, checks and summarises; writes nothing. Refuses in words when it was cancelled: half a summary would
/// look like a whole one.
Summarised sumUp(const SheetDocument& document, const Progress& progress = {});

using Context = css::uno::Reference<css::uno::XComponentContext>;

/// Sums up and writes the sheets of the summary, as one undo step.
Summarised summariseSeason(const Context& context, const SheetDocument& document,
                           const Progress& progress = {});

/// Writes the page of the pool with this code, as one undo step; gives the sheet's name.
std::string pageOfPool(const Context& context, const SheetDocument& document, const std::string& code,
                       const Progress& progress = {});

/// Checks and writes what to ask whom on the sheet 'Ask list', as one undo step. Gives how many people there
/// are to ask, those whom the rows do not name counted as one.
std::size_t askListOf(const SheetDocument& document, const Progress& progress = {});

/// Audits the sheets of a document in any layout, with the headings as a person corrected them in it; writes
/// nothing. `name` is what the audit calls the document.
Audit auditSheets(const SheetDocument& document, const std::string& name, const Progress& progress = {});

/// Audits and writes the sheets of the audit, as one undo step.
Audit auditDocument(const SheetDocument& document, const std::string& name, const Progress& progress = {});

/// The code of the pool that a row (from 1) of a sheet is about: a row of the pools, the visits, the counts
/// of life, or of the pools' lines in a summary. Empty for any other row.
std::string poolOfRow(const SheetDocument& document, const Season& season, const std::string& sheet,
                      std::size_t row);

} // namespace wetspell::addin
