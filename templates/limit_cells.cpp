#include "limit_cells.hpp"

#include "formula.hpp"
#include "layout.hpp"
#include "table/cell.hpp"

#include <fmt/format.h>

namespace wetspell::workbook {

std::string limit_in_sheet(Limit limit, std::string_view unit) {
  const LimitSpec& what = limits_catalogue()[static_cast<std::size_t>(limit)];
  const std::size_t row = layout(TableKind::limits).heading_row + 1 + static_cast<std::size_t>(limit);
  const auto cell = [row](Field field) {
    return "[" + fixed_cell(spec(TableKind::limits).sheet, column_of(field), row) + "]";
  };
  const std::string usual = to_text(Cell::of_number(what.value));
  // CONVERT writes degrees without their sign; everything else it calls as the sheet does.
  const auto plain = [](std::string_view name) { return fmt::format("SUBSTITUTE({};\"°\";\"\")", name); };
  return fmt::format("CONVERT(IF(ISNUMBER({0});{0};{1});{2};{3})", cell(Field::limit_value), usual,
                     plain(cell(Field::limit_unit)), plain(unit));
}

} // namespace wetspell::workbook
