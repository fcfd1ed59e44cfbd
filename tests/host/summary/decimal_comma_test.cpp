// The sheets of a summary in an office that writes a decimal comma: its numbers look as those do that people
// typed there, and what is typed into its cells is read as it is there.

#include "summary/summary_in_office.hpp"

#include <gmock/gmock.h>

#include <algorithm>

namespace wetspell::host {
namespace {

using driver::Document;

class DecimalComma : public ::testing::Test {
protected:
  driver::Office german{withExtension("de-DE")};
  Document here = opened(season_to_summarise());
  Document there = opened(season_to_summarise(), german);
};

/// 1,234.5 becomes 1.234,5
std::string with_comma(std::string shown) {
  for (char& c : shown)
    c = c == '.' ? ',' : c == ',' ? '.' : c;
  return shown;
}

TEST_F(DecimalComma, NumbersOfTheSummaryLookAsTypedOnesDo) {
  there.type(at(Field::visit_depth, 0), "25,5");
  there.type(at(Field::visit_length, 0), "1234,5");
  here.type(at(Field::visit_depth, 0), "25.5");
  here.type(at(Field::visit_length, 0), "1234.5");
  ASSERT_EQ(there.read(at(Field::visit_depth, 0)).text, "25,5");
  for (const Document* document : {&here, &there}) {
    const Desk desk(*document);
    desk.call("summarise");
    desk.call("poolPage", {any("B01")});
  }
  for (const std::string sheet : {pools_sheet, programme_sheet, numbers_sheet, "Page of B01"}) {
    const Lines lines = lines_of(here, sheet);
    std::size_t decimals = 0;
    for (std::size_t row = 0; row < lines.size(); ++row)
      for (std::size_t column = 0; column < lines[row].size(); ++column) {
        if (lines[row][column].kind() != CellKind::number)
          continue;
        const std::string cell = address(sheet, {row, column});
        const std::string shown = there.read(cell).text;
        EXPECT_EQ(shown, with_comma(here.read(cell).text)) << cell;
        decimals += shown.find(',') != std::string::npos;
      }
    EXPECT_GT(decimals, 3U) << sheet;
  }
}

TEST_F(DecimalComma, ReplacementsTakeDaysAsTheyAreTypedThere) {
  Desk(there).applyAll("fix");
  const std::string date = at(Field::visit_date, 2); // the check found it in the wrong year
  ASSERT_EQ(there.read(date).text, "2026-04-20");
  there.type(date, "21.04.2026");
  EXPECT_EQ(there.read(date).value, day(4, 21));
  EXPECT_EQ(there.read(date).text, "2026-04-21");
}

} // namespace
} // namespace wetspell::host
