// The CSV reader: whatever the bytes, the strict reader and the lenient one answer; what was read and is
// written again is read as the same.
#include "exchange/csv.hpp"
#include "fuzz/fuzz.hpp"

#include <string>

namespace {

using namespace wetspell;
using fuzz::expect;

void check_written(const Table& table) {
  const auto again = table_from_csv(csv_from_table(table), "again");
  expect(again.has_value(), "what was written can be read");
  expect(again.value().rows() == table.rows() && again.value().columns() == table.columns(),
         "what was written has as many rows and columns");
  for (std::size_t row = 0; row < table.rows(); ++row)
    for (std::size_t column = 0; column < table.columns(); ++column) {
      const Cell& before = table.at(row, column);
      const Cell& after = again.value().at(row, column);
      const std::string text = to_text(after);
      expect(text == to_text(before) || text == "'" + to_text(before),
             "what was written is what was read, or has been made harmless");
      const bool number = before.kind() == CellKind::number || after.kind() == CellKind::number ||
                          text.find_first_not_of("-.0123456789") == std::string::npos;
      expect(number || std::string_view("=+-@\t\r").find(text.front()) == std::string_view::npos,
             "no text that is written begins like a formula");
    }
}

} // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const std::string text(fuzz::text_of(bytes, size));
  if (const auto strict = table_from_csv(text, "strict"))
    check_written(strict.value());
  const auto lenient = table_from_any_text(text, "lenient");
  expect(lenient.has_value(), "only what is too large is refused");
  check_written(lenient.value());
  return 0;
}
