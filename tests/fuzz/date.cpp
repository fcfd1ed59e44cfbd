// The date reader of old sheets: each line is one cell of a column of dates.
#include "audit/dates.hpp"
#include "fuzz/fuzz.hpp"

#include <cmath>

int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace wetspell;
  using fuzz::expect;
  if (size < 1)
    return 0;
  DateSense known;
  if (bytes[0] % 2 == 1)
    known.year = 1990 + bytes[0] % 64;
  const Table column = fuzz::sheet_of(fuzz::text_of(bytes + 1, size - 1));
  DateColumn dates(known);
  for (std::size_t row = 0; row < column.rows(); ++row)
    dates.add(column.at(row, 0));
  std::string reason;
  const DateSense sense = dates.decide(reason);
  for (std::size_t row = 0; row < column.rows(); ++row) {
    const Cell& cell = column.at(row, 0);
    const ReadDate date = date_from(cell, sense);
    if (date.readable)
      expect(std::isfinite(date.serial), "a day that was read is a number");
    else
      expect(cell.empty() || !date.reason.empty(), "what is no day has a reason in words");
    if (const auto two = two_numbers(cell.text()))
      expect(two->first >= 0 && two->second >= 0, "days and months are not below nought");
    could_be_date(cell);
    year_in(cell.text());
  }
  return 0;
}
