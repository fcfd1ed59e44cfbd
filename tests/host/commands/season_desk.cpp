#include "commands/season_in_office.hpp"

#include "base/text.hpp"
#include "templates/layout.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntries.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>

#include <algorithm>
#include <sstream>
#include <tuple>

namespace wetspell::host {

using addin::fromOffice;
using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

namespace {

/// A cell's content in words; numbers as the shortest digits.
std::string words(const Any& content) {
  double number = 0;
  if (content >>= number)
    return to_text(Cell::of_number(number));
  rtl::OUString text;
  content >>= text;
  return fromOffice(text);
}

/// Rows below a row of headings, as findings; `lines[heading]` holds the headings.
std::vector<FindingRow> findingsIn(const Sequence<Sequence<Any>>& lines, sal_Int32 heading) {
  std::vector<FindingRow> rows;
  for (sal_Int32 r = heading + 1; r < lines.getLength(); ++r) {
    FindingRow row;
    for (sal_Int32 c = 0; c < lines[r].getLength(); ++c)
      for (const FieldSpec& field : fields(TableKind::findings))
        if (field.heading == words(lines[heading][c]))
          row[std::string(field.name)] = words(lines[r][c]);
    if (!row["key"].empty())
      rows.push_back(row);
  }
  return rows;
}

Reference<css::table::XCellRange> usedArea(const Reference<css::sheet::XSpreadsheet>& sheet) {
  const auto cursor = sheet->createCursor();
  const Reference<css::sheet::XUsedAreaCursor> used(cursor, UNO_QUERY_THROW);
  used->gotoEndOfUsedArea(false);
  const auto end = Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
  return sheet->getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow);
}

struct SheetLines {
  Sequence<Sequence<Any>> lines;
  sal_Int32 heading = -1; ///< the row with the headings of the findings
};

SheetLines linesOf(const driver::Document& document, const std::string& sheet) {
  SheetLines found;
  const Reference<css::sheet::XCellRangeData> data(usedArea(document.sheet(sheet)), UNO_QUERY_THROW);
  found.lines = data->getDataArray();
  for (sal_Int32 r = 0; r < found.lines.getLength() && found.heading < 0; ++r)
    for (const Any& cell : std::as_const(found.lines)[r])
      if (words(cell) == spec(Field::finding_key).heading)
        found.heading = r;
  return found;
}

} // namespace

std::string text(const Any& content) {
  rtl::OUString string;
  EXPECT_TRUE(content >>= string);
  return fromOffice(string);
}

Any any(const std::string& words) {
  return Any(toOffice(words));
}

Desk::Desk(const driver::Document& document)
    : document_(document), desk_(document.office().service("org.wetspell.SeasonDesk")) {}

Any Desk::call(const std::string& method, std::initializer_list<Any> more) const {
  const Any model(Reference<css::frame::XModel>(document_.model(), UNO_QUERY_THROW));
  switch (more.size()) {
  case 0:
    return document_.office().call(desk_, method, {model});
  case 1:
    return document_.office().call(desk_, method, {model, *more.begin()});
  default:
    return document_.office().call(desk_, method, {model, *more.begin(), *(more.begin() + 1)});
  }
}

std::string Desk::check() const {
  return text(call("check"));
}
std::string Desk::report(const std::string& format) const {
  return text(call("report", {any(format), any("season.ods")}));
}
int Desk::open(const std::string& level) const {
  sal_Int32 count = -1;
  EXPECT_TRUE(call("open", {any(level)}) >>= count);
  return count;
}
bool Desk::apply(const std::string& key) const {
  bool done = false;
  EXPECT_TRUE(call("apply", {any(key)}) >>= done);
  return done;
}
int Desk::applyAll(const std::string& level) const {
  sal_Int32 count = -1;
  EXPECT_TRUE(call("applyAll", {any(level)}) >>= count);
  return count;
}
std::string Desk::cellOf(const std::string& key) const {
  return text(call("cellOf", {any(key)}));
}
void Desk::makeRoom(int rows) const {
  call("makeRoom", {Any(sal_Int32(rows))});
}
void Desk::clear() const {
  call("clearFindings");
}

