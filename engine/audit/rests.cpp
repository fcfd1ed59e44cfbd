#include "audit/rests.hpp"

#include "audit/heading_unit.hpp"
#include "quantity/read.hpp"
#include "season/locate.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell {

namespace {

struct Pair {
  Unit whole, rest;
  std::string_view large, small;
  double most; ///< so many of the small make one of the large
};
constexpr std::array pairs{Pair{Unit::foot, Unit::inch, "feet", "inches", 12},
                           Pair{Unit::metre, Unit::centimetre, "metres", "centimetres", 100}};

/// The words of a heading without its unit; none where it is nothing else.
std::vector<std::string> words_beside_unit(const std::string& heading) {
  return unit_meant(heading) != Unit::none ? std::vector<std::string>()
                                           : words_of(unit_in_heading(heading).rest);
}

Unit unit_of(const Column& column) {
  return column.said_unit() != Unit::none ? column.said_unit() : unit_meant(column.heading());
}

/// Whole numbers, and beside them numbers that stay below one of the large unit; slips of the pen aside.
bool are_pieces(const AsKind& whole, const AsKind& rest, double most) {
  constexpr double mostly = 0.8;
  if (whole.bare.empty() || rest.bare.empty() || whole.share_with_decimals() > 1 - mostly)
    return false;
  const auto below = std::count_if(rest.bare.begin(), rest.bare.end(),
                                   [&](double number) { return number >= 0 && number < most; });
  return static_cast<double>(below) >= mostly * static_cast<double>(rest.bare.size());
}

/// As typed, with the unit behind a number that bears none.
std::string with_unit(const Cell& cell, Unit unit) {
  std::string text = to_text(cell);
  const bool figure = text.find_first_of("0123456789") != std::string::npos;
  if (figure && !read(cell, {.kind = Kind::depth, .assume = unit}).unit_typed)
    text += fmt::format(" {}", symbol(unit));
  return text;
}

} // namespace

void find_rests(BlockMap& map, const std::vector<Column>& columns,
                const std::function<bool(std::size_t)>& given) {
  for (Mapping& mapping : map.columns) {
    const std::size_t next = mapping.column + 1;
    if (!mapping.field || next >= columns.size() || !map.columns[next].open() || given(next))
      continue;
    const Kind kind = spec(*mapping.field).kind;
    if (spec(*mapping.field).type != FieldType::quantity || (kind != Kind::depth && kind != Kind::length))
      continue;
    const auto words = words_beside_unit(columns[next].heading());
    if (!words.empty() && words != words_beside_unit(mapping.heading))
      continue;
    for (const Pair& pair : pairs)
      if (mapping.unit == pair.whole && unit_of(columns[next]) == pair.rest &&
          are_pieces(columns[mapping.column].as(kind), columns[next].as(kind), pair.most)) {
        mapping.rest = {next, pair.rest};
        mapping.reason +=
            fmt::format("; whole {}, the {} stand in the column beside it", pair.large, pair.small);
        map.columns[next].confidence = mapping.confidence;
        map.columns[next].reason = fmt::format("the {} beyond the {} under \"{}\", read together with them",
                                               pair.small, pair.large, mapping.heading);
      }
  }
}

Cell with_rest(const Cell& whole, Unit unit, const Cell& rest, Unit rest_unit) {
  if (!holds_something(rest) || whole.kind() == CellKind::error)
    return whole;
  if (rest.kind() == CellKind::error)
    return rest;
  if (!holds_something(whole))
    return Cell::of_text(with_unit(rest, rest_unit));
  return Cell::of_text(with_unit(whole, unit) + " " + with_unit(rest, rest_unit));
}

} // namespace wetspell
