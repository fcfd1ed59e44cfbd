#include "gather/comments.hpp"

#include "base/text.hpp"
#include "table/table.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XSheetAnnotation.hpp>
#include <com/sun/star/sheet/XSheetAnnotations.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/table/CellAddress.hpp>
#include <com/sun/star/text/XSimpleText.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace wetspell::addin {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

constexpr std::size_t mostTold = 10;
constexpr sal_Int32 longest = 200;

std::string sentence(const std::string& sheet, const Reference<css::sheet::XSheetAnnotation>& comment) {
  const css::table::CellAddress at = comment->getPosition();
  rtl::OUString words = Reference<css::text::XSimpleText>(comment, UNO_QUERY_THROW)->getString();
  if (words.getLength() > longest)
    words = words.copy(0, longest) + " ...";
  std::string line = fromOffice(words);
  std::replace(line.begin(), line.end(), '\n', ' ');
  return fmt::format("A comment on '{}', cell {}{}, was left out: '{}'.", sheet,
                     column_letters(static_cast<std::size_t>(at.Column)), at.Row + 1, line);
}

} // namespace

std::vector<std::string> commentsOn(const SheetDocument& document) {
  std::vector<std::string> told;
  std::size_t more = 0;
  const Reference<css::container::XIndexAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
  for (sal_Int32 i = 0; i < sheets->getCount(); ++i) {
    const Reference<css::sheet::XSheetAnnotationsSupplier> sheet(sheets->getByIndex(i), UNO_QUERY_THROW);
    const std::string name = fromOffice(Reference<css::container::XNamed>(sheet, UNO_QUERY_THROW)->getName());
    const Reference<css::container::XIndexAccess> comments(sheet->getAnnotations(), UNO_QUERY_THROW);
    for (sal_Int32 at = 0; at < comments->getCount(); ++at) {
      if (told.size() == mostTold) {
        ++more;
        continue;
      }
      told.push_back(
          sentence(name, Reference<css::sheet::XSheetAnnotation>(comments->getByIndex(at), UNO_QUERY_THROW)));
    }
  }
  if (more > 0)
    told.push_back(fmt::format("{} more {} left out.", more, more == 1 ? "comment was" : "comments were"));
  return told;
}

} // namespace wetspell::addin
