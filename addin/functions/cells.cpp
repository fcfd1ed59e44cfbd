#include "functions/cells.hpp"

#include "base/text.hpp"

#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

/// An error as the sheet shows it, from the office's number for it.
std::string errorText(sal_Int32 number) {
  constexpr std::array<std::pair<sal_Int32, const char*>, 7> named{{{503, "#NUM!"},
                                                                    {519, "#VALUE!"},
                                                                    {521, "#NULL!"},
                                                                    {524, "#REF!"},
                                                                    {525, "#NAME?"},
                                                                    {532, "#DIV/0!"},
                                                                    {32767, "#N/A"}}};
  const auto found =
      std::find_if(named.begin(), named.end(), [number](const auto& one) { return one.first == number; });
  return found == named.end() ? fmt::format("Err:{}", number) : found->second;
}

Reference<css::table::XCell> cellAt(const CellSource::Block& block,
                                    const Reference<css::table::XCellRange>& cells, std::size_t index) {
  return cells->getCellByPosition(static_cast<sal_Int32>(index % block.columns),
                                  static_cast<sal_Int32>(index / block.columns));
}

/// Only numbers in the range of dates (1954 to 2119) and times are worth a look at their format: it takes
/// longer than all the rest.
bool mayBeDate(double number) {
  return (number >= 20000 && number < 80000) || (number > 0 && number < 1);
}

void markDates(CellSource::Block& block, const Reference<css::table::XCellRange>& cells) {
  const bool any = std::any_of(block.cells.begin(), block.cells.end(), [](const Cell& cell) {
    return cell.kind() == CellKind::number && mayBeDate(cell.number());
  });
  if (!any) {
    return;
  }
  const auto origin = Reference<css::sheet::XCellRangeAddressable>(cells, UNO_QUERY_THROW)->getRangeAddress();
  const auto dates = Reference<css::sheet::XCellRangesQuery>(cells, UNO_QUERY_THROW)
                         ->queryContentCells(css::sheet::CellFlags::DATETIME);
  for (const css::table::CellRangeAddress& part : dates->getRangeAddresses()) {
    for (sal_Int32 row = part.StartRow; row <= part.EndRow; ++row) {
      for (sal_Int32 column = part.StartColumn; column <= part.EndColumn; ++column) {
        Cell& cell = block.cells[static_cast<std::size_t>(row - origin.StartRow) * block.columns +
                                 static_cast<std::size_t>(column - origin.StartColumn)];
        if (cell.kind() == CellKind::number) {
          cell = Cell::of_date(cell.number());
        }
      }
    }
  }
}

bool mayBeShare(const Cell& cell) {
  return cell.kind() == CellKind::number && cell.number() >= 0 && cell.number() <= 2;
}

/// A share that is shown as 75% is kept as 0.75: as text it says what its reader sees.
void markShare(Cell& cell, const Reference<css::table::XCell>& source) {
  const Reference<css::text::XTextRange> text(source, UNO_QUERY_THROW);
  if (text->getString().trim().endsWith("%")) {
    cell = Cell::of_text(fmt::format("{} %", cell.number() * 100));
  }
}

/// In arrays the office hands over nothing for a cell in error; the cell itself knows which one.
void nameErrors(CellSource::Block& block, const Reference<css::table::XCellRange>& cells) {
  for (std::size_t i = 0; i < block.cells.size(); ++i) {
    if (block.cells[i].kind() == CellKind::error) {
      block.cells[i] = Cell::of_error(errorText(cellAt(block, cells, i)->getError()));
    }
  }
}

} // namespace

Cell cellOf(const Any& content) {
  double number = 0;
  rtl::OUString text;
  if (content >>= number) {
    return Cell::of_number(number);
  }
  if (content >>= text) {
    return Cell::of_text(fromOffice(text));
  }
  return Cell::of_error("an error"); // the office hands over nothing for a cell in error
}

CellSource::Block blockOf(const Sequence<Sequence<Any>>& rows) {
  CellSource::Block block;
  block.rows = static_cast<std::size_t>(rows.getLength());
  block.columns = rows.hasElements() ? static_cast<std::size_t>(rows[0].getLength()) : 0;
  block.cells.reserve(block.rows * block.columns);
  for (const Sequence<Any>& row : rows) {
    for (const Any& content : row) {
      block.cells.push_back(cellOf(content));
    }
  }
  return block;
}

CellSource::Block blockOf(const Reference<css::table::XCellRange>& cells, Formats formats) {
  CellSource::Block block =
      blockOf(Reference<css::sheet::XCellRangeData>(cells, UNO_QUERY_THROW)->getDataArray());
  nameErrors(block, cells);
  if (formats == Formats::dates_and_shares) {
    for (std::size_t i = 0; i < block.cells.size(); ++i) {
      if (mayBeShare(block.cells[i])) {
        markShare(block.cells[i], cellAt(block, cells, i));
      }
    }
  }
  if (formats != Formats::ignored) {
    markDates(block, cells);
  }
  return block;
}

} // namespace wetspell::addin
