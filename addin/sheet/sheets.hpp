#pragma once
// Sheets and cells by the places the engine names, and what may be done with them.

#include "base/css.hpp"
#include "table/table.hpp"

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/table/XCellRange.hpp>

#include <string>
#include <string_view>

namespace wetspell::addin {

using SheetDocument = css::uno::Reference<css::sheet::XSpreadsheetDocument>;

/// The document as a spreadsheet; a RuntimeException in words when it is none.
SheetDocument spreadsheet(const css::uno::Reference<css::uno::XInterface>& document);

css::uno::Reference<css::sheet::XSpreadsheet> sheetNamed(const SheetDocument& document,
                                                         const std::string& name);
css::uno::Reference<css::table::XCell> cellAt(const SheetDocument& document, const Place& place);

/// Throws a RuntimeException in words when the document was opened for reading only.
void requireChangeable(const SheetDocument& document);

/// Throws a RuntimeException in words when the cell stands protected: then nobody asked for a change.
void requireWritable(const SheetDocument& document, const Place& place);

/// The document's number format of this code, written as in English ("#,##0.0"). Cells show what they hold as
/// it is written, and take what is typed as it is read, where the office runs: "1,5" in a German one.
sal_Int32 numberFormat(const SheetDocument& document, std::string_view code);
/// The document's number format for days (2026-04-18) or times of day (09:40).
sal_Int32 dateFormat(const SheetDocument& document, bool timeOfDay);
/// Its number format for texts.
sal_Int32 textFormat(const SheetDocument& document);

/// Writes a cell as a person would type it: numbers, texts, dates with a date's format.
void write(const SheetDocument& document, const Place& place, const Cell& content);

/// A RuntimeException with these words, for macros and dialogs to show.
[[noreturn]] void refuse(std::string_view words);

} // namespace wetspell::addin
