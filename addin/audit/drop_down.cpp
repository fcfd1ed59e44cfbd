#include "audit/drop_down.hpp"

#include "base/text.hpp"
#include "summary/blocks.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/TableValidationVisibility.hpp>
#include <com/sun/star/sheet/ValidationAlertStyle.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

void offer(const Reference<css::table::XCellRange>& cells, const Reference<css::table::XCellRange>& words,
           const std::string& title, const std::string& hint) {
  const Reference<css::beans::XPropertySet> look(cells, UNO_QUERY_THROW);
  const Reference<css::beans::XPropertySet> list(look->getPropertyValue("Validation"), UNO_QUERY_THROW);
  list->setPropertyValue("Type", Any(css::sheet::ValidationType_LIST));
  list->setPropertyValue("ShowList", Any(css::sheet::TableValidationVisibility::UNSORTED));
  list->setPropertyValue("IgnoreBlankCells", Any(true));
  list->setPropertyValue("ShowInputMessage", Any(true));
  list->setPropertyValue("InputTitle", Any(toOffice(title)));
  list->setPropertyValue("InputMessage", Any(toOffice(hint)));
  list->setPropertyValue("ShowErrorMessage", Any(true));
  list->setPropertyValue("ErrorAlertStyle", Any(css::sheet::ValidationAlertStyle_WARNING));
  list->setPropertyValue("ErrorTitle", Any(toOffice(title)));
  list->setPropertyValue("ErrorMessage",
                         Any(rtl::OUString("This word is not in the list. Take it all the same?")));
  Reference<css::sheet::XSheetCondition>(list, UNO_QUERY_THROW)->setFormula1(toOffice(nameOf(words)));
  look->setPropertyValue("Validation", Any(list));
}

} // namespace wetspell::addin
