// The whole audit: every row is counted once, and every finding leads to a cell of the sheet.
#include "audit/audit_tables.hpp"
#include "fuzz/fuzz.hpp"

int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace wetspell;
  using fuzz::expect;
  std::vector<Table> sheets;
  sheets.push_back(fuzz::sheet_of(fuzz::text_of(bytes, size)));
  const std::size_t rows = sheets.front().rows(), columns = sheets.front().columns();
  const Audit found = audit("file", std::move(sheets), {nullptr, 46280});
  std::size_t counted = 0, tidy = 0;
  for (const AuditedTable& table : found.tables)
    counted += table.rows.all();
  for (const TidyTable& table : found.tidy)
    tidy += table.rows();
  expect(counted == found.rows.all() && tidy == counted, "every row is counted once");
  const auto is_there = [&](const Place& place) {
    return place.row >= 1 && place.row <= rows && place.column < columns;
  };
  for (const AuditFinding& each : found.findings)
    expect(is_there(each.finding.place), "a finding leads to a cell of the sheet");
  for (const Unread& each : found.unread)
    expect(is_there(each.place), "what was left unread stands on the sheet");
  expect(!verdict_lines(found).empty(), "there is always a verdict");
  headings_table({&found, 1}, Place{"Headings", 1, 0});
  tidy_tables(found);
  return 0;
}
