// The table finder and the heading map: every table lies on the sheet, every column has one mapping.
#include "audit/find_tables.hpp"
#include "audit/map_headings.hpp"
#include "fuzz/fuzz.hpp"

#include <algorithm>

int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace wetspell;
  using fuzz::expect;
  const Table sheet = fuzz::sheet_of(fuzz::text_of(bytes, size));
  for (const Block& block : find_tables(sheet)) {
    const std::size_t rows = block.grid.rows(), columns = block.grid.columns();
    expect(rows > 0 && columns > 0, "a table has cells");
    expect(block.first_data <= block.end_data && block.end_data <= rows, "records lie in their table");
    expect(block.headings.size() == columns, "every column has a heading, if an empty one");
    expect(std::ranges::is_sorted(block.passed, {}, &PassedRow::row), "rows passed over stand in order");
    const BlockMap map = map_headings(block, {});
    expect(map.columns.size() == columns, "every column has one mapping");
    for (const Mapping& each : map.columns) {
      expect(each.confidence >= 0 && each.confidence <= 1, "confidence lies between 0 and 1");
      expect(!each.field || each.confidence >= sure_enough, "what is not sure enough is left open");
      expect(!each.reason.empty(), "every mapping has a reason");
    }
  }
  return 0;
}
