#include "entry.hpp"

#include "formula.hpp"
#include "layout.hpp"
#include "limit_cells.hpp"
#include "names.hpp"

#include <fmt/format.h>

#include <optional>
#include <utility>

namespace wetspell::workbook {
namespace {

std::string formula_condition(const std::string& formula) {
  return fmt::format("of:is-true-formula({})", formula);
}

/// Holds for every text, which the engine reads, and for numbers that meet `test`.
std::string text_or(const std::string& cell, const std::string& test) {
  return formula_condition(fmt::format("OR(ISTEXT({0});{1})", cell, test));
}

std::string one_of(const std::vector<std::string>& words) {
  std::string list;
  for (const std::string& word : words)
    list += (list.empty() ? "" : ";") + text_literal(word);
  return fmt::format("of:cell-content-is-in-list({})", list);
}

void let_choose(EntryCheck& check, std::string condition, std::string refusal) {
  check.condition = std::move(condition);
  check.list = true;
  check.refusal = std::move(refusal);
}

std::string other_table(const FieldSpec& field, Field key) {
  return fmt::format(
      "\"{}\" takes what stands in \"{}\" on the sheet {}. Add it there first, or keep what you "
      "typed and let the check ask.",
      field.heading, spec(key).heading, spec(spec(key).table).sheet);
}

void limit_number(EntryCheck& check, const FieldSpec& field, const std::string& cell,
                  const EntrySources& from) {
  switch (field.kind) {
  case Kind::temperature:
    check.condition = text_or(cell, fmt::format("AND({0}>={1};{0}<={2})", cell,
                                                from.limit(Limit::temperature_lowest, field.kind),
                                                from.limit(Limit::temperature_highest, field.kind)));
    check.refusal = "Water is not as cold or as warm as that. Was it read in the other unit? Write the unit "
                    "behind the number, or keep it and let the check ask.";
    break;
  case Kind::depth:
    check.condition =
        text_or(cell, fmt::format("AND({0}>=0;{0}<={1})", cell, from.limit(Limit::depth_most, field.kind)));
    check.refusal = "A seasonal pool is not that deep, and no depth is below 0. Write the unit behind the "
                    "number if it is another one.";
    break;
  case Kind::length:
    check.condition =
        text_or(cell, fmt::format("AND({0}>0;{0}<={1})", cell, from.limit(Limit::length_most, field.kind)));
    check.refusal =
        "A seasonal pool is not as long or as wide as that, and no length is 0 or less. Write the "
        "unit behind the number if it is another one.";
    break;
  case Kind::percent:
    check.condition = text_or(cell, fmt::format("AND({0}>=0;{0}<=100)", cell));
    check.refusal = "A share in per cent lies between 0 and 100.";
    check.stop = true;
    break;
  case Kind::count:
    check.condition = text_or(cell, fmt::format("{}>=0", cell));
    check.refusal = "A count is 0 or more.";
    check.stop = true;
    break;
  case Kind::time:
    check.condition = formula_condition(fmt::format("AND(ISNUMBER({0});{0}>=0;{0}<1)", cell));
    check.refusal =
        "This is not a time of day. Write hours and minutes with a colon between them: 9:40, 14:15 "
        "or 2:15 pm.";
    break;
  case Kind::date:
    if (field.table == TableKind::species) // days of any year, in words
      break;
    check.condition = formula_condition(fmt::format(
        "AND(ISNUMBER({0});IF(ISNUMBER({1});YEAR({0})={1};{0}>=DATE(1990;1;1)))", cell, from.season_year));
    check.refusal = "This was not understood as a day of this season. Write year-month-day, as 2026-04-18, "
                    "and compare the year with the season " +
                    from.compare_year + ".";
    break;
  case Kind::area:
  case Kind::volume:
  case Kind::truth:
    break;
  }
}

/// The field of the table in which the words of another field are declared.
std::optional<Field> declared_in(FieldType type) {
  switch (type) {
  case FieldType::pool_ref:
    return Field::pool_code;
  case FieldType::person_ref:
    return Field::person_code;
  case FieldType::species_ref:
    return Field::species_name;
  case FieldType::depth_class:
    return Field::depth_class_label;
  case FieldType::fill_class:
    return Field::fill_class_label;
  default:
    return std::nullopt;
  }
}

EntryCheck entry_check(const SettingSpec& setting) {
  EntryCheck check;
  check.name = entry_name(setting.setting);
  check.base = setting_cell(setting.setting);
  check.title = setting.label;
  check.help = setting.help;
  const std::string cell = "[" + check.base + "]";
  if (!setting.choices.empty()) {
    std::vector<std::string> words;
    for (std::string_view rest = setting.choices; !rest.empty();) {
      const std::size_t bar = std::min(rest.find('|'), rest.size());
      words.emplace_back(rest.substr(0, bar));
      rest.remove_prefix(std::min(bar + 1, rest.size()));
    }
    let_choose(check, one_of(words), "Choose one of the list's words.");
    check.stop = true;
  } else if (setting.setting == Setting::season_year) {
    check.condition =
        formula_condition(fmt::format("AND(ISNUMBER({0});{0}>=1990;{0}<=2200;{0}=INT({0}))", cell));
    check.refusal = "A year has four digits: 2026.";
    check.stop = true;
  } else if (setting.setting == Setting::basin_shape) {
    check.condition = formula_condition(fmt::format("AND(ISNUMBER({0});{0}>=0.25;{0}<=20)", cell));
    check.refusal = "A shape is a number from 0.25 to 20: 1 for a cone, 2 for a bowl.";
    check.stop = true;
  } else if (setting.setting != Setting::programme && setting.setting != Setting::group_by) {
    check.condition = formula_condition(fmt::format("AND(ISNUMBER({0});{0}>=DATE(1990;1;1))", cell));
    check.refusal = "This was not understood as a date. Write year-month-day, as 2026-04-18.";
    check.stop = true;
  }
  return check;
}

} // namespace

std::string entry_name(Field field) {
  return fmt::format("entry-{}-{}", spec(spec(field).table).name, spec(field).name);
}
std::string entry_name(Setting setting) {
  return fmt::format("entry-setting-{}", settings_catalogue()[static_cast<std::size_t>(setting)].name);
}

EntryCheck entry_check(const FieldSpec& field, std::string_view sheet, std::size_t column, std::size_t row,
                       const EntrySources& from) {
  const std::string cell = here(column, row);
  EntryCheck check;
  check.name = entry_name(field.field);
  check.base = fixed_cell(sheet, column, row);
  check.title = field.heading;
  check.help = field.help;
  if (field.role != Role::typed)
    return check;
  if (const auto declared = declared_in(field.type)) {
    let_choose(check, fmt::format("of:cell-content-is-in-list({})", from.offered(*declared)),
               from.not_offered(field, *declared));
    return check;
  }
  if (field.type == FieldType::choice) {
    std::vector<std::string> words;
    for (const ChoiceWord& word : field.choices->words)
      words.emplace_back(word.label);
    let_choose(check, one_of(words), "Choose one of the list's words; other words may not be understood.");
  } else if (field.type == FieldType::quantity) {
    limit_number(check, field, cell, from);
  } else if (field.type == FieldType::key && field.table != TableKind::species) {
    // An animal has a row for every form in which it is seen.
    check.condition = formula_condition(fmt::format("COUNTIF([{}];{})<=1", from.column(field.field), cell));
    check.refusal = "This code stands in another row already. Codes tell rows apart: each may stand once.";
  }
  return check;
}

std::vector<EntryCheck> entry_checks(const Filling& filling) {
  const EntrySources from{
      [](Limit limit, Kind kind) { return limit_in_sheet(limit, fmt::format("unit_{}", name(kind))); },
      [](Field declared) { return offered_name(declared); },
      other_table,
      setting_name(Setting::season_year),
      "on the sheet Start",
      [&](Field field) { return filling.range(field); }};
  std::vector<EntryCheck> all;
  for (const SettingSpec& setting : settings_catalogue())
    all.push_back(entry_check(setting));
  for (const FieldSpec& field : fields())
    if (field.table != TableKind::settings)
      all.push_back(entry_check(field, spec(field.table).sheet, column_of(field.field),
                                layout(field.table).heading_row + 1, from));
  return all;
}

std::size_t setting_row(Setting setting) {
  return layout(TableKind::settings).heading_row + 1 + static_cast<std::size_t>(setting);
}
std::string setting_name(Setting setting) {
  return fmt::format("setting_{}", settings_catalogue()[static_cast<std::size_t>(setting)].name);
}
std::string setting_cell(Setting setting) {
  return fixed_cell(spec(TableKind::settings).sheet, column_of(Field::setting_value), setting_row(setting));
}

} // namespace wetspell::workbook
