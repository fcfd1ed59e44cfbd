// The check finds sheets and columns by their headings: whatever people did to the workbook, findings point
// to the right cells.

#include "commands/season_in_office.hpp"

#include "base/text.hpp"
#include "templates/layout.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/CellInsertMode.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeMovement.hpp>
#include <com/sun/star/sheet/XSheetFilterable.hpp>
#include <com/sun/star/table/TableSortField.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <com/sun/star/util/XSortable.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::HasSubstr;
using ::testing::StartsWith;

css::table::CellRangeAddress area(const Document& document, const std::string& range) {
  return Reference<css::sheet::XCellRangeAddressable>(document.range(range), UNO_QUERY_THROW)
      ->getRangeAddress();
}

Reference<css::table::XColumnRowRange> lines(const Document& document, const std::string& range) {
  return {document.range(range), UNO_QUERY_THROW};
}

Reference<css::table::XTableColumns> columns(const Document& document, const std::string& sheet) {
  return Reference<css::table::XColumnRowRange>(document.sheet(sheet), UNO_QUERY_THROW)->getColumns();
}

void show(const Document& document, const std::string& range, bool visible) {
  Reference<css::beans::XPropertySet>(lines(document, range)->getRows(), UNO_QUERY_THROW)
      ->setPropertyValue("IsVisible", Any(visible));
}

/// All rows of the visits from the headings (0) or the first visit (1) on.
std::string visitRows(std::size_t from) {
  return onVisits("A", headingRow(TableKind::visits) + from) + ":" +
         column_letters(workbook::column_of(fields(TableKind::visits).back().field)) +
         std::to_string(lastReadyRow(TableKind::visits));
}

/// Each planted mistake as the finding of a rule whose cell shows this, in a row that holds this pool.
class Places : public ::testing::Test {
protected:
  Document document = opened(smallSeason());
  Desk desk{document};

  void TearDown() override {
    if (HasFatalFailure())
      return;
    const std::string before = snapshot(document);
    desk.check();
    const auto rows = rowsOnSheet(document);
    for (const auto& [rule, pool, shown] :
         std::vector<std::array<std::string, 3>>{{"wider-than-long", "B07", "62"},
                                                 {"wrong-year", "B12", "2025-04-20"},
                                                 {"end-before-start", "B01", "09:40"},
                                                 {"temperature-decimal-slipped", "B07", "515"},
                                                 {"unknown-person", "B12", "KLUUG"},
                                                 {"both-over-either", "B01", "9"}}) {
      const FindingRow row = only(rows, rule);
      EXPECT_EQ(row.at("pool"), pool) << rule;
      const std::string where = plain(row.at("where"));
      EXPECT_EQ(document.read(where).text, shown) << rule << " at " << where;
      EXPECT_THAT(document.dump(rowOf(where)), HasSubstr(pool)) << rule << " at " << where;
      EXPECT_EQ(desk.cellOf(row.at("key")), row.at("where"));
    }
    EXPECT_TRUE(same(snapshot(document), before));
  }

  /// Without the quotes around a sheet's name.
  static std::string plain(std::string where) {
    std::erase(where, '\'');
    return where;
  }
  static std::string rowOf(const std::string& where) {
    const std::size_t digits = where.find_last_not_of("0123456789") + 1;
    const std::string row = where.substr(digits);
    return where.substr(0, where.rfind('.')) + ".A" + row + ":AZ" + row;
  }
};

TEST_F(Places, AreThoseOfTheTemplate) {}

TEST_F(Places, FollowSortedRows) {
  Sequence<css::table::TableSortField> by(1);
  by.getArray()[0].Field = 2; // the date
  by.getArray()[0].IsAscending = false;
  Sequence<css::beans::PropertyValue> how(2);
  how.getArray()[0] = {"SortFields", 0, Any(by), css::beans::PropertyState_DIRECT_VALUE};
  how.getArray()[1] = {"ContainsHeader", 0, Any(false), css::beans::PropertyState_DIRECT_VALUE};
  Reference<css::util::XSortable>(document.range(visitRows(1)), UNO_QUERY_THROW)->sort(how);
  ASSERT_EQ(document.read(at(Field::visit_person, 0)).text, "KLUUG") << "the latest visit comes first now";
}

TEST_F(Places, FollowInsertedColumns) {
  columns(document, "Visits")->insertByIndex(9, 2);
  document.setText(onVisits("J", headingRow(TableKind::visits)), "Air temperature at home");
  document.setText(onVisits("J", headingRow(TableKind::visits) + 1), "515");
}

