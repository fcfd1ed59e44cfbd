// Sheets of chance: whatever stands on them, the audit answers, counts every row once and points to cells
// that are there and say what it says they do.
#include "audit/audit.hpp"
#include "audit/audit_sheet.hpp"
#include "audit/audit_tables.hpp"

#include <gtest/gtest.h>

#include <random>

namespace wetspell {
namespace {

Cell any_cell(std::mt19937& engine) {
  static const std::vector<Cell> cells{Cell{},
                                       Cell{},
                                       Cell{},
                                       Cell::of_text("Pool"),
                                       Cell::of_text("Date"),
                                       Cell::of_text("Depth (cm)"),
                                       Cell::of_text("Water temp F"),
                                       Cell::of_text("Temp"),
                                       Cell::of_text("Species"),
                                       Cell::of_text("Count"),
                                       Cell::of_text("Observer"),
                                       Cell::of_text("Name"),
                                       Cell::of_text("Parameter"),
                                       Cell::of_text("Value"),
                                       Cell::of_text("Units"),
                                       Cell::of_text("Year"),
                                       Cell::of_text("Month"),
                                       Cell::of_text("Day"),
                                       Cell::of_text("Wood frog egg masses"),
                                       Cell::of_text("cm"),
                                       Cell::of_text("B07"),
                                       Cell::of_text("B08"),
                                       Cell::of_text("Pool: B09"),
                                       Cell::of_text("2019-04-01"),
                                       Cell::of_text("3/4/19"),
                                       Cell::of_text("12 Apr"),
                                       Cell::of_date(43567),
                                       Cell::of_date(43570),
                                       Cell::of_number(12),
                                       Cell::of_number(30.5),
                                       Cell::of_number(-4),
                                       Cell::of_number(43567),
                                       Cell::of_number(1e300),
                                       Cell::of_text("30 cm"),
                                       Cell::of_text("about 12"),
                                       Cell::of_text("2' 3\""),
                                       Cell::of_text("dry"),
                                       Cell::of_text("wood frog"),
                                       Cell::of_text("Total"),
                                       Cell::of_text("\""),
                                       Cell::of_text("?"),
                                       Cell::of_text("muddy, come back"),
                                       Cell::of_error("#REF!"),
                                       Cell::of_text("\xFF\x01"),
                                       Cell::of_text(std::string(400, 'x'))};
  return cells[std::uniform_int_distribution<std::size_t>(0, cells.size() - 1)(engine)];
}

/// A sheet of chance; every other one begins with headings that make a table.
Table any_sheet(std::mt19937& engine, unsigned seed) {
  std::uniform_int_distribution<std::size_t> size(1, 14);
  Table sheet(Place{"S" + std::to_string(seed % 3), 1 + seed % 4, seed % 2}, size(engine), size(engine));
  for (std::size_t row = 0; row < sheet.rows(); ++row)
    for (std::size_t column = 0; column < sheet.columns(); ++column)
      sheet.at(row, column) = any_cell(engine);
  const std::vector<std::vector<const char*>> heads{{"Pool", "Date", "Depth (cm)", "Temp", "Notes"},
                                                    {"Site", "Date", "Parameter", "Value", "Units"},
                                                    {"Pool", "Date", "Species", "Count", "Stage"},
                                                    {"Date", "Temp", "Depth", "Length", "Width"},
                                                    {"Depth (cm)", "2019-04-01", "3/4/19", "12 Apr", "Mean"},
                                                    {"Depth (cm)", "B07", "B08", "B09", "Notes"}};
  if (seed % 2 != 0)
    return sheet;
  const auto& head = heads[seed / 2 % heads.size()];
  for (std::size_t column = 0; column < std::min<std::size_t>(5, sheet.columns()); ++column)
    sheet.at(0, column) = Cell::of_text(head[column]);
  const bool days_across = &head == &heads[heads.size() - 2];
  const bool days_down = &head == &heads.back();
  for (std::size_t row = 1; row < sheet.rows(); ++row) // at the side of days, pools; at that of pools, days
    if (days_across || days_down)
      sheet.at(row, 0) = days_across ? Cell::of_text("B0" + std::to_string(row % 10))
                                     : Cell::of_date(43567 + static_cast<double>(row));
  return sheet;
}

/// The cell of the sheets at a place; null when no sheet reaches there.
const Cell* cell_at(const std::vector<Table>& sheets, const Place& place) {
  for (const Table& sheet : sheets)
    if (sheet.sheet() == place.sheet && place.row >= sheet.sheet_row(0) &&
        place.column >= sheet.sheet_column(0) && place.row < sheet.sheet_row(0) + sheet.rows() &&
        place.column < sheet.sheet_column(0) + sheet.columns())
      return &sheet.at(place.row - sheet.sheet_row(0), place.column - sheet.sheet_column(0));
  return nullptr;
}

TEST(Anything, IsAnsweredCountedAndLedBack) {
  std::size_t rows = 0;
  std::size_t days = 0;
  std::size_t findings = 0;
  std::size_t unread = 0;
  for (unsigned seed = 0; seed < 3000; ++seed) {
    std::mt19937 engine(seed);
    std::vector<Table> sheets;
    sheets.push_back(any_sheet(engine, seed));
    const Audit a = audit("any", sheets, {nullptr, 46280});
    std::size_t tidy = 0;
    for (const TidyTable& table : a.tidy) {
      tidy += table.rows();
      for (std::size_t row = 0; row < table.rows(); ++row)
        for (std::size_t column = 0; column < table.fields().size(); ++column)
          ASSERT_NE(cell_at(sheets, a.source(table, row, column)), nullptr) << "seed " << seed;
    }
    std::size_t by_table = 0;
    for (const AuditedTable& table : a.tables) {
      by_table += table.rows.all();
      days += table.layout == Layout::cell_a_visit ? table.rows.all() : 0;
    }
    ASSERT_EQ(a.rows.all(), tidy) << "seed " << seed;
    ASSERT_EQ(by_table, tidy) << "seed " << seed;
    for (const AuditFinding& each : a.findings)
      ASSERT_NE(cell_at(sheets, each.finding.place), nullptr)
          << "seed " << seed << ": " << each.finding.message;
    for (const Unread& each : a.unread) {
      const Cell* cell = cell_at(sheets, each.place);
      ASSERT_NE(cell, nullptr) << "seed " << seed;
      const bool carried = each.heading == "Date" || each.heading == "Day" || each.text.empty();
      ASSERT_TRUE(carried || to_text(*cell) == each.text) << "seed " << seed << ": " << each.text;
    }
    ASSERT_FALSE(verdict_lines(a).empty());
    ASSERT_GT(audit_sheet(a).cells.rows(), 0u);
    ASSERT_GT(headings_table({&a, 1}, Place{"Headings", 1, 0}).rows(), 0u);
    tidy_tables(a);
    rows += tidy;
    findings += a.findings.size();
    unread += a.unread.size();
  }
  // The chance is rich enough to mean something.
  EXPECT_GT(rows, 2000u);
  EXPECT_GT(days, 500u);
  EXPECT_GT(findings, 500u);
  EXPECT_GT(unread, 500u);
}

} // namespace
} // namespace wetspell