std::vector<FindingRow> Desk::findings() const {
  Sequence<Sequence<Any>> lines;
  EXPECT_TRUE(call("findings") >>= lines);
  return findingsIn(lines, 0);
}

FindingRow Desk::finding(const std::string& rule) const {
  return only(findings(), rule);
}

FindingRow only(const std::vector<FindingRow>& rows, const std::string& rule) {
  std::vector<FindingRow> found;
  std::copy_if(rows.begin(), rows.end(), std::back_inserter(found),
               [&](const FindingRow& row) { return row.at("rule") == rule; });
  EXPECT_EQ(found.size(), 1U) << "findings of " << rule;
  if (found.empty()) {
    FindingRow none;
    for (const FieldSpec& field : fields(TableKind::findings))
      none[std::string(field.name)] = "";
    return none;
  }
  return found.front();
}

std::vector<FindingRow> rowsOnSheet(const driver::Document& document, const std::string& sheet) {
  const SheetLines found = linesOf(document, sheet);
  return found.heading < 0 ? std::vector<FindingRow>{} : findingsIn(found.lines, found.heading);
}

std::string cellOnSheet(const driver::Document& document, const std::string& key, const std::string& heading,
                        const std::string& sheet) {
  const SheetLines found = linesOf(document, sheet);
  sal_Int32 keys = -1, wanted = -1;
  for (sal_Int32 c = 0; found.heading >= 0 && c < found.lines[found.heading].getLength(); ++c) {
    const std::string here = words(found.lines[found.heading][c]);
    keys = here == spec(Field::finding_key).heading ? c : keys;
    wanted = here == heading ? c : wanted;
  }
  for (sal_Int32 r = found.heading + 1; keys >= 0 && wanted >= 0 && r < found.lines.getLength(); ++r)
    if (words(found.lines[r][keys]) == key)
      return sheet + "." + column_letters(static_cast<std::size_t>(wanted)) + std::to_string(r + 1);
  ADD_FAILURE() << "no row with the key " << key << " on " << sheet;
  return sheet + ".A1";
}

std::string at(Field field, std::size_t row) {
  const TableKind table = spec(field).table;
  return std::string(spec(table).sheet) + "." + column_letters(workbook::column_of(field)) +
         std::to_string(workbook::layout(table).heading_row + 2 + row);
}

std::size_t headingRow(TableKind table) {
  return workbook::layout(table).heading_row + 1;
}
std::size_t lastReadyRow(TableKind table) {
  return headingRow(table) + workbook::layout(table).rows;
}
std::string onVisits(const std::string& column, std::size_t row) {
  return "Visits." + column + std::to_string(row);
}

::testing::AssertionResult same(const std::string& one, const std::string& other) {
  if (one == other)
    return ::testing::AssertionSuccess();
  std::istringstream ones(one), others(other);
  std::string line, otherLine, sheet;
  do {
    line.clear();
    otherLine.clear();
    std::getline(ones, line);
    std::getline(others, otherLine);
    sheet = line.starts_with("== ") ? line : sheet;
  } while (line == otherLine && (ones || others));
  return ::testing::AssertionFailure() << sheet << ": '" << line << "'\nand '" << otherLine << "'";
}

