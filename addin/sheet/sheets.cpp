#include "sheet/sheets.hpp"

#include "base/text.hpp"
#include "sheet/read_sheets.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/lang/Locale.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatTypes.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>
#include <com/sun/star/util/XProtectable.hpp>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

/// Gives a cell a date's format unless it has one: a bare day number would say nothing to anybody.
void formatAsDate(const SheetDocument& document, const Reference<css::table::XCell>& cell, bool timeOfDay) {
  const auto formats =
      Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats();
  const Reference<css::beans::XPropertySet> properties(cell, UNO_QUERY_THROW);
  sal_Int32 key = 0;
  properties->getPropertyValue("NumberFormat") >>= key;
  sal_Int16 type = 0;
  formats->getByKey(key)->getPropertyValue("Type") >>= type;
  if ((type & css::util::NumberFormat::DATETIME) == 0)
    properties->setPropertyValue("NumberFormat", css::uno::Any(dateFormat(document, timeOfDay)));
}

} // namespace

void refuse(std::string_view words) {
  throw css::uno::RuntimeException(toOffice(words));
}

SheetDocument spreadsheet(const Reference<css::uno::XInterface>& document) {
  SheetDocument sheets(document, UNO_QUERY);
  if (!sheets.is())
    refuse("Wetspell works on spreadsheets; this document is none.");
  return sheets;
}

Reference<css::sheet::XSpreadsheet> sheetNamed(const SheetDocument& document, const std::string& name) {
  const Reference<css::container::XNameAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
  if (!sheets->hasByName(toOffice(name)))
    refuse("The sheet '" + name + "' is no longer there; check the season again.");
  return {sheets->getByName(toOffice(name)), UNO_QUERY_THROW};
}

Reference<css::table::XCell> cellAt(const SheetDocument& document, const Place& place) {
  return sheetNamed(document, place.sheet)
      ->getCellByPosition(static_cast<sal_Int32>(place.column), static_cast<sal_Int32>(place.row) - 1);
}

sal_Int32 numberFormat(const SheetDocument& document, std::string_view code) {
  const auto formats =
      Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats();
  const css::lang::Locale english("en", "US", ""), ofTheOffice;
  if (code == "General") // it stands in every document, and cannot be converted
    return Reference<css::util::XNumberFormatTypes>(formats, UNO_QUERY_THROW)
        ->getStandardFormat(css::util::NumberFormat::NUMBER, ofTheOffice);
  return formats->addNewConverted(toOffice(code), english, ofTheOffice);
}

sal_Int32 dateFormat(const SheetDocument& document, bool timeOfDay) {
  return numberFormat(document, timeOfDay ? "HH:MM" : "YYYY-MM-DD");
}

sal_Int32 textFormat(const SheetDocument& document) {
  const Reference<css::util::XNumberFormatTypes> types(
      Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats(),
      UNO_QUERY_THROW);
  return types->getStandardFormat(css::util::NumberFormat::TEXT, css::lang::Locale());
}

void requireChangeable(const SheetDocument& document) {
  if (Reference<css::frame::XStorable>(document, UNO_QUERY_THROW)->isReadonly())
    refuse("This document is open for reading only; nothing was changed. Save it under another name first.");
}

void requireWritable(const SheetDocument& document, const Place& place) {
  const Reference<css::util::XProtectable> sheet(sheetNamed(document, place.sheet), UNO_QUERY_THROW);
  if (!sheet->isProtected())
    return;
  css::util::CellProtection protection;
  Reference<css::beans::XPropertySet>(cellAt(document, place), UNO_QUERY_THROW)
      ->getPropertyValue("CellProtection") >>= protection;
  if (protection.IsLocked)
    refuse("The cell " + to_text(place) +
           " is protected; nothing was changed. Take the sheet's protection off first.");
}

void write(const SheetDocument& document, const Place& place, const Cell& content) {
  const Reference<css::table::XCell> cell = cellAt(document, place);
  switch (content.kind()) {
  case CellKind::empty:
    cell->setFormula("");
    break;
  case CellKind::number:
    cell->setValue(content.number());
    break;
  case CellKind::date: {
    const bool timeOfDay = content.number() < 1;
    cell->setValue(timeOfDay ? content.number() : content.number() - dayZero(document));
    formatAsDate(document, cell, timeOfDay);
    break;
  }
  case CellKind::text:
  case CellKind::error:
    Reference<css::text::XText>(cell, UNO_QUERY_THROW)->setString(toOffice(content.text()));
    break;
  }
}

} // namespace wetspell::addin
