#include "bench/office/sheets.hpp"

#include "base/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/lang/Locale.hpp>
#include <com/sun/star/sheet/FillDirection.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellSeries.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatTypes.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include <algorithm>

namespace wetspell::bench {

namespace {

using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

constexpr std::size_t rows_at_once = 4096;

Any content_of(const Cell& cell) {
  switch (cell.kind()) {
  case CellKind::number:
  case CellKind::date:
    return Any(cell.number());
  case CellKind::text:
    return Any(toOffice(cell.text()));
  case CellKind::empty:
  case CellKind::error:
    break;
  }
  return Any(rtl::OUString());
}

sal_Int32 as_int(std::size_t number) {
  return static_cast<sal_Int32>(number);
}

/// The format of a column by its first cell that holds a date or a time.
void format_dates(const driver::Document& document, const Table& table, std::size_t column) {
  const Cell* date = nullptr;
  for (std::size_t row = 1; row < table.rows() && date == nullptr; ++row)
    if (table.at(row, column).kind() == CellKind::date)
      date = &table.at(row, column);
  if (date == nullptr)
    return;
  const Reference<css::util::XNumberFormatTypes> formats(
      Reference<css::util::XNumberFormatsSupplier>(document.model(), UNO_QUERY_THROW)->getNumberFormats(),
      UNO_QUERY_THROW);
  const sal_Int16 type = date->number() < 1 ? css::util::NumberFormat::TIME : css::util::NumberFormat::DATE;
  const auto cells =
      document.sheet(table.sheet())
          ->getCellRangeByPosition(as_int(column), 1, as_int(column), as_int(table.rows()) - 1);
  Reference<css::beans::XPropertySet>(cells, UNO_QUERY_THROW)
      ->setPropertyValue("NumberFormat", Any(formats->getStandardFormat(type, css::lang::Locale())));
}

} // namespace

void fill(const driver::Document& document, const Table& table) {
  const auto sheet = document.sheet(table.sheet());
  for (std::size_t first = 0; first < table.rows(); first += rows_at_once) {
    const std::size_t end = std::min(table.rows(), first + rows_at_once);
    Sequence<Sequence<Any>> block(as_int(end - first));
    Sequence<Any>* lines = block.getArray();
    for (std::size_t row = first; row < end; ++row) {
      Sequence<Any>& line = lines[row - first];
      line.realloc(as_int(table.columns()));
      Any* contents = line.getArray();
      for (std::size_t column = 0; column < table.columns(); ++column)
        contents[column] = content_of(table.at(row, column));
    }
    const auto range =
        sheet->getCellRangeByPosition(0, as_int(first), as_int(table.columns()) - 1, as_int(end) - 1);
    Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->setDataArray(block);
  }
  for (std::size_t column = 0; column < table.columns(); ++column)
    format_dates(document, table, column);
}

driver::Document document_of(driver::Office& office, const std::vector<Table>& tables) {
  driver::Document document = driver::Document::create(office);
  const auto sheets = document.model()->getSheets();
  for (std::size_t i = 0; i < tables.size(); ++i) {
    sheets->insertNewByName(toOffice(tables[i].sheet()), static_cast<sal_Int16>(i));
    fill(document, tables[i]);
  }
  return document;
}

void fill_down(const driver::Document& document, const std::string& range, const std::string& formula) {
  const auto cells = document.range(range);
  cells->getCellByPosition(0, 0)->setFormula(toOffice(formula));
  Reference<css::sheet::XCellSeries>(cells, UNO_QUERY_THROW)
      ->fillAuto(css::sheet::FillDirection_TO_BOTTOM, 1);
}

} // namespace wetspell::bench
