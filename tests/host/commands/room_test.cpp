// Room for more visits: rows with all that the prepared ones have, covered by all that covers the table.

#include "commands/season_in_office.hpp"

#include "base/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XConditionalFormats.hpp>
#include <com/sun/star/sheet/XDatabaseRange.hpp>
#include <com/sun/star/sheet/XSheetFilterable.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::HasSubstr;

/// The last row of every filter range of the document, by its first cell's sheet and row.
std::vector<std::size_t> filterEnds(const Document& document) {
  Reference<css::container::XIndexAccess> ranges;
  Reference<css::beans::XPropertySet>(document.model(), UNO_QUERY_THROW)
      ->getPropertyValue("DatabaseRanges") >>= ranges;
  std::vector<std::size_t> ends;
  for (sal_Int32 i = 0; i < ranges->getCount(); ++i)
    ends.push_back(
        static_cast<std::size_t>(Reference<css::sheet::XDatabaseRange>(ranges->getByIndex(i), UNO_QUERY_THROW)
                                     ->getDataArea()
                                     .EndRow) +
        1);
  return ends;
}

int lookRules(const Document& document, const std::string& sheet) {
  Reference<css::sheet::XConditionalFormats> formats;
  Reference<css::beans::XPropertySet>(document.sheet(sheet), UNO_QUERY_THROW)
      ->getPropertyValue("ConditionalFormats") >>= formats;
  return formats->getLength();
}

const FieldSpec& firstField() {
  return fields(TableKind::visits).front();
}

class Room : public ::testing::Test {
protected:
  const std::size_t last = lastReadyRow(TableKind::visits);
  const std::size_t ready = last - headingRow(TableKind::visits);
  Document document = opened(smallSeason());
  Desk desk{document};

  /// Formulas, drop-downs, formats and rules of look of a row of visits, relative to the row.
  std::string row(std::size_t index) const {
    std::string all;
    const std::string number = std::to_string(headingRow(TableKind::visits) + 1 + index);
    for (std::size_t column = 0; column < fields(TableKind::visits).size() + 1; ++column) {
      const std::string cell = "Visits." + column_letters(column) + number;
      std::string formula = document.read(cell).formula;
      if (!formula.starts_with("="))
        formula.clear();
      for (std::size_t at = 0; (at = formula.find(number, at)) != std::string::npos;)
        formula.replace(at, number.size(), "#");
      all += column_letters(column) + ": " + formula + " " + lookOf(document, cell) + "\n";
    }
    return all;
  }
};

TEST_F(Room, HasFormulasDropDownsAndFormats) {
  const std::string model = row(ready - 1);
  ASSERT_THAT(model, HasSubstr("=IF("));
  desk.makeRoom(300);
  for (const std::size_t index : {ready - 1, ready, ready + 150, ready + 299})
    EXPECT_EQ(row(index), model) << "row " << index;
  EXPECT_EQ(document.read(onVisits("A", last + 301)).formula, "") << "no more than was asked for";
}

TEST_F(Room, IsCoveredByFiltersPrintsAndRules) {
  const int rules = lookRules(document, "Visits");
  const auto ends = filterEnds(document);
  ASSERT_THAT(ends, ::testing::Contains(last));
  ASSERT_EQ(printedRows(document, "Visits"), last);
  desk.makeRoom(300);
  EXPECT_THAT(filterEnds(document), ::testing::Contains(last + 300));
  EXPECT_THAT(filterEnds(document), ::testing::Not(::testing::Contains(last + 1)));
  EXPECT_EQ(printedRows(document, "Visits"), last + 300);
  EXPECT_EQ(lookRules(document, "Visits"), rules) << "stretched, not one more for every row";
}

TEST_F(Room, IsCheckedLikeTheRest) {
  desk.makeRoom(100);
  for (const auto& [field, cell] : goodVisit("B09", day(6, 1), "RW"))
    if (cell.kind() == CellKind::text)
      document.setText(at(field, ready + 99), std::string(cell.text()));
    else
      document.setValue(at(field, ready + 99), cell.number());
  EXPECT_EQ(desk.finding("unknown-pool").at("where"), onVisits("B", last + 100));
  EXPECT_EQ(document.read(onVisits("A", last + 100)).text, "look again")
      << "the formula of the new row says so too";
  EXPECT_THAT(document.dumpSheet("Start"), HasSubstr("Visits: 7 typed"));
}

TEST_F(Room, IsMadeAgainAndAgain) {
  const std::string model = row(ready - 1);
  desk.makeRoom(1);
  desk.makeRoom(20);
  desk.makeRoom(3);
  EXPECT_EQ(row(ready + 23), model);
  EXPECT_EQ(document.read(onVisits("A", last + 25)).formula, "");
  EXPECT_EQ(printedRows(document, "Visits"), last + 24);
}

