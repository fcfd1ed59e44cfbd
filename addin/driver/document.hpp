#pragma once
// One spreadsheet in an office: opened, read, written, stored, closed.

#include "driver/office.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/table/XCellRange.hpp>

namespace wetspell::driver {

struct OpenOptions {
  bool hidden = true;     ///< without a window
  bool readOnly = false;  ///< changes are refused
  bool runMacros = false; ///< macros of the document itself
  bool cutOff = false;    ///< as a copy without anything that reaches outside, to be read only
};

/// For whoever only reads: of a formula that reaches outside the stored result counts.
inline constexpr OpenOptions toRead{.readOnly = true, .cutOff = true};

/// What one cell holds.
struct CellState {
  std::string text;    ///< as it is shown
  double value = 0;    ///< of a number, a date (days), a logical value; 0 of anything else
  std::string formula; ///< as it is stored, in English; what was typed when it is no formula
  int error = 0;       ///< the office's number of the error the cell shows, 0 for none; 525 is #NAME?
};

/// An open spreadsheet; closed without saving when it goes. It must not outlive its office.
class Document {
public:
  static Document create(Office& office, const OpenOptions& options = {});
  static Document open(Office& office, const std::filesystem::path& file, const OpenOptions& options = {});
  ~Document();
  Document(Document&& other) noexcept;
  Document& operator=(Document&& other) noexcept;

  const css::uno::Reference<css::sheet::XSpreadsheetDocument>& model() const { return model_; }
  Office& office() const { return *office_; }

  /// Names of the sheets in their order.
  std::vector<std::string> sheetNames() const;
  css::uno::Reference<css::sheet::XSpreadsheet> sheet(const std::string& name) const;

  /// A range by address: "B3" or "B3:D9" on the first sheet, "Visits.B3" on another.
  css::uno::Reference<css::table::XCellRange> range(const std::string& address) const;
  css::uno::Reference<css::table::XCell> cell(const std::string& address) const;

  void setValue(const std::string& address, double value) const;
  void setText(const std::string& address, const std::string& text) const;
  /// English function names, ; between arguments, whatever the office's language: "=SUM(A1;B1)".
  void setFormula(const std::string& address, const std::string& formula) const;
  /// As a person types it: numbers and dates in the office's locale are recognised.
  void type(const std::string& address, const std::string& text) const;
  CellState read(const std::string& address) const;

  /// The used part of a sheet from A1 on, or the given range: one row a line, what the cells show, with
  /// tabs between. For comparing a whole sheet before and after.
  std::string dump(const std::string& address) const;
  std::string dumpSheet(const std::string& name) const;
  /// The same with what is stored in the cells: formulas, and numbers in full.
  std::string dumpStored(const std::string& address) const;

  void recalculate() const;
  void undo() const;
  void redo() const;
  /// What undo would take back, newest first.
  std::vector<std::string> undoTitles() const;
  /// A command of the office or of an extension, by its address (".uno:SelectAll").
  void dispatch(const std::string& url) const;

  /// Writes a file, in the format its name ends in. The document stays what it was.
  void store(const std::filesystem::path& file) const;
  /// The pages of some sheets alone, as .pdf.
  void storeSheets(const std::vector<std::string>& sheets, const std::filesystem::path& file) const;
  /// The pages of one sheet alone, as .pdf, or the first of them as .png.
  void storeSheet(const std::string& sheet, const std::filesystem::path& file) const;
  void close();

private:
  Document(Office& office, const css::uno::Reference<css::sheet::XSpreadsheetDocument>& model);

  Office* office_;
  css::uno::Reference<css::sheet::XSpreadsheetDocument> model_;
};

} // namespace wetspell::driver
