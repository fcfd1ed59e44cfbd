#include "audit/links.hpp"

#include "sheet/strip.hpp"
#include "sheet/undo_step.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"

#include <algorithm>

namespace wetspell::addin {

void putLinks(const SheetDocument& document, const Corner& corner, const std::vector<Link>& links) {
  const std::size_t end = std::min(links.size(), mostLinks);
  std::vector<css::table::CellRangeAddress> all;
  std::size_t row = 0;
  while (row < end) {
    std::vector<std::string> formulas; // of neighbouring rows, put at once
    const std::size_t first = row;
    for (; row < end && links[row].to; ++row)
      formulas.push_back(linkTo(*links[row].to, quoted(links[row].shown)));
    if (formulas.empty()) {
      ++row;
      continue;
    }
    const UndoPart part(document);
    putFormulas(corner.at(first, 0), formulas);
    all.push_back(addressOf(corner.at(first, 0).range(1, formulas.size())));
  }
  if (!all.empty())
    dress(together(document, all), Dress::link);
}

} // namespace wetspell::addin