TEST_F(Room, IsOneUndoStepAndTouchesNoTypedCell) {
  const std::string before = snapshot(document, "");
  desk.makeRoom(250);
  EXPECT_EQ(document.undoTitles(), (std::vector<std::string>{"Make room for more rows"}));
  EXPECT_EQ(document.read(at(Field::visit_person, 5)).text, "KLUUG");
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(printedRows(document, "Visits"), last);
}

TEST_F(Room, IsBelowAFullTable) {
  std::vector<TypedRow> many;
  for (std::size_t i = 0; i < ready - 6; ++i)
    many.push_back(goodVisit("B01", day(6, 1), "RW"));
  many.back()[Field::visit_notes] = Cell::of_text("the last row");
  const Document full = opened(smallSeason(many));
  ASSERT_EQ(full.read(at(Field::visit_notes, ready - 1)).text, "the last row");
  full.setFormula("Start.Z1", "=" + at(Field::visit_notes, ready - 1));
  const std::string formula = full.read(at(Field::visit_doubts, ready - 1)).formula;
  Desk(full).makeRoom(40);
  EXPECT_EQ(full.read(at(Field::visit_notes, ready - 1)).text, "the last row");
  EXPECT_EQ(full.read(at(Field::visit_doubts, ready - 1)).formula, formula);
  EXPECT_EQ(full.read("Start.Z1").text, "the last row") << "cells elsewhere still point to it";
  EXPECT_EQ(full.read(at(firstField().field, ready)).text, "");
  EXPECT_EQ(full.read(at(Field::visit_notes, ready + 39)).text, "");
  EXPECT_THAT(full.read(at(Field::visit_mean, ready + 39)).formula, HasSubstr(std::to_string(last + 40)));
  EXPECT_EQ(printedRows(full, "Visits"), last + 40);
  Desk(full).makeRoom(2);
  EXPECT_THAT(full.read(at(Field::visit_mean, ready + 41)).formula, HasSubstr(std::to_string(last + 42)));
}

TEST_F(Room, IsInSightThoughAFilterHidesTheEmptyRows) {
  const Reference<css::sheet::XSheetFilterable> range(
      document.range(onVisits("A", headingRow(TableKind::visits)) + ":AP" + std::to_string(last)),
      UNO_QUERY_THROW);
  const auto filter = range->createFilterDescriptor(true);
  css::uno::Sequence<css::sheet::TableFilterField> by(1);
  by.getArray()[0].Field = 1;
  by.getArray()[0].Operator = css::sheet::FilterOperator_EQUAL;
  by.getArray()[0].StringValue = "B01";
  filter->setFilterFields(by);
  Reference<css::beans::XPropertySet>(filter, UNO_QUERY_THROW)->setPropertyValue("ContainsHeader", Any(true));
  range->filter(filter);
  const std::string model = row(ready - 1);
  desk.makeRoom(30);
  EXPECT_EQ(row(ready + 10), model);
  bool visible = false;
  const Reference<css::table::XColumnRowRange> lastRow(document.range(onVisits("A", last + 30)),
                                                       UNO_QUERY_THROW);
  Reference<css::beans::XPropertySet>(lastRow->getRows(), UNO_QUERY_THROW)->getPropertyValue("IsVisible") >>=
      visible;
  EXPECT_TRUE(visible);
}

TEST_F(Room, LeavesWhatStandsBelowTheTable) {
  document.setText(onVisits("A", last + 6), "Signed on paper by all of us");
  desk.makeRoom(20);
  EXPECT_EQ(document.read(onVisits("A", last + 26)).text, "Signed on paper by all of us");
  EXPECT_THAT(document.read(onVisits("A", last + 20)).formula, HasSubstr("=IF("));
  EXPECT_EQ(document.read(onVisits("A", last + 21)).formula, "");
}

TEST_F(Room, FollowsPreparedRowsWhereOthersWerePastedBelow) {
  const std::string model = row(ready - 1);
  document.setText(at(Field::visit_pool, ready), "B01");
  document.setValue(at(Field::visit_date, ready), day(6, 2));
  desk.makeRoom(20);
  EXPECT_EQ(document.read(at(Field::visit_pool, ready)).text, "B01");
  EXPECT_EQ(document.read(at(Field::visit_mean, ready)).formula, "") << "what was pasted stays as it was";
  EXPECT_EQ(row(ready + 1), model);
  EXPECT_EQ(row(ready + 20), model);
  EXPECT_EQ(document.read(at(Field::visit_pool, ready + 20)).text, "");
}

TEST_F(Room, IsRefusedWhereMergedCellsAreInTheWay) {
  Reference<css::util::XMergeable>(
      document.range(onVisits("AN", last + 6) + ":AT" + std::to_string(last + 8)), UNO_QUERY_THROW)
      ->merge(true);
  const std::string before = snapshot(document, "");
  EXPECT_THAT(refusal([&] { desk.makeRoom(5); }),
              HasSubstr("Merged cells below the last row are in the way"));
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

} // namespace
} // namespace wetspell::host