TEST_F(Places, FollowMovedColumns) {
  // The depth before everything else, right behind the mark.
  columns(document, "Visits")->insertByIndex(1, 1);
  const auto depth = static_cast<sal_Int32>(workbook::column_of(Field::visit_depth)) + 1;
  const std::string letters = column_letters(static_cast<std::size_t>(depth));
  ASSERT_THAT(document.read(onVisits(letters, headingRow(TableKind::visits))).text, StartsWith("Depth"));
  const auto from = area(document, onVisits(letters, 1) + ":" + letters + "600");
  Reference<css::sheet::XCellRangeMovement>(document.sheet("Visits"), UNO_QUERY_THROW)
      ->moveRange({from.Sheet, 1, 0}, from);
  columns(document, "Visits")->removeByIndex(depth, 1);
}

TEST_F(Places, FollowRenamedSheets) {
  Reference<css::container::XNamed>(document.sheet("Visits"), UNO_QUERY_THROW)->setName("Spring rounds 1.a");
  Reference<css::container::XNamed>(document.sheet("Life"), UNO_QUERY_THROW)->setName("What we saw");
}

TEST_F(Places, FollowTitleRowsAbove) {
  lines(document, "Visits.A1")->getRows()->insertByIndex(0, 3);
  document.setText("Visits.A1", "Our programme, printed for the meeting");
}

TEST_F(Places, FollowHiddenRows) {
  show(document, at(Field::visit_pool, 1) + ":B" + std::to_string(headingRow(TableKind::visits) + 4), false);
}

TEST_F(Places, FollowFilteredRows) {
  const Reference<css::sheet::XSheetFilterable> range(document.range(visitRows(0)), UNO_QUERY_THROW);
  const auto filter = range->createFilterDescriptor(true);
  Sequence<css::sheet::TableFilterField> by(1);
  by.getArray()[0].Field = 1;
  by.getArray()[0].IsNumeric = false;
  by.getArray()[0].Operator = css::sheet::FilterOperator_EQUAL;
  by.getArray()[0].StringValue = "B01";
  filter->setFilterFields(by);
  Reference<css::beans::XPropertySet>(filter, UNO_QUERY_THROW)->setPropertyValue("ContainsHeader", Any(true));
  range->filter(filter);
  bool visible = true;
  Reference<css::beans::XPropertySet>(lines(document, at(Field::visit_pool, 1))->getRows(), UNO_QUERY_THROW)
      ->getPropertyValue("IsVisible") >>= visible;
  ASSERT_FALSE(visible) << "the filter hides B07";
}

TEST_F(Places, FollowMergedCells) {
  Reference<css::util::XMergeable>(document.range(onVisits("AC", headingRow(TableKind::visits) + 2) + ":AD" +
                                                  std::to_string(headingRow(TableKind::visits) + 2)),
                                   UNO_QUERY_THROW)
      ->merge(true);
  Reference<css::util::XMergeable>(document.range("Visits.A1:H1"), UNO_QUERY_THROW)->merge(true);
}

TEST_F(Places, FollowFindingsMovedToAnotherSheetName) {
  Reference<css::container::XNamed>(document.sheet("Findings"), UNO_QUERY_THROW)->setName("To do");
  const std::string before = snapshot(document, "To do");
  desk.check();
  EXPECT_EQ(rowsOnSheet(document, "To do").size(), desk.findings().size());
  EXPECT_TRUE(same(snapshot(document, "To do"), before));
  Reference<css::container::XNamed>(document.sheet("To do"), UNO_QUERY_THROW)->setName("Findings");
}

TEST_F(Places, FollowFindingsWithMovedAndMissingColumns) {
  // The person wants no advice, and a column of her own between the others.
  columns(document, "Findings")->removeByIndex(8, 1);
  columns(document, "Findings")->insertByIndex(3, 1);
  const std::size_t heading = headingRow(TableKind::findings);
  document.setText("Findings.D" + std::to_string(heading), "Phoned");
  document.setText("Findings.D" + std::to_string(heading + 1), "on Monday");
  desk.check();
  EXPECT_EQ(document.read("Findings.D" + std::to_string(heading + 1)).text, "on Monday");
  EXPECT_EQ(rowsOnSheet(document).size(), desk.findings().size());
}

TEST_F(Places, FollowFilteredFindings) {
  desk.check();
  show(document, at(Field::finding_level, 0) + ":A9", false);
  desk.check();
  for (const FindingRow& row : rowsOnSheet(document)) {
    bool visible = false;
    const std::string cell = cellOnSheet(document, row.at("key"), "Rule");
    Reference<css::beans::XPropertySet>(lines(document, cell)->getRows(), UNO_QUERY_THROW)
        ->getPropertyValue("IsVisible") >>= visible;
    EXPECT_TRUE(visible) << cell;
  }
}

} // namespace
} // namespace wetspell::host