namespace {

/// The rows of one column that have one format, whatever way the office keeps it.
struct Formatted {
  sal_Int32 column, first, last;
  std::string format;
};

/// Style and number format of all cells of the used part, column by column.
std::string formatsOf(const Reference<css::sheet::XSpreadsheet>& sheet) {
  const auto used =
      Reference<css::sheet::XCellRangeAddressable>(usedArea(sheet), UNO_QUERY_THROW)->getRangeAddress();
  std::vector<Formatted> parts;
  const auto groups = Reference<css::sheet::XUniqueCellFormatRangesSupplier>(sheet, UNO_QUERY_THROW)
                          ->getUniqueCellFormatRanges();
  for (sal_Int32 i = 0; i < groups->getCount(); ++i) {
    const Reference<css::sheet::XSheetCellRanges> ranges(groups->getByIndex(i), UNO_QUERY_THROW);
    const Reference<css::beans::XPropertySet> properties(ranges, UNO_QUERY_THROW);
    rtl::OUString style;
    properties->getPropertyValue("CellStyle") >>= style;
    sal_Int32 number = -1;
    properties->getPropertyValue("NumberFormat") >>= number;
    for (const auto& area : ranges->getRangeAddresses())
      for (sal_Int32 column = area.StartColumn; column <= std::min(area.EndColumn, used.EndColumn); ++column)
        parts.push_back(
            {column, area.StartRow, area.EndRow, fromOffice(style) + " " + std::to_string(number)});
  }
  std::sort(parts.begin(), parts.end(), [](const Formatted& one, const Formatted& other) {
    return std::tie(one.column, one.first) < std::tie(other.column, other.first);
  });
  std::string all;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    sal_Int32 last = parts[i].last;
    const Formatted& from = parts[i];
    while (i + 1 < parts.size() && parts[i + 1].column == from.column && parts[i + 1].format == from.format)
      last = parts[++i].last;
    all += column_letters(static_cast<std::size_t>(from.column)) + std::to_string(from.first + 1) + ":" +
           std::to_string(last + 1) + " " + from.format + "\n";
  }
  return all;
}

} // namespace

std::string snapshot(const driver::Document& document, const std::string& except) {
  std::string all;
  for (const std::string& name : document.sheetNames()) {
    if (name == except)
      continue;
    const auto sheet = document.sheet(name);
    all += "== " + name + "\n";
    const Reference<css::sheet::XCellRangeFormula> contents(usedArea(sheet), UNO_QUERY_THROW);
    for (const auto& row : contents->getFormulaArray()) {
      for (const rtl::OUString& one : row)
        all += fromOffice(one) + "\t";
      all += "\n";
    }
    all += formatsOf(sheet);
  }
  return all;
}

std::size_t printedRows(const driver::Document& document, const std::string& sheet) {
  std::size_t rows = 0;
  for (const auto& area :
       Reference<css::sheet::XPrintAreas>(document.sheet(sheet), UNO_QUERY_THROW)->getPrintAreas())
    rows = std::max(rows, static_cast<std::size_t>(area.EndRow) + 1);
  return rows;
}

void select(const driver::Document& document, const std::string& address) {
  const auto view = Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW)->getCurrentController();
  Reference<css::sheet::XSpreadsheetView>(view, UNO_QUERY_THROW)
      ->setActiveSheet(document.sheet(address.substr(0, address.rfind('.'))));
  ASSERT_TRUE(
      Reference<css::view::XSelectionSupplier>(view, UNO_QUERY_THROW)->select(Any(document.range(address))));
}

void protect(const driver::Document& document, const std::string& sheet) {
  const Reference<css::util::XProtectable> cells(document.sheet(sheet), UNO_QUERY_THROW);
  cells->protect("");
  ASSERT_TRUE(cells->isProtected());
}

std::string lookOf(const driver::Document& document, const std::string& address) {
  const Reference<css::beans::XPropertySet> cell(document.cell(address), UNO_QUERY_THROW);
  rtl::OUString style;
  cell->getPropertyValue("CellStyle") >>= style;
  sal_Int32 number = -1;
  cell->getPropertyValue("NumberFormat") >>= number;
  const Reference<css::beans::XPropertySet> validation(cell->getPropertyValue("Validation"), UNO_QUERY_THROW);
  css::sheet::ValidationType type = css::sheet::ValidationType_ANY;
  validation->getPropertyValue("Type") >>= type;
  const Reference<css::sheet::XSheetCondition> condition(validation, UNO_QUERY_THROW);
  const Reference<css::sheet::XSheetConditionalEntries> rules(cell->getPropertyValue("ConditionalFormat"),
                                                              UNO_QUERY_THROW);
  return fromOffice(style) + "; format " + std::to_string(number) + "; entry " +
         std::to_string(static_cast<int>(type)) + " " + fromOffice(condition->getFormula1()) + "; rules " +
         std::to_string(rules->getCount());
}

} // namespace wetspell::host
