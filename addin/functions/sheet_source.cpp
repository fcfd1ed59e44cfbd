#include "functions/sheet_source.hpp"

#include "base/text.hpp"
#include "functions/cells.hpp"

#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/uno/Exception.hpp>

#include <utility>

namespace wetspell::addin {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY;

/// Of a range of one cell.
std::string formulaOf(const Reference<css::table::XCellRange>& cells) {
  const Reference<css::table::XCell> cell = cells->getCellByPosition(0, 0);
  return cell->getType() == css::table::CellContentType_FORMULA ? fromOffice(cell->getFormula())
                                                                : std::string();
}

/// A reference in two parts: the sheet's name, empty for the formula's own, and what is behind its dot.
std::pair<rtl::OUString, rtl::OUString> parts(std::string_view reference) {
  std::string sheet;
  bool quoted = false;
  for (std::size_t at = 0; at < reference.size(); ++at) {
    const char c = reference[at];
    if (c == '\'') {
      const bool doubled = quoted && at + 1 < reference.size() && reference[at + 1] == '\'';
      if (doubled) {
        sheet += c;
        ++at;
      } else {
        quoted = !quoted;
      }
    } else if (c == '.' && !quoted) {
      return {toOffice(sheet), toOffice(reference.substr(at + 1))};
    } else if (c != '$' || quoted) {
      sheet += c;
    }
  }
  return {rtl::OUString(), toOffice(reference)};
}

/// Addresses and names as they are understood on the sheet of the formula.
class SheetSource : public CellSource {
public:
  SheetSource(const Reference<css::sheet::XSpreadsheetDocument>& document,
              const Reference<css::sheet::XSpreadsheet>& sheet)
      : document_(document), sheet_(sheet) {}

  [[nodiscard]] std::optional<Block> find(std::string_view reference) const override {
    try {
      const auto [name, address] = parts(reference);
      const Reference<css::sheet::XSpreadsheet> sheet = name.isEmpty() ? sheet_ : sheetNamed(name);
      if (!sheet.is()) {
        return std::nullopt;
      }
      const Reference<css::table::XCellRange> cells = sheet->getCellRangeByName(address);
      if (!cells.is()) {
        return std::nullopt;
      }
      Block block = blockOf(cells, Formats::dates_and_shares);
      if (block.cells.size() == 1) {
        block.formula = formulaOf(cells);
      }
      return block;
    } catch (const css::uno::Exception&) { // no such sheet, address or name
      return std::nullopt;
    }
  }

private:
  [[nodiscard]] Reference<css::sheet::XSpreadsheet> sheetNamed(const rtl::OUString& name) const {
    return {document_.is() ? document_->getSheets()->getByName(name) : css::uno::Any(), UNO_QUERY};
  }

  Reference<css::sheet::XSpreadsheetDocument> document_;
  Reference<css::sheet::XSpreadsheet> sheet_;
};

} // namespace

Argument formulaArgument(const Reference<css::beans::XPropertySet>& document,
                         const Reference<css::table::XCellRange>& cells) {
  CellSource::Block block = blockOf(cells, Formats::ignored);
  Argument argument{.given = true,
                    .rows = block.rows,
                    .columns = block.columns,
                    .cells = std::move(block.cells),
                    .formula = {},
                    .source = {}};
  if (argument.single()) {
    argument.formula = formulaOf(cells);
  }
  if (const Reference<css::sheet::XSheetCellRange> place(cells, UNO_QUERY); place.is()) {
    argument.source = std::make_shared<SheetSource>(
        Reference<css::sheet::XSpreadsheetDocument>(document, UNO_QUERY), place->getSpreadsheet());
  }
  return argument;
}

} // namespace wetspell::addin
