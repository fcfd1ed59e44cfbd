#include "commands/window.hpp"

#include "base/text.hpp"
#include "sheet/owned.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/XController.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <rtl/uri.hxx>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

SheetDocument documentOf(const Reference<css::frame::XFrame>& frame) {
  if (!frame.is() || !frame->getController().is())
    refuse("There is no open document.");
  return spreadsheet(frame->getController()->getModel());
}

std::string fileNameOf(const Reference<css::frame::XModel>& document) {
  const rtl::OUString url = document->getURL();
  if (url.isEmpty())
    return "untitled";
  return fromOffice(
      rtl::Uri::decode(url.copy(url.lastIndexOf('/') + 1), rtl_UriDecodeWithCharset, RTL_TEXTENCODING_UTF8));
}

std::optional<std::string> folderOf(const SheetDocument& document) {
  const std::string address = fromOffice(Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getURL());
  if (address.empty())
    refuse("The workbook was never saved, so there is no folder beside it. Save it first.");
  return address.substr(0, address.rfind('/'));
}

std::optional<Selection> selectionIn(const Reference<css::frame::XFrame>& frame) {
  const Reference<css::view::XSelectionSupplier> supplier(frame->getController(), UNO_QUERY_THROW);
  const Reference<css::sheet::XSheetCellRange> range(supplier->getSelection(), UNO_QUERY);
  if (!range.is())
    return std::nullopt;
  const auto address =
      Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
  const Reference<css::container::XNamed> sheet(range->getSpreadsheet(), UNO_QUERY_THROW);
  return Selection{fromOffice(sheet->getName()), static_cast<std::size_t>(address.StartRow) + 1,
                   static_cast<std::size_t>(address.EndRow) + 1,
                   static_cast<std::size_t>(address.StartColumn)};
}

void turnTo(const Reference<css::frame::XFrame>& frame, const Place& place) {
  const SheetDocument document = documentOf(frame);
  const auto sheet = sheetNamed(document, place.sheet);
  bool visible = true;
  Reference<css::beans::XPropertySet>(sheet, UNO_QUERY_THROW)->getPropertyValue("IsVisible") >>= visible;
  if (!visible)
    refuse("The sheet '" + place.sheet + "' is hidden. Show it first (Sheet, Show Sheet).");
  Reference<css::sheet::XSpreadsheetView>(frame->getController(), UNO_QUERY_THROW)->setActiveSheet(sheet);
  Reference<css::view::XSelectionSupplier>(frame->getController(), UNO_QUERY_THROW)
      ->select(css::uno::Any(cellAt(document, place)));
}

void turnToBlock(const Reference<css::frame::XFrame>& frame, const std::string& name) {
  const auto block = ownedBlock(documentOf(frame), name);
  if (!block)
    return;
  const Reference<css::container::XNamed> named(block->sheet, UNO_QUERY_THROW);
  turnTo(frame, {fromOffice(named->getName()), static_cast<std::size_t>(block->area.StartRow) + 1,
                 static_cast<std::size_t>(block->area.StartColumn)});
}

bool isRowVisible(const SheetDocument& document, const Place& place) {
  const Reference<css::table::XColumnRowRange> cell(cellAt(document, place), UNO_QUERY_THROW);
  bool visible = true;
  Reference<css::beans::XPropertySet>(cell->getRows(), UNO_QUERY_THROW)->getPropertyValue("IsVisible") >>=
      visible;
  return visible;
}

} // namespace wetspell::addin
