// The units of a table's columns, once it is known what they hold.
#include "audit/mapper.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

/// The system that most units of the table belong to, said, typed or told by the temperatures.
std::optional<UnitSystem> system_of_table(const BlockMap& map, const std::vector<Column>& columns,
                                          const TitleUnits& titles) {
  std::array<std::size_t, 2> votes{};
  for (const Mapping& mapping : map.columns) {
    if (!mapping.field || spec(*mapping.field).type != FieldType::quantity)
      continue;
    const Kind kind = spec(*mapping.field).kind;
    const AsKind& as = columns[mapping.column].as(kind);
    Unit unit = mapping.unit != Unit::none ? mapping.unit : columns[mapping.column].said_unit();
    if (unit == Unit::none && as.most_say())
      unit = as.typed;
    if (unit == Unit::none)
      unit = titles.of(kind);
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

void settle_unit(Mapping& mapping, const Column& column, const UnitHints& hints) {
  if (!mapping.field || spec(*mapping.field).type != FieldType::quantity ||
      usual_unit(spec(*mapping.field).kind) == Unit::none || mapping.unit != Unit::none)
    return;
  const Kind kind = spec(*mapping.field).kind;
  const AsKind& as = column.as(kind);
  if (const ColumnUnit told = unit_told(kind, column.said_unit(), as, hints); told.unit != Unit::none) {
    mapping.unit = told.unit;
    mapping.unit_supposed = told.supposed;
    mapping.reason += fmt::format("; {}", told.reason);
    mapping.confidence = std::min(mapping.confidence, told.confidence);
  } else {
    mapping.unit_open = true; // also where no number was seen: the sample is not all
    if (!as.bare.empty())
      mapping.reason += fmt::format("; the unit of {} cannot be told{}", numbers_in_words(as),
                                    as.say_different() ? ": the other cells say different ones" : "");
  }
}

void settle_units(BlockMap& map, const std::vector<Column>& columns, UnitHints hints) {
  hints.table_system = system_of_table(map, columns, hints.titles);
  for (Mapping& mapping : map.columns)
    settle_unit(mapping, columns[mapping.column], hints);
}

} // namespace wetspell
