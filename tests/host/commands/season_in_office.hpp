#pragma once
// A small season in the real workbook, with mistakes planted in known cells, and what tests ask about it.

#include "harness/host.hpp"
#include "season/field.hpp"
#include "table/table.hpp"
#include "templates/workbook.hpp"

#include <com/sun/star/uno/Any.hxx>

#include <map>
#include <string>
#include <vector>

namespace wetspell::host {

/// A row as people fill it in; fields that are not named stay blank.
using TypedRow = std::map<Field, Cell>;

/// Three pools, two people and six visits with five planted mistakes, and one count with a sixth; US units.
/// `more` is appended to the visits.
workbook::WorkbookContent smallSeason(const std::vector<TypedRow>& more = {});
workbook::FilledTable filled(TableKind table, const std::vector<TypedRow>& rows);
/// Days since 1899-12-30 of a day in 2026.
double day(unsigned month, unsigned day);
/// A visit that no rule has a doubt about, apart from what it does not say.
TypedRow goodVisit(const std::string& pool, double date, const std::string& person);

/// Writes the workbook to a file and opens it in the office.
driver::Document opened(const workbook::WorkbookContent& content, driver::Office& in = office(),
                        const driver::OpenOptions& options = {});

/// Types a season into a workbook that is not ours: one visit, to a pool wider than long.
void typeForeignSeason(const driver::Document& document);

/// One finding, its columns by the catalogue's names ("rule", "where", "message", "key" ...).
using FindingRow = std::map<std::string, std::string>;

/// What can be done with a season: each call in words on failure (driver::Failure).
class Desk {
public:
  explicit Desk(const driver::Document& document);

  std::string check() const;
  std::string report(const std::string& format) const;
  int open(const std::string& level) const;
  bool apply(const std::string& key) const;
  int applyAll(const std::string& level) const;
  std::string cellOf(const std::string& key) const;
  void makeRoom(int rows) const;
  void clear() const;
  std::vector<FindingRow> findings() const;
  /// The finding of a rule; fails the test when there is not exactly one.
  FindingRow finding(const std::string& rule) const;

  css::uno::Any call(const std::string& method, std::initializer_list<css::uno::Any> more = {}) const;

private:
  const driver::Document& document_;
  css::uno::Reference<css::uno::XInterface> desk_;
};

std::string text(const css::uno::Any& any);
css::uno::Any any(const std::string& words);

/// The rows that stand on a sheet below its headings of findings.
std::vector<FindingRow> rowsOnSheet(const driver::Document& document, const std::string& sheet = "Findings");
/// The one of a rule; fails the test when there is not exactly one.
FindingRow only(const std::vector<FindingRow>& rows, const std::string& rule);
/// Address on the findings sheet of the cell in the row with this key and the column of this heading.
std::string cellOnSheet(const driver::Document& document, const std::string& key, const std::string& heading,
                        const std::string& sheet = "Findings");

/// The address of a field's cell in the n-th row (from 0) of its table as the template lays it out.
std::string at(Field field, std::size_t row);

/// Rows of a sheet as the template lays it out, as Calc numbers them: that of the headings, and the last one
/// that is ready to be filled.
std::size_t headingRow(TableKind table);
std::size_t lastReadyRow(TableKind table);
/// "Visits.B12": a column letter and a row on the visits.
std::string onVisits(const std::string& column, std::size_t row);

/// Everything that is stored on all sheets but one: contents, and the formats with the cells they are in.
std::string snapshot(const driver::Document& document, const std::string& except = "Findings");

/// Whether two snapshots are the same; if not, the first line that differs is told.
::testing::AssertionResult same(const std::string& one, const std::string& other);

/// Rows from the top of a sheet to the end of its print range; 0 without one.
std::size_t printedRows(const driver::Document& document, const std::string& sheet);
/// Style, number format, drop-down and rules of look of a cell, in words.
std::string lookOf(const driver::Document& document, const std::string& address);

/// Turns the document's window to a cell or range, as a person clicks on it; fails the test when it cannot.
void select(const driver::Document& document, const std::string& address);

/// Protects a sheet without a password; fails the test when it is not protected then.
void protect(const driver::Document& document, const std::string& sheet);

/// The words of the Failure a call ends with; empty when it does not.
template <class Call> std::string refusal(Call call) {
  try {
    call();
  } catch (const driver::Failure& failure) {
    return failure.what();
  }
  return {};
}

} // namespace wetspell::host
