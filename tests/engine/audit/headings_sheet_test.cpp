// What a person corrects on the sheet of headings stays and wins, run after run.
#include "audit/headings_sheet.hpp"

#include "audit/audit_sheet.hpp"
#include "audit/heading_unit.hpp"
#include "engine/season/sheets.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell {
namespace {

using ::testing::HasSubstr;

constexpr double today = 46280; // 2026-09-15

Audit audited(const Corrections& corrections, std::vector<Table> sheets) {
  return audit("old.csv", std::move(sheets), {&corrections.map, today});
}

std::vector<Table> old_sheets() {
  return {testing::sheet("Old", "Pool | Date | Murk | Depth (cm)\n"
                                "B07 | 2019-04-01 | 20 | 30\nB08 | 2019-04-02 | 31 | 40\n")};
}

std::size_t row_of(const Table& sheet, const std::string& heading) {
  for (std::size_t row = 0; row < sheet.rows(); ++row)
    if (to_text(sheet.at(row, headings_heading)) == heading)
      return row;
  ADD_FAILURE() << "no row for " << heading;
  return 0;
}

Table put(Table sheet, const std::string& heading, std::size_t column, const std::string& word) {
  sheet.at(row_of(sheet, heading), column) = Cell::of_text(word);
  return sheet;
}

Corrections read(const Table& sheet) {
  auto corrections = corrections_on(sheet);
  EXPECT_TRUE(corrections) << corrections.error().text;
  return corrections ? std::move(corrections).value() : Corrections{};
}

bool same(const Table& one, const Table& other) {
  bool all = one.rows() == other.rows() && one.columns() == other.columns();
  for (std::size_t row = 0; all && row < one.rows(); ++row)
    for (std::size_t column = 0; all && column < one.columns(); ++column)
      all = one.at(row, column) == other.at(row, column);
  return all;
}

TEST(HeadingsSheet, SaysNothingUntilSomebodyChangesIt) {
  const Table first = headings_sheet(audited({}, old_sheets()), {}).cells;
  EXPECT_EQ(to_text(first.at(row_of(first, "Depth (cm)"), headings_field)), "Visits: Depth");
  EXPECT_EQ(to_text(first.at(row_of(first, "Depth (cm)"), headings_unit)), "cm");
  const Corrections none = read(first);
  EXPECT_TRUE(none.map.empty());
  EXPECT_TRUE(same(headings_sheet(audited(none, old_sheets()), none).cells, first));
}

TEST(HeadingsSheet, WhatAPersonChangedWinsFromThenOn) {
  Table sheet = headings_sheet(audited({}, old_sheets()), {}).cells;
  sheet = put(put(put(sheet, "Murk", headings_field, "Visits: Depth"), "Murk", headings_unit, "in"),
              "Depth (cm)", headings_field, "leave alone");
  for (int run = 0; run < 3; ++run) {
    const Corrections corrections = read(sheet);
    const Audit a = audited(corrections, old_sheets());
    ASSERT_EQ(a.season->visits.size(), 2u);
    EXPECT_DOUBLE_EQ(a.season->visits[0].depth.si, 20 * 0.0254);
    Table next = headings_sheet(a, corrections).cells;
    EXPECT_EQ(to_text(next.at(row_of(next, "Murk"), headings_field)), "Visits: Depth");
    EXPECT_EQ(to_text(next.at(row_of(next, "Depth (cm)"), headings_field)), "leave alone");
    EXPECT_THAT(to_text(next.at(row_of(next, "Murk"), headings_reason)), HasSubstr("given by a person"));
    if (run > 0) {
      EXPECT_TRUE(same(next, sheet));
    }
    sheet = std::move(next);
  }
}

TEST(HeadingsSheet, CorrectsTheWordsOfReadingsInRows) {
  const auto readings = [] {
    return std::vector<Table>{testing::sheet("Long", "Site | Date | Parameter | Value\n"
                                                     "B07 | 2019-04-01 | Depth | 20\n"
                                                     "B07 | 2019-04-01 | Extent | 30\n"
                                                     "B07 | 2019-04-01 | Water | wet\n"
                                                     "B07 | 2019-04-01 | Foam | 4\n"
                                                     "B08 | 2019-04-02 | Depth | 31\n")};
  };
  const Audit before = audited({}, readings());
  EXPECT_EQ(before.unread_count, 2u); // depths: inches or centimetres
  Table sheet = headings_sheet(before, {}).cells;
  EXPECT_THAT(to_text(sheet.at(row_of(sheet, "Extent"), headings_reason)), HasSubstr("none of our readings"));
  sheet = put(sheet, "Depth", headings_unit, "cm");
  sheet = put(put(sheet, "Extent", headings_field, "Visits: Length"), "Extent", headings_unit, "ft");
  sheet = put(sheet, "Foam", headings_field, "Pools: Forest around");
  for (int run = 0; run < 2; ++run) {
    const Corrections corrections = read(sheet);
    const Audit a = audited(corrections, readings());
    ASSERT_EQ(a.season->visits.size(), 2u);
    EXPECT_DOUBLE_EQ(a.season->visits[0].depth.si, 0.2);
    EXPECT_DOUBLE_EQ(a.season->visits[0].length.si, 30 * 0.3048);
    EXPECT_EQ(a.unread_count, 0u);
    sheet = headings_sheet(a, corrections).cells;
    EXPECT_EQ(to_text(sheet.at(row_of(sheet, "Extent"), headings_reason)), "given by a person");
    EXPECT_THAT(to_text(sheet.at(row_of(sheet, "Foam"), headings_reason)), HasSubstr("no reading at a pool"));
  }
}

TEST(HeadingsSheet, AnEmptiedFieldHandsTheHeadingBack) {
  Table sheet =
      put(headings_sheet(audited({}, old_sheets()), {}).cells, "Depth (cm)", headings_field, "leave alone");
  Corrections corrections = read(sheet);
  sheet = headings_sheet(audited(corrections, old_sheets()), corrections).cells;
  sheet = put(sheet, "Depth (cm)", headings_field, "");
  corrections = read(sheet);
  EXPECT_TRUE(corrections.map.empty());
  sheet = headings_sheet(audited(corrections, old_sheets()), corrections).cells;
  EXPECT_EQ(to_text(sheet.at(row_of(sheet, "Depth (cm)"), headings_field)), "Visits: Depth");
}

TEST(HeadingsSheet, TheUnitOfTheFieldBeforeSaysNothingAboutTheNewOne) {
  const Table sheet =
      put(headings_sheet(audited({}, old_sheets()), {}).cells, "Depth (cm)", headings_field, "Visits: Notes");
  const Corrections corrections = read(sheet);
  ASSERT_EQ(corrections.rows.size(), 1u);
  EXPECT_EQ(corrections.rows[0].unit, "");
}

TEST(HeadingsSheet, TheLatestOfTwoChangesCounts) {
  auto sheets = old_sheets();
  sheets.push_back(
      testing::sheet("Older", "Pool | Date | Murk\nB09 | 2018-04-01 | 2\nB10 | 2018-04-02 | 3\n"));
  Table sheet = headings_sheet(audited({}, sheets), {}).cells;
  EXPECT_EQ(to_text(sheet.at(row_of(sheet, "Murk"), headings_where)), "Old.C1 and 1 more");
  sheet = put(put(sheet, "Murk", headings_field, "Visits: Depth"), "Murk", headings_unit, "in");
  Corrections corrections = read(sheet);
  sheet = headings_sheet(audited(corrections, sheets), corrections).cells;
  sheet = put(sheet, "Murk", headings_unit, "cm");
  corrections = read(sheet);
  const Audit a = audited(corrections, sheets);
  EXPECT_DOUBLE_EQ(a.season->visits[0].depth.si, 0.2);
}

TEST(HeadingsSheet, KeepsWhatWasSaidOfAHeadingThatIsNotThereNow) {
  Table sheet =
      put(headings_sheet(audited({}, old_sheets()), {}).cells, "Murk", headings_field, "Visits: Fill");
  Corrections corrections = read(sheet);
  const std::vector<Table> without{
      testing::sheet("Old", "Pool | Date\nB07 | 2019-04-01\nB08 | 2019-04-02\n")};
  sheet = headings_sheet(audited(corrections, without), corrections).cells;
  corrections = read(sheet);
  sheet = headings_sheet(audited(corrections, old_sheets()), corrections).cells;
  EXPECT_EQ(to_text(sheet.at(row_of(sheet, "Murk"), headings_field)), "Visits: Fill");
}

TEST(HeadingsSheet, NamesTheCellWithAWordThatIsNoField) {
  const Table sheet =
      put(headings_sheet(audited({}, old_sheets()), {}).cells, "Murk", headings_field, "Shoe size");
  const auto refused = corrections_on(sheet);
  ASSERT_FALSE(refused);
  EXPECT_THAT(refused.error().text, HasSubstr("C4"));
  EXPECT_THAT(refused.error().text, HasSubstr("Shoe size"));
}

TEST(HeadingsSheet, EveryWordOfTheDropDownsIsUnderstood) {
  for (const std::string& word : words_for_unit())
    EXPECT_EQ(symbol(unit_meant(word)), word);
  const Audit a = audited({}, {testing::sheet("Old", "Pool | Date | Wood frog egg masses\n"
                                                     "B07 | 2019-04-01 | 12\nB08 | 2019-04-02 | 3\n")});
  const auto words = words_for_field(a);
  EXPECT_THAT(words, ::testing::Contains("Life: wood frog, egg masses"));
  for (const std::string& word : words)
    EXPECT_TRUE(read_given_map(testing::sheet("H", "Heading | Field\nx | " + word))) << word;
}

TEST(AuditSheet, EveryLineLeadsToItsCellAndTheFirstScreenToTheParts) {
  const Audit a = audited({}, {testing::sheet("Old", "Pool | Date | Person | Depth (cm) | Water temp (C)\n"
                                                     "B07 | 2019-04-01 | RW | 30 | 5\n"
                                                     "B08 | 2019-04-02 | RW | stick lost | 6\n"
                                                     "B07 | 2019-04-01 | RW | 36 | 7\n"
                                                     "B09 | 2019-04-03 | RW | 41 | 7\n"
                                                     "Total | | | 107 |\n")});
  const AuditSheet sheet = audit_sheet(a);
  ASSERT_EQ(sheet.lines.size(), sheet.cells.rows());
  ASSERT_EQ(sheet.leads_to.size(), sheet.cells.rows());
  std::size_t unread = 0, jumps = 0;
  for (std::size_t row = 0; row < sheet.cells.rows(); ++row) {
    const auto& to = sheet.leads_to[row];
    if (to && sheet.lines[row] == AuditLine::body) {
      EXPECT_EQ(to_text(*to), to_text(sheet.cells.at(row, 0)));
    }
    if (to && sheet.lines[row] == AuditLine::words) {
      EXPECT_EQ(to->sheet, "");
      EXPECT_EQ(sheet.lines[to->row - 1], AuditLine::section);
      ++jumps;
    }
    unread += to_text(sheet.cells.at(row, 2)) == "stick lost";
  }
  EXPECT_EQ(unread, 2u) << "as a finding, and as a cell that was left unread";
  EXPECT_EQ(jumps, 4u);
  EXPECT_EQ(sheet.lines.front(), AuditLine::title);
  EXPECT_THAT(to_text(sheet.cells.at(1, 0)), HasSubstr("4 rows in 1 table"));
}

TEST(AuditSheet, QuotesTheBeginningOfALongText) {
  std::string text;
  for (int i = 0; i < 10'000; ++i)
    text += "ä";
  const Audit a = audited({}, {testing::sheet("Old", "Pool | Date | Depth (cm)\nB07 | 2019-04-01 | " + text +
                                                         "\nB08 | 2019-04-02 | 3\n")});
  ASSERT_EQ(a.unread.size(), 1u);
  const AuditSheet sheet = audit_sheet(a);
  for (std::size_t row = 0; row < sheet.cells.rows(); ++row)
    for (std::size_t column = 0; column < sheet.cells.columns(); ++column)
      EXPECT_LE(to_text(sheet.cells.at(row, column)).size(), 1010u);
}

} // namespace
} // namespace wetspell
