// The units of a table's columns, once it is known what they hold.
#include "audit/mapper.hpp"

#include "audit/column_units.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

/// The system that most units of the table belong to, said, typed or told by the temperatures.
std::optional<UnitSystem> system_of_table(const BlockMap& map, const std::vector<Column>& columns) {
  std::array<std::size_t, 2> votes{};
  for (const Mapping& mapping : map.columns) {
    if (!mapping.field || spec(*mapping.field).type != FieldType::quantity)
      continue;
    const Kind kind = spec(*mapping.field).kind;
    const AsKind& as = columns[mapping.column].as(kind);
    Unit unit = mapping.unit != Unit::none ? mapping.unit : columns[mapping.column].said_unit();
    if (unit == Unit::none && as.with_unit * 2 >= as.readable)
      unit = as.typed;
    if (unit == Unit::none && kind == Kind::temperature)
      unit = unit_by_numbers(kind, as, std::nullopt).unit;
    if (const auto said = system_of(unit))
      ++votes[static_cast<std::size_t>(*said)];
  }
  if (votes[0] == votes[1])
    return std::nullopt;
  return votes[0] > votes[1] ? UnitSystem::us_customary : UnitSystem::metric;
}

} // namespace

void settle_unit(Mapping& mapping, const Column& column, std::optional<UnitSystem> table_system,
                 const Settings* settings) {
  if (!mapping.field || spec(*mapping.field).type != FieldType::quantity ||
      usual_unit(spec(*mapping.field).kind) == Unit::none || mapping.unit != Unit::none)
    return;
  const Kind kind = spec(*mapping.field).kind;
  const AsKind& as = column.as(kind);
  const auto put = [&](Unit unit, std::string_view why) {
    mapping.unit = unit;
    mapping.reason += fmt::format("; {}", why);
  };
  if (column.said_unit() != Unit::none && fits(column.said_unit(), kind)) {
    put(column.said_unit(), fmt::format("{} as the heading says", symbol(column.said_unit())));
  } else if (as.with_unit > 0 && as.with_unit * 2 >= as.readable && fits(as.typed, kind)) {
    put(as.typed, fmt::format("{} as {} of {} {}", symbol(as.typed), as.with_unit, as.readable,
                              as.readable == 1 ? "cell says" : "cells say"));
  } else if (settings != nullptr) {
    put(settings->unit_of(kind),
        fmt::format("{} as the workbook's settings say", symbol(settings->unit_of(kind))));
  } else if (const ColumnUnit told = unit_by_numbers(kind, as, table_system); told.unit != Unit::none) {
    put(told.unit, told.reason);
    mapping.confidence = std::min(mapping.confidence, told.confidence);
  } else {
    mapping.unit_open = true; // also where no number was seen: the sample is not all
    if (!as.bare.empty())
      mapping.reason += fmt::format("; the unit cannot be told from {} numbers between {:.6g} and {:.6g}",
                                    as.bare.size(), as.lowest(), as.highest());
  }
}

void settle_units(BlockMap& map, const std::vector<Column>& columns, const Settings* settings) {
  const auto table_system = system_of_table(map, columns);
  for (Mapping& mapping : map.columns)
    settle_unit(mapping, columns[mapping.column], table_system, settings);
}

} // namespace wetspell
