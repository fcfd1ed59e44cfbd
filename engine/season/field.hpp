// The field catalogue: every column that Wetspell knows, declared once.
// Headings, drop-downs, entry limits, help texts, reading and the reference pages all come from here.
#pragma once

#include "quantity/unit.hpp"
#include "season/choice.hpp"
#include "season/records.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <variant>

namespace wetspell {

/// The tables of a season workbook.
enum class TableKind : std::uint8_t {
  settings,
  pools,
  people,
  visits,
  life,
  findings,
  depth_classes,
  fill_classes,
  spell_classes,
  species,
  limits,
};
inline constexpr std::size_t table_kinds = 11;

struct TableSpec {
  TableKind table;
  std::string_view name;  ///< "visits": as commands and CSV files call it (visits.csv)
  std::string_view sheet; ///< the template's sheet: "Visits"
  std::string_view help;  ///< one sentence: what the table is for
};
std::span<const TableSpec> tables();
const TableSpec& spec(TableKind table);
/// As messages speak of it: "depth classes".
std::string in_words(TableKind table);

/// Every field, table by table, in the template's column order.
enum class Field : std::uint8_t {
  // settings (one row a setting: label, value)
  setting_label,
  setting_value,
  setting_help,
  // pools
  pool_code,
  pool_name,
  pool_locality,
  pool_latitude,
  pool_longitude,
  pool_forest,
  pool_owner,
  pool_permission,
  pool_longest,
  pool_widest,
  pool_deepest,
  pool_isolated,
  pool_notes,
  // people
  person_code,
  person_name,
  person_counts,
  person_course,
  person_run_1,
  person_run_2,
  person_run_3,
  person_run_4,
  person_pace,
  person_pace_uncertainty,
  person_notes,
  // visits: typed
  visit_pool,
  visit_date,
  visit_start,
  visit_end,
  visit_person,
  visit_second_person,
  visit_water,
  visit_rain,
  visit_temperature_1,
  visit_temperature_2,
  visit_temperature_3,
  visit_temperature_mean,
  visit_probe_depth,
  visit_depth,
  visit_depth_class,
  visit_depth_tool,
  visit_fill,
  visit_fill_class,
  visit_length,
  visit_width,
  visit_size_tool,
  visit_paced_by,
  visit_isolated,
  visit_inlet,
  visit_outlet,
  visit_joined,
  visit_edge_seen,
  visit_photos,
  visit_notes,
  // visits: derived
  visit_mean,
  visit_spread,
  visit_depth_read,
  visit_depth_class_read,
  visit_fill_class_read,
  visit_length_read,
  visit_width_read,
  visit_area,
  visit_edge,
  // visits: check
  visit_doubts,
  // visits: written by a gathering
  visit_source_file,
  visit_source_row,
  // life
  life_pool,
  life_date,
  life_person,
  life_second_person,
  life_species,
  life_seen_as,
  life_by_first,
  life_by_second,
  life_by_both,
  life_notes,
  // life: written by a gathering
  life_source_file,
  life_source_row,
  // findings
  finding_level,
  finding_rule,
  finding_where,
  finding_pool,
  finding_date,
  finding_person,
  finding_value,
  finding_message,
  finding_advice,
  finding_replacement,
  finding_answer,
  finding_note,
  finding_key,
  // class tables
  depth_class_label,
  depth_class_over,
  depth_class_up_to,
  fill_class_label,
  fill_class_from,
  fill_class_to,
  spell_class_label,
  spell_class_over,
  spell_class_up_to,
  species_name,
  species_seen_as,
  species_first_day,
  species_last_day,
  species_most,
  // limits
  limit_name,
  limit_value,
  limit_unit,
  limit_meaning,
  limit_source,
};

enum class Role : std::uint8_t { typed, derived, check };

/// What a cell of the field holds.
enum class FieldType : std::uint8_t {
  text,
  key, ///< the code by which other tables refer to the record
  pool_ref,
  person_ref,
  species_ref,
  quantity,    ///< `kind` says which
  choice,      ///< `choices` says which words
  depth_class, ///< a label of the depth class table
  fill_class,  ///< a label of the fill class table
};

/// Where a record keeps the field.
using Member =
    std::variant<std::monostate, Quantity Pool::*, Choice Pool::*, std::string Pool::*, Quantity Person::*,
                 Choice Person::*, std::string Person::*, Ref Visit::*, Quantity Visit::*, Choice Visit::*,
                 Ref LifeCount::*, Quantity LifeCount::*, Choice LifeCount::*>;

struct FieldSpec {
  Field field;
  TableKind table;
  std::string_view name;    ///< "temperature_1": as JSON, CSV and commands call it
  std::string_view heading; ///< "Temperature 1": as the sheet shows it, without a unit
  std::string_view also;    ///< other headings read as this one, separated by "|"
  Role role;
  FieldType type;
  Kind kind;                 ///< for quantities
  ChoiceList const* choices; ///< for choices
  bool required;             ///< a row without it cannot be used
  std::string_view help;     ///< what to type, with an example
  Member member;
};

/// All fields, in the order of the enum.
std::span<const FieldSpec> fields();
std::span<const FieldSpec> fields(TableKind table);
const FieldSpec& spec(Field field);
std::optional<Field> field_named(TableKind table, std::string_view name);

} // namespace wetspell
