#pragma once
// What the person has selected in a document's window, and turning the window to a cell.

#include "sheet/sheets.hpp"

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/frame/XModel.hpp>

#include <optional>

namespace wetspell::addin {

/// A block of selected rows (from 1) and its first column (from 0) on one sheet.
struct Selection {
  std::string sheet;
  std::size_t first = 1;
  std::size_t last = 1;
  std::size_t column = 0;
};

SheetDocument documentOf(const css::uno::Reference<css::frame::XFrame>& frame);
/// What its file is called; "untitled" before it was stored.
std::string fileNameOf(const css::uno::Reference<css::frame::XModel>& document);
/// The address of the folder in which the document is kept; refuses when it is kept nowhere yet.
std::optional<std::string> folderOf(const SheetDocument& document);
std::optional<Selection> selectionIn(const css::uno::Reference<css::frame::XFrame>& frame);
/// Refuses when the place's sheet is hidden.
void turnTo(const css::uno::Reference<css::frame::XFrame>& frame, const Place& place);
/// Turns to the sheet of a block that Wetspell owns.
void turnToBlock(const css::uno::Reference<css::frame::XFrame>& frame, const std::string& name);
bool isRowVisible(const SheetDocument& document, const Place& place);

} // namespace wetspell::addin
