#include "layout.hpp"

#include "season/limits.hpp"

#include <array>

namespace wetspell::workbook {

FieldLayout layout(Field field) {
  switch (field) {
  case Field::setting_label:
    return {5.0, ""};
  case Field::setting_value:
    return {4.2, ""};
  case Field::setting_help:
    return {8.6, ""};

  case Field::pool_code:
    return {2.3, "Pool"};
  case Field::pool_name:
    return {4.2, ""};
  case Field::pool_locality:
    return {4.2, "Where"};
  case Field::pool_latitude:
  case Field::pool_longitude:
    return {2.3, ""};
  case Field::pool_forest:
    return {2.0, ""};
  case Field::pool_owner:
    return {3.4, "Leave to visit"};
  case Field::pool_permission:
    return {2.3, ""};
  case Field::pool_longest:
    return {2.1, "The pool at its fullest"};
  case Field::pool_widest:
  case Field::pool_deepest:
    return {2.1, ""};
  case Field::pool_isolated:
    return {2.2, ""};
  case Field::pool_notes:
    return {7.0, "Notes"};

  case Field::person_code:
    return {2.3, "Person"};
  case Field::person_name:
    return {4.6, ""};
  case Field::person_counts:
    return {2.2, "Pace calibration: walk a taped course"};
  case Field::person_course:
    return {2.3, ""};
  case Field::person_run_1:
  case Field::person_run_2:
  case Field::person_run_3:
  case Field::person_run_4:
    return {1.6, ""};
  case Field::person_pace:
    return {2.5, "Pace"};
  case Field::person_pace_uncertainty:
    return {2.2, ""};
  case Field::person_notes:
    return {6.6, "Notes"};

  case Field::visit_pool:
    return {2.0, "Visit"};
  case Field::visit_date:
    return {2.4, ""};
  case Field::visit_start:
    return {1.6, "When and who"};
  case Field::visit_end:
    return {1.6, ""};
  case Field::visit_person:
  case Field::visit_second_person:
    return {1.9, ""};
  case Field::visit_water:
    return {3.5, "Water and weather"};
  case Field::visit_rain:
    return {2.5, ""};
  case Field::visit_temperature_1:
    return {2.6, "Water temperature: one end, middle, other end"};
  case Field::visit_temperature_2:
  case Field::visit_temperature_3:
    return {2.6, ""};
  case Field::visit_temperature_mean:
    return {2.0, ""};
  case Field::visit_probe_depth:
    return {1.9, ""};
  case Field::visit_depth:
    return {2.0, "Depth at the deepest point", true};
  case Field::visit_depth_class:
    return {3.5, ""};
  case Field::visit_depth_tool:
    return {2.7, ""};
  case Field::visit_fill:
    return {1.7, "How full"};
  case Field::visit_fill_class:
    return {2.7, ""};
  case Field::visit_length:
    return {2.3, "Size of the water"};
  case Field::visit_width:
    return {2.3, ""};
  case Field::visit_size_tool:
  case Field::visit_paced_by:
    return {1.9, ""};
  case Field::visit_isolated:
    return {1.9, "Joined to other water?", true};
  case Field::visit_inlet:
  case Field::visit_outlet:
    return {2.6, ""};
  case Field::visit_joined:
    return {3.5, ""};
  case Field::visit_edge_seen:
    return {2.9, ""};
  case Field::visit_photos:
    return {2.6, "Pictures and notes"};
  case Field::visit_notes:
    return {7.0, ""};
  case Field::visit_mean:
    return {3.4, "From your readings", true};
  case Field::visit_spread:
    return {2.8, ""};
  case Field::visit_depth_read:
    return {2.7, ""};
  case Field::visit_depth_class_read:
    return {3.5, ""};
  case Field::visit_fill_class_read:
    return {2.7, ""};
  case Field::visit_length_read:
  case Field::visit_width_read:
    return {2.9, ""};
  case Field::visit_area:
    return {2.2, ""};
  case Field::visit_edge:
    return {2.0, ""};
  case Field::visit_doubts:
    return {20.0, "What is doubtful, in words"};
  case Field::visit_source_file:
    return {5.0, "Where it was gathered from"};
  case Field::visit_source_row:
    return {3.4, ""};

  case Field::life_pool:
    return {2.0, "Visit"};
  case Field::life_date:
    return {2.4, ""};
  case Field::life_person:
    return {2.0, "Who counted"};
  case Field::life_second_person:
    return {2.0, ""};
  case Field::life_species:
    return {4.6, "What was seen"};
  case Field::life_seen_as:
    return {2.7, ""};
  case Field::life_by_first:
    return {2.0, "How many"};
  case Field::life_by_second:
  case Field::life_by_both:
    return {2.0, ""};
  case Field::life_notes:
    return {8.0, "Notes"};
  case Field::life_source_file:
    return {5.0, "Where it was gathered from"};
  case Field::life_source_row:
    return {3.4, ""};

  case Field::finding_level:
    return {1.7, "What to look at"};
  case Field::finding_rule:
    return {3.9, ""};
  case Field::finding_where:
    return {2.4, ""};
  case Field::finding_pool:
    return {1.7, ""};
  case Field::finding_date:
    return {2.4, ""};
  case Field::finding_person:
    return {1.7, ""};
  case Field::finding_value:
    return {2.5, "What was read"};
  case Field::finding_message:
    return {7.6, ""};
  case Field::finding_advice:
    return {5.6, ""};
  case Field::finding_replacement:
    return {2.7, ""};
  case Field::finding_answer:
    return {2.9, "Your part"};
  case Field::finding_note:
    return {3.8, ""};
  case Field::finding_key:
    return {3.4, "For Wetspell"};

  case Field::depth_class_label:
    return {4.4, "Depth"};
  case Field::depth_class_over:
  case Field::depth_class_up_to:
    return {2.2, ""};
  case Field::fill_class_label:
    return {4.4, "How full"};
  case Field::fill_class_from:
  case Field::fill_class_to:
    return {2.2, ""};

  case Field::spell_class_label:
    return {4.4, "How long it holds water"};
  case Field::spell_class_over:
  case Field::spell_class_up_to:
    return {2.2, ""};

  case Field::species_name:
    return {5.4, "Animals to be expected"};
  case Field::species_seen_as:
    return {3.0, ""};
  case Field::species_first_day:
    return {2.8, "In an ordinary year"};
  case Field::species_last_day:
    return {2.8, ""};
  case Field::species_most:
    return {2.3, ""};

  case Field::limit_name:
    return {5.2, "The limit"};
  case Field::limit_value:
    return {2.1, "Change"};
  case Field::limit_unit:
    return {1.7, ""};
  case Field::limit_meaning:
    return {9.0, "What it says"};
  case Field::limit_source:
    return {12.5, ""};
  }
  return {2.5, ""};
}

namespace {

constexpr std::size_t heading_row = 2; // below title and bands

constexpr std::array<TableLayout, table_kinds> table_layouts{{
    {16, 1, 11, 0, 11, colour::deep_water, PageLook::poster},              // settings
    {heading_row, 0, 300, 2, 38, colour::water, PageLook::wide_table},     // pools
    {heading_row, 0, 200, 2, 30, colour::water, PageLook::wide_table},     // people
    {heading_row, 0, 500, 3, 28, colour::deep_water, PageLook::very_wide}, // visits
    {heading_row, 0, 500, 2, 30, colour::water, PageLook::wide_table},     // life
    {heading_row, 0, 1000, 0, 20, colour::amber, PageLook::wide_table},    // findings
    {heading_row, 0, 12, 0, 12, colour::quiet_ink, PageLook::wide_table},  // depth classes
    {heading_row, 4, 12, 0, 12, colour::quiet_ink, PageLook::wide_table},  // fill classes
    {heading_row, 8, 12, 0, 12, colour::quiet_ink, PageLook::wide_table},  // wet spell classes
    {heading_row, 0, 120, 0, 30, colour::quiet_ink, PageLook::wide_table}, // species
    {heading_row, 0, limit_count, 0, limit_count, colour::quiet_ink, PageLook::wide_table}, // limits
}};

} // namespace

const TableLayout& layout(TableKind table) {
  return table_layouts[static_cast<std::size_t>(table)];
}

std::size_t column_of(Field field) {
  const TableKind table = spec(field).table;
  const auto first = static_cast<std::size_t>(fields(table).front().field);
  const std::size_t at = layout(table).first_column + static_cast<std::size_t>(field) - first;
  const bool behind = table == TableKind::visits || (table == TableKind::settings && at >= in_use_column);
  return behind ? at + 1 : at;
}

std::size_t beside(TableKind table) {
  return column_of(fields(table).back().field) + 1;
}

namespace {

Look typed_look(const FieldSpec& field) {
  switch (field.type) {
  case FieldType::quantity:
    if (field.kind == Kind::date)
      return Look::typed_date;
    return field.kind == Kind::time ? Look::typed_time : Look::typed_number;
  case FieldType::text:
    return layout(field.field).width >= 6 ? Look::typed_wrapped : Look::typed_text;
  default:
    return Look::typed_text;
  }
}

} // namespace

Part part(const FieldSpec& field) {
  switch (field.role) {
  case Role::typed:
    return Part::you_type;
  case Role::derived:
    return Part::worked_out;
  case Role::check:
    break;
  }
  if (field.field == Field::visit_doubts)
    return Part::look_again;
  const bool records = field.table == TableKind::visits || field.table == TableKind::life;
  return records || field.table == TableKind::findings ? Part::written : Part::reading;
}

std::string_view part_words(Part part) {
  switch (part) {
  case Part::you_type:
    return "YOU TYPE";
  case Part::worked_out:
    return "WORKED OUT";
  case Part::look_again:
    return "LOOK AGAIN";
  case Part::written:
    return "WETSPELL WRITES";
  case Part::reading:
    break;
  }
  return "TO READ";
}

Look cell_look(const FieldSpec& field) {
  switch (part(field)) {
  case Part::you_type:
    return typed_look(field);
  case Part::worked_out:
    if (field.table == TableKind::people) // a pace, and what it may be off by
      return Look::derived_fine;
    return field.type == FieldType::quantity ? Look::derived_number : Look::derived_text;
  case Part::look_again:
    return Look::check_text;
  case Part::written:
  case Part::reading:
    break;
  }
  return field.field == Field::finding_date ? Look::fixed_date : Look::fixed_text;
}

Look heading_look(Part part) {
  switch (part) {
  case Part::you_type:
    return Look::head_typed;
  case Part::look_again:
  case Part::written:
    return Look::head_check;
  case Part::worked_out:
  case Part::reading:
    break;
  }
  return Look::head_derived;
}

Look band_look(Part part) {
  switch (part) {
  case Part::you_type:
    return Look::band_typed;
  case Part::look_again:
  case Part::written:
    return Look::band_check;
  case Part::worked_out:
  case Part::reading:
    break;
  }
  return Look::band_derived;
}

} // namespace wetspell::workbook
