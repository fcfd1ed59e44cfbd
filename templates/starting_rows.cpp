#include "starting_rows.hpp"

#include "measure/class_table.hpp"
#include "season/limits.hpp"
#include "season/species.hpp"

#include <cmath>

namespace wetspell::workbook {
namespace {

Cell text(std::string_view words) {
  return Cell::of_text(std::string(words));
}
Cell limit(double value) {
  return std::isfinite(value) ? Cell::of_number(value) : Cell{};
}

FilledTable depth_classes() {
  FilledTable table{TableKind::depth_classes,
                    {Field::depth_class_label, Field::depth_class_over, Field::depth_class_up_to},
                    {}};
  for (const ClassRow& row : default_depth_classes().rows)
    table.rows.push_back({text(row.label), limit(row.low), limit(row.high)});
  table.rows.push_back({text(default_depth_classes().not_known), {}, {}});
  return table;
}

FilledTable fill_classes() {
  FilledTable table{
      TableKind::fill_classes, {Field::fill_class_label, Field::fill_class_from, Field::fill_class_to}, {}};
  const auto& rows = default_fill_classes().rows;
  for (std::size_t at = 0; at < rows.size(); ++at) {
    // People write the last whole per cent of a class; it runs on to where the next begins.
    const bool last = at + 1 == rows.size();
    table.rows.push_back(
        {text(rows[at].label), limit(rows[at].low), limit(last ? rows[at].high : rows[at].high - 1)});
  }
  table.rows.push_back({text(default_fill_classes().not_known), {}, {}});
  return table;
}

FilledTable spell_classes() {
  FilledTable table{TableKind::spell_classes,
                    {Field::spell_class_label, Field::spell_class_over, Field::spell_class_up_to},
                    {}};
  for (const ClassRow& row : default_spell_classes().rows)
    table.rows.push_back({text(row.label), limit(row.low), limit(row.high)});
  table.rows.push_back({text(default_spell_classes().not_known), {}, {}});
  return table;
}

FilledTable species() {
  FilledTable table{TableKind::species,
                    {Field::species_name, Field::species_seen_as, Field::species_first_day,
                     Field::species_last_day, Field::species_most},
                    {}};
  for (const SpeciesSpec& one : species_catalogue())
    table.rows.push_back({text(one.name),
                          text(seen_as_words().words[static_cast<std::size_t>(one.seen_as)].label),
                          text(day_of_year_text(one.first_day)), text(day_of_year_text(one.last_day)),
                          one.most > 0 ? Cell::of_number(one.most) : Cell{}});
  return table;
}

FilledTable limits() {
  FilledTable table{
      TableKind::limits,
      {Field::limit_name, Field::limit_value, Field::limit_unit, Field::limit_meaning, Field::limit_source},
      {}};
  for (const LimitSpec& one : limits_catalogue())
    table.rows.push_back({text(one.name), Cell::of_number(one.value), text(symbol(one.unit)),
                          text(one.meaning), text(one.source)});
  return table;
}

} // namespace

std::vector<FilledTable> starting_rows() {
  return {depth_classes(), fill_classes(), spell_classes(), species(), limits()};
}

} // namespace wetspell::workbook
