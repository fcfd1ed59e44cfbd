#include "sheet/owned.hpp"

#include "base/text.hpp"
#include "sheet/strip.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/table/CellAddress.hpp>
#include <com/sun/star/util/XProtectable.hpp>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

Reference<css::sheet::XNamedRanges> namesOf(const SheetDocument& document) {
  Reference<css::sheet::XNamedRanges> names;
  Reference<css::beans::XPropertySet>(document, UNO_QUERY_THROW)->getPropertyValue("NamedRanges") >>= names;
  return names;
}

/// Of a sheet that was deleted the office hands out the one that stands there now; the name's content tells.
bool isGone(const Reference<css::sheet::XNamedRange>& name) {
  return name->getContent().indexOf("#REF!") >= 0;
}

std::optional<Owned> cellsOf(const Any& name) {
  if (isGone(Reference<css::sheet::XNamedRange>(name, UNO_QUERY_THROW)))
    return std::nullopt;
  const Reference<css::sheet::XCellRangeReferrer> referrer(name, UNO_QUERY);
  const Reference<css::table::XCellRange> cells(referrer.is() ? referrer->getReferredCells()
                                                              : Reference<css::table::XCellRange>());
  const Reference<css::sheet::XSheetCellRange> on(cells, UNO_QUERY);
  if (!on.is())
    return std::nullopt;
  return Owned{on->getSpreadsheet(), addressOf(cells)};
}

} // namespace

std::optional<Owned> ownedBlock(const SheetDocument& document, const std::string& name) {
  const auto names = namesOf(document);
  return names->hasByName(toOffice(name)) ? cellsOf(names->getByName(toOffice(name))) : std::nullopt;
}

void own(const SheetDocument& document, const std::string& name,
         const Reference<css::table::XCellRange>& cells) {
  rtl::OUString content;
  Reference<css::beans::XPropertySet>(cells, UNO_QUERY_THROW)->getPropertyValue("AbsoluteName") >>= content;
  const auto names = namesOf(document);
  if (names->hasByName(toOffice(name)))
    Reference<css::sheet::XNamedRange>(names->getByName(toOffice(name)), UNO_QUERY_THROW)
        ->setContent(content);
  else
    names->addNewByName(toOffice(name), content, css::table::CellAddress(), 0);
}

std::set<sal_Int16> ownedSheets(const SheetDocument& document) {
  std::set<sal_Int16> sheets;
  const auto names = namesOf(document);
  for (const rtl::OUString& name : names->getElementNames())
    if (name.startsWithIgnoreAsciiCase("wetspell_"))
      if (const auto block = cellsOf(names->getByName(name)))
        sheets.insert(block->area.Sheet);
  return sheets;
}

void requireUnprotected(const Owned& block) {
  if (!Reference<css::util::XProtectable>(block.sheet, UNO_QUERY_THROW)->isProtected())
    return;
  const Reference<css::container::XNamed> named(block.sheet, UNO_QUERY_THROW);
  refuse("The sheet '" + fromOffice(named->getName()) +
         "' is protected; nothing was written. Take its protection off first.");
}

} // namespace wetspell::addin
