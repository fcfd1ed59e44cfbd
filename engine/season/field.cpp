#include "season/field.hpp"

#include "season/field_tables.hpp"
#include "season/words.hpp"

#include <algorithm>
#include <array>
#include <vector>

namespace wetspell {

namespace {

constexpr std::array<TableSpec, table_kinds> table_specs{{
    {TableKind::settings, "settings", "Start", "The season, the units and the way dates are written."},
    {TableKind::pools, "pools", "Pools", "One row a pool: what stays the same from visit to visit."},
    {TableKind::people, "people", "People", "One row a person, with the runs that say how long a pace is."},
    {TableKind::visits, "visits", "Visits", "One row a visit: what was read and seen at a pool on a day."},
    {TableKind::life, "life", "Life", "One row a kind of animal and a visit: what was counted."},
    {TableKind::findings, "findings", "Findings", "What the check found, and the answers to it."},
    {TableKind::depth_classes, "depth_classes", "Classes", "The classes into which depths fall."},
    {TableKind::fill_classes, "fill_classes", "Classes", "The classes of how full a pool is."},
    {TableKind::spell_classes, "spell_classes", "Classes", "The classes of how long pools hold water."},
    {TableKind::species, "species", "Species", "The animals to be expected, when, and how many at most."},
    {TableKind::limits, "limits", "Limits", "The limits from which on a reading is doubtful or wrong."},
}};

std::vector<FieldSpec> joined_fields() {
  std::vector<FieldSpec> all;
  for (std::span<const FieldSpec> part : {setting_fields(), pool_fields(), person_fields(), visit_fields(),
                                          life_fields(), finding_fields(), class_fields()})
    all.insert(all.end(), part.begin(), part.end());
  return all;
}

} // namespace

std::span<const TableSpec> tables() {
  return table_specs;
}

const TableSpec& spec(TableKind table) {
  return table_specs[static_cast<std::size_t>(table)];
}

std::string in_words(TableKind table) {
  std::string words(spec(table).name);
  std::replace(words.begin(), words.end(), '_', ' ');
  return words;
}

std::span<const FieldSpec> fields() {
  static const std::vector<FieldSpec> all = joined_fields();
  return all;
}

std::span<const FieldSpec> fields(TableKind table) {
  const auto all = fields();
  const auto in_table = [table](const FieldSpec& s) { return s.table == table; };
  const auto first = std::find_if(all.begin(), all.end(), in_table);
  const auto last = std::find_if_not(first, all.end(), in_table);
  return {first, last};
}

const FieldSpec& spec(Field field) {
  return fields()[static_cast<std::size_t>(field)];
}

std::optional<Field> field_named(TableKind table, std::string_view name) {
  std::string one;
  std::string other;
  for (const FieldSpec& s : fields(table))
    if (plain_word(s.name, one) == plain_word(name, other) ||
        plain_word(s.heading, one) == plain_word(name, other))
      return s.field;
  return std::nullopt;
}

} // namespace wetspell
