#include "quantity/with_unit.hpp"

#include "quantity/read.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

bool same(double one, double other) {
  return one == other || (one != one && other != other); // NaN where a side is open
}

} // namespace

Cell with_unit(const Cell& cell, Kind kind, Unit unit) {
  if (unit == Unit::none)
    return cell;
  if (cell.kind() == CellKind::number)
    return Cell::of_text(fmt::format("{} {}", cell.number(), symbol(unit)));
  if (cell.kind() != CellKind::text)
    return cell;
  const ReadOptions options{.kind = kind, .assume = unit};
  const Quantity bare = read(cell.text(), options);
  if (bare.unit_typed || bare.unit != unit || bare.written != bare.written)
    return cell;
  std::string text = fmt::format("{} {}", cell.text(), symbol(unit));
  const Quantity said = read(text, options);
  const bool alike = said.unit_typed && said.status == bare.status && said.unit == unit &&
                     said.written == bare.written && same(said.si_high, bare.si_high);
  return alike ? Cell::of_text(std::move(text)) : cell;
}

} // namespace wetspell
