#include "template/workbook_file.hpp"

#include "driver/files.hpp"
#include "table/table.hpp"
#include "templates/entry.hpp"
#include "templates/layout.hpp"

#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <fmt/format.h>

#include <fstream>

namespace wetspell::host {

driver::Document opened(driver::Office& office, const workbook::WorkbookContent& content) {
  const driver::TemporaryFolder folder("workbook");
  const auto file = folder.path() / "season.fods";
  std::ofstream(file, std::ios::binary) << workbook::season_workbook(content);
  return driver::Document::open(office, file);
}

std::string at(Field field, std::size_t row) {
  const FieldSpec& what = spec(field);
  return fmt::format("{}.{}{}", spec(what.table).sheet, column_letters(workbook::column_of(field)),
                     workbook::layout(what.table).heading_row + 2 + row);
}

std::string valueOf(Setting setting) {
  return fmt::format("Start.{}{}", column_letters(workbook::column_of(Field::setting_value)),
                     workbook::setting_row(setting) + 1);
}

std::string versionHere() {
  return fmt::format("Start.{}{}", column_letters(workbook::caution_column),
                     workbook::setting_row(Setting::today) + 1);
}

std::string errorsIn(const driver::Document& document) {
  std::string found;
  for (const std::string& name : document.sheetNames()) {
    const css::uno::Reference<css::sheet::XCellRangesQuery> cells(document.sheet(name),
                                                                  css::uno::UNO_QUERY_THROW);
    const auto wrong = cells->queryFormulaCells(css::sheet::FormulaResult::ERROR)->getRangeAddresses();
    for (const css::table::CellRangeAddress& part : wrong) {
      const std::string first = fmt::format(
          "{}.{}{}", name, column_letters(static_cast<std::size_t>(part.StartColumn)), part.StartRow + 1);
      found += fmt::format("{} shows {}\n", first, document.read(first).text);
    }
  }
  return found;
}

} // namespace wetspell::host
