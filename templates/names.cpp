#include "names.hpp"

#include "entry.hpp"
#include "formula.hpp"
#include "layout.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell::workbook {
namespace {

constexpr std::array<std::pair<Setting, std::string_view>, 4> units_in_use{{
    {Setting::temperature_unit, "unit_temperature"},
    {Setting::depth_unit, "unit_depth"},
    {Setting::length_unit, "unit_length"},
    {Setting::area_unit, "unit_area"},
}};

constexpr std::array looked_into{
    Field::pool_code,    Field::person_code,       Field::person_pace,      Field::person_counts,
    Field::visit_pool,   Field::visit_doubts,      Field::finding_level,    Field::finding_answer,
    Field::species_name, Field::depth_class_label, Field::fill_class_label,
};

} // namespace

std::string column_name(Field field) {
  return fmt::format("{}_{}", spec(spec(field).table).name, spec(field).name);
}

std::vector<Name> names(const Filling& filling) {
  std::vector<Name> all;
  for (const SettingSpec& setting : settings_catalogue())
    all.push_back({setting_name(setting.setting), setting_cell(setting.setting)});
  for (const auto& [setting, name] : units_in_use)
    all.push_back({std::string(name),
                   fixed_cell(spec(TableKind::settings).sheet, in_use_column, setting_row(setting))});
  all.push_back({"version_here",
                 fixed_cell(spec(TableKind::settings).sheet, caution_column, setting_row(Setting::today))});
  for (const Field field : looked_into)
    all.push_back({column_name(field), filling.range(field)});
  return all;
}

std::string with_headings(TableKind table, const Filling& filling) {
  const TableLayout& where = layout(table);
  const auto all = fields(table);
  return fmt::format("[{}]",
                     fixed_range(spec(table).sheet, column_of(all.front().field), where.heading_row,
                                 column_of(all.back().field), where.heading_row + filling.ready(table)));
}

} // namespace wetspell::workbook
