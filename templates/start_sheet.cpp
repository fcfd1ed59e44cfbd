// The first sheet: what the workbook is, three steps, the state of things, settings, cautions.
#include "cautions.hpp"
#include "entry.hpp"
#include "formula.hpp"
#include "layout.hpp"
#include "record_sheet.hpp"
#include "sheets.hpp"
#include "state_formulas.hpp"
#include "table/table.hpp"

#include <fmt/format.h>

#include <array>
#include <stdexcept>
#include <utility>

namespace wetspell::workbook {
namespace {

constexpr std::size_t left = 1, left_end = 4, right = caution_column, last = right; // B to E, and G

struct Step {
  std::string_view title, text;
};
constexpr std::array<Step, 3> steps{{
    {"1  Set up", "Choose the settings below. List the pools on the sheet Pools and the people on the sheet "
                  "People; whoever measures by paces walks a taped course there once."},
    {"2  Type",
     "On the sheet Visits, one row a visit, in the units you used: 25, 2' 1\", 64 cm and 12 paces are "
     "all understood. A blank means: not read. Animals and eggs go on the sheet Life."},
    {"3  Ask", "The last column of Visits says at once what looks doubtful. Then choose Wetspell, Check the "
               "season: the sheet Findings lists what to ask whom, while they still remember."},
}};

SheetRow blank_row(double height) {
  SheetRow row;
  row.height = height;
  row.cells.resize(last + 1);
  return row;
}

SheetRow wide_row(double height, SheetCell cell) {
  SheetRow row = blank_row(height);
  cell.across = last - left + 1;
  row.cells[left] = std::move(cell);
  return row;
}

void cover_left(SheetRow& row, Look look) {
  for (std::size_t column = left; column <= left_end; ++column)
    row.cells[column].look = look;
}

void add_steps_and_sheets(Sheet& sheet) {
  SheetRow heads = blank_row(0.9);
  cover_left(heads, Look::section);
  heads.cells[left] = text_cell(Look::section, "Three steps");
  heads.cells[right] = text_cell(Look::section, "The sheets");
  sheet.rows.push_back(std::move(heads));

  std::vector<SheetCell> links;
  std::string_view named;
  for (const TableSpec& table : tables()) {
    if (table.table == TableKind::settings || table.sheet == named)
      continue; // this sheet; a further table of a sheet that is named already
    named = table.sheet;
    SheetCell link = text_cell(Look::link, std::string(table.sheet));
    link.link = fmt::format("#{}", table.sheet);
    link.after_link = fmt::format(" · {}", table.help);
    links.push_back(std::move(link));
  }
  for (std::size_t at = 0; at < links.size(); ++at) {
    SheetRow row = blank_row(0.66);
    const std::size_t step = at / 2;
    if (step < steps.size() && at % 2 == 0) {
      row.cells[left] = text_cell(Look::step, std::string(steps[step].title));
      row.cells[left].down = 2;
      row.cells[left + 1] = text_cell(Look::step_text, std::string(steps[step].text));
      row.cells[left + 1].across = left_end - left;
      row.cells[left + 1].down = 2;
    } else if (step < steps.size()) {
      cover_left(row, Look::step_text);
    } else if (at % 2 == 1) {
      row.cells[left] = text_cell(Look::legend_label, "Cells look like this:");
      row.cells[left + 1] = text_cell(Look::typed_text, "you type");
      row.cells[left + 2] = text_cell(Look::derived_text, "worked out");
      row.cells[left + 3] = text_cell(Look::doubtful, "look again: what is doubtful, in words");
    }
    row.cells[right] = std::move(links[at]);
    sheet.rows.push_back(std::move(row));
  }
}

std::string in_use(Setting setting) {
  const std::string value = setting_name(setting);
  const auto by_system = [&](std::string_view customary, std::string_view metric) {
    return fmt::format(
        "IF(OR({0}=\"\";{0}={1});IF(setting_unit_system={2};{3};{4});{0})", value,
        text_literal(settings_catalogue()[static_cast<std::size_t>(setting)].default_value),
        text_literal(unit_system_words().words[static_cast<std::size_t>(UnitSystem::metric)].label),
        text_literal(metric), text_literal(customary));
  };
  switch (setting) {
  case Setting::temperature_unit:
    return by_system("°F", "°C");
  case Setting::depth_unit:
    return by_system("in", "cm");
  case Setting::length_unit:
    return by_system("ft", "m");
  case Setting::area_unit:
    return by_system("sq ft", "m²");
  case Setting::today:
    return fmt::format("IF({0}=\"\";TODAY();{0})", value);
  default:
    return {};
  }
}

Look value_look(Setting setting) {
  const bool day = setting == Setting::first_day || setting == Setting::last_day || setting == Setting::today;
  return day ? Look::setting_date : Look::typed_text;
}

void add_setting(SheetRow& row, const SettingSpec& setting, const Filling& filling) {
  row.cells[left] = text_cell(Look::setting_label, std::string(setting.label));
  SheetCell& value = row.cells[column_of(Field::setting_value)];
  value.look = value_look(setting.setting);
  value.entry = entry_name(setting.setting);
  put(value, filling.setting(setting.setting), value.look);
  row.cells[in_use_column] = formula_cell(
      setting.setting == Setting::today ? Look::in_use_date : Look::in_use, in_use(setting.setting));
  row.cells[column_of(Field::setting_help)] = text_cell(Look::setting_help, std::string(setting.help));
}

void add_settings_and_cautions(Sheet& sheet, const Filling& filling) {
  sheet.rows.push_back(blank_row(0.3));
  SheetRow heads = blank_row(0.9);
  cover_left(heads, Look::section);
  heads.cells[left] = text_cell(Look::section, "Settings of the season");
  heads.cells[right] = text_cell(Look::caution_head, "Before you go out");
  sheet.rows.push_back(std::move(heads));

  if (sheet.rows.size() != layout(TableKind::settings).heading_row)
    throw std::logic_error("the settings do not stand where formulas look for them");
  SheetRow headings = blank_row(1.0);
  for (const FieldSpec& field : fields(TableKind::settings))
    headings.cells[column_of(field.field)] = heading_cell(field);
  headings.cells[in_use_column] = text_cell(heading_look(Part::worked_out), "In use");
  headings.cells[right] = formula_cell(Look::caution, wading_caution());
  sheet.rows.push_back(std::move(headings));

  std::size_t next = 0, covered = 0;
  for (const SettingSpec& setting : settings_catalogue()) {
    SheetRow row = blank_row(1.05);
    add_setting(row, setting, filling);
    if (covered > 0) {
      --covered;
      row.cells[right].look = Look::caution;
    } else if (next < cautions.size()) {
      row.cells[right] = text_cell(Look::caution, std::string(cautions[next].text));
      row.cells[right].down = cautions[next].down;
      covered = cautions[next].down - 1;
      ++next;
    } else if (setting.setting == Setting::date_order) {
      row.cells[right] = text_cell(Look::small_print, made_for());
    } else if (setting.setting == Setting::today) {
      row.cells[right] = formula_cell(Look::version_here, version_here());
    }
    sheet.rows.push_back(std::move(row));
  }
}

} // namespace

Sheet start_sheet(const Filling& filling) {
  Sheet sheet;
  sheet.name = spec(TableKind::settings).sheet;
  sheet.page = layout(TableKind::settings).page;
  sheet.tab_colour = layout(TableKind::settings).tab_colour;
  sheet.columns = {{0.6}, {layout(Field::setting_label).width}, {layout(Field::setting_value).width},
                   {2.3}, {layout(Field::setting_help).width},  {0.5},
                   {11.4}};
  sheet.rows.push_back(wide_row(1.3, text_cell(Look::title, "Season workbook for seasonal pools")));
  sheet.rows.push_back(wide_row(0.8, formula_cell(Look::subtitle, whose_season())));
  sheet.rows.push_back(wide_row(1.0, formula_cell(Look::banner, extension_state())));
  sheet.rows.push_back(wide_row(1.0, formula_cell(Look::banner, season_state())));
  sheet.rows.push_back(blank_row(0.3));
  add_steps_and_sheets(sheet);
  add_settings_and_cautions(sheet, filling);
  const std::string state = fmt::format("{}.{}{}", sheet.name, column_letters(left), extension_row + 1);
  sheet.look_rules = {
      {state,
       state,
       {{is_good_news(here(left, extension_row)), Look::banner_good}, {"TRUE()", Look::banner_bad}}}};
  sheet.print = Range{0, 0, last, sheet.rows.size() - 1};
  return sheet;
}

} // namespace wetspell::workbook
