#include "summary/summary_in_office.hpp"

#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "sheet/read_sheets.hpp"
#include "table/day.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/chart/XAxisXSupplier.hpp>
#include <com/sun/star/chart/XAxisYSupplier.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>
#include <com/sun/star/chart2/XChartTypeContainer.hpp>
#include <com/sun/star/chart2/XCoordinateSystemContainer.hpp>
#include <com/sun/star/chart2/XDataSeriesContainer.hpp>
#include <com/sun/star/chart2/data/XDataSource.hpp>
#include <com/sun/star/chart2/data/XNumericalDataSequence.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>

#include <algorithm>

namespace wetspell::host {

using addin::fromOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

workbook::WorkbookContent season_to_summarise() {
  std::vector<TypedRow> more;
  const auto visit = [&](unsigned month, unsigned on, double depth) {
    TypedRow row = goodVisit("B01", day(month, on), "RW");
    row[Field::visit_depth] = Cell::of_number(depth);
    row[Field::visit_photos] = Cell::of_text("pond_" + std::to_string(month) + ".jpg");
    more.push_back(row);
  };
  visit(5, 30, 14);
  visit(6, 12, 6);
  more.push_back({{Field::visit_pool, Cell::of_text("B01")},
                  {Field::visit_date, Cell::of_date(day(6, 26))},
                  {Field::visit_person, Cell::of_text("RW")},
                  {Field::visit_water, Cell::of_text("no standing water")}});
  return smallSeason(more);
}

std::unique_ptr<Expected> expected(const driver::Document& document) {
  auto season = read_season(addin::tablesOf(document.model()), serial_of_today());
  EXPECT_TRUE(season.has_value());
  auto all = std::make_unique<Expected>(Expected{std::move(season).value(), {}, {}});
  const auto answers = answers_in(all->season);
  CheckOptions options;
  options.answers = answers;
  all->report = check(all->season, options);
  SummaryOptions how;
  how.group_by = all->season.settings.group_by;
  all->summary = summarise(all->season, all->report, how);
  return all;
}

Lines lines_of(const driver::Document& document, const std::string& sheet) {
  const auto cursor = document.sheet(sheet)->createCursor();
  Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
  const auto end = Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
  const Reference<css::sheet::XCellRangeData> cells(
      document.sheet(sheet)->getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow), UNO_QUERY_THROW);
  Lines lines;
  for (const auto& row : cells->getDataArray()) {
    std::vector<Cell>& line = lines.emplace_back();
    for (const Any& cell : row) {
      double number = 0;
      rtl::OUString text;
      if (cell >>= number)
        line.push_back(Cell::of_number(number));
      else if ((cell >>= text) && !text.isEmpty())
        line.push_back(Cell::of_text(fromOffice(text)));
      else
        line.emplace_back();
    }
  }
  return lines;
}

At find(const Lines& lines, const std::string& text) {
  for (std::size_t row = 0; row < lines.size(); ++row)
    for (std::size_t column = 0; column < lines[row].size(); ++column)
      if (lines[row][column].kind() == CellKind::text && lines[row][column].text() == text)
        return {row, column};
  ADD_FAILURE() << "no cell says '" << text << "'";
  return {};
}

std::string address(const std::string& sheet, At at) {
  return sheet + "." + column_letters(at.column) + std::to_string(at.row + 1);
}

namespace {

Reference<css::drawing::XDrawPage> page_of(const driver::Document& document, const std::string& sheet) {
  const auto names = document.sheetNames();
  const auto at = std::find(names.begin(), names.end(), sheet) - names.begin();
  const Reference<css::drawing::XDrawPagesSupplier> pages(document.model(), UNO_QUERY_THROW);
  return {pages->getDrawPages()->getByIndex(static_cast<sal_Int32>(at)), UNO_QUERY_THROW};
}

/// The shapes that have been asked for. A shape that is asked for again while the office, in another thread,
/// still lets go of the answer before has no name and no model (seen in 7.4); so the answers are kept.
std::vector<Any>& asked_for() {
  static std::vector<Any> all;
  return all;
}

Reference<css::chart2::XChartDocument> chart_in(const Any& shape) {
  asked_for().push_back(shape);
  const Reference<css::beans::XPropertySet> properties(shape, UNO_QUERY);
  if (!properties.is() || !properties->getPropertySetInfo()->hasPropertyByName("Model"))
    return {};
  Reference<css::frame::XModel> model;
  properties->getPropertyValue("Model") >>= model;
  return {model, UNO_QUERY};
}

std::string name_of(const Any& shape) {
  asked_for().push_back(shape);
  rtl::OUString name;
  Reference<css::beans::XPropertySet>(shape, UNO_QUERY_THROW)->getPropertyValue("Name") >>= name;
  return fromOffice(name);
}

std::string string_of(const Reference<css::uno::XInterface>& title) {
  rtl::OUString text;
  Reference<css::beans::XPropertySet>(title, UNO_QUERY_THROW)->getPropertyValue("String") >>= text;
  return fromOffice(text);
}

} // namespace

std::vector<std::string> chart_names(const driver::Document& document, const std::string& sheet) {
  std::vector<std::string> names;
  const auto page = page_of(document, sheet);
  for (sal_Int32 i = 0; i < page->getCount(); ++i)
    if (chart_in(page->getByIndex(i)).is())
      names.push_back(name_of(page->getByIndex(i)));
  return names;
}

Reference<css::chart2::XChartDocument> chart(const driver::Document& document, const std::string& sheet,
                                             const std::string& name) {
  const auto page = page_of(document, sheet);
  for (sal_Int32 i = 0; i < page->getCount(); ++i) {
    if (name_of(page->getByIndex(i)) == name)
      return chart_in(page->getByIndex(i));
  }
  ADD_FAILURE() << "no chart '" << name << "' on '" << sheet << "'";
  return {};
}

ChartWords words_of(const Reference<css::chart2::XChartDocument>& chart) {
  const Reference<css::chart::XChartDocument> look(chart, UNO_QUERY_THROW);
  const auto diagram = look->getDiagram();
  return {string_of(look->getTitle()), string_of(look->getSubTitle()),
          string_of(Reference<css::chart::XAxisXSupplier>(diagram, UNO_QUERY_THROW)->getXAxisTitle()),
          string_of(Reference<css::chart::XAxisYSupplier>(diagram, UNO_QUERY_THROW)->getYAxisTitle())};
}

std::vector<std::vector<double>> values_of(const Reference<css::chart2::XChartDocument>& chart) {
  std::vector<std::vector<double>> all;
  const Reference<css::chart2::XCoordinateSystemContainer> systems(chart->getFirstDiagram(), UNO_QUERY_THROW);
  const Reference<css::chart2::XChartTypeContainer> types(systems->getCoordinateSystems()[0],
                                                          UNO_QUERY_THROW);
  const Reference<css::chart2::XDataSeriesContainer> series(types->getChartTypes()[0], UNO_QUERY_THROW);
  for (const auto& each : series->getDataSeries())
    for (const auto& data :
         Reference<css::chart2::data::XDataSource>(each, UNO_QUERY_THROW)->getDataSequences()) {
      const auto values = data->getValues();
      rtl::OUString role;
      Reference<css::beans::XPropertySet>(values, UNO_QUERY_THROW)->getPropertyValue("Role") >>= role;
      if (role != "values-y")
        continue;
      const auto numbers =
          Reference<css::chart2::data::XNumericalDataSequence>(values, UNO_QUERY_THROW)->getNumericalData();
      all.emplace_back(numbers.begin(), numbers.end());
    }
  return all;
}

} // namespace wetspell::host
