// What the drop-downs offer, and the settings by which the readings of a handout are understood.
#include "formula.hpp"
#include "handout_plan.hpp"
#include "record_sheet.hpp"

#include "quantity/unit.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell::workbook::handout {
namespace {

/// A setting by its label, so that whoever reads the handout alone understands its bare numbers.
std::vector<std::pair<Setting, Cell>> settings_of(const Season& season) {
  const Settings& s = season.settings;
  const auto text = [](std::string_view words) { return Cell::of_text(std::string(words)); };
  std::vector<std::pair<Setting, Cell>> all{
      {Setting::programme, text(s.programme)},
      {Setting::season_year, s.season_year ? Cell::of_number(*s.season_year) : Cell{}},
      {Setting::unit_system, text(unit_system_words().words[static_cast<std::size_t>(s.units)].label)},
      {Setting::temperature_unit, text(symbol(s.temperature))},
      {Setting::depth_unit, text(symbol(s.depth))},
      {Setting::length_unit, text(symbol(s.length))},
      {Setting::area_unit, text(symbol(s.area))}};
  if (s.date_order != DateOrder::unknown)
    all.emplace_back(Setting::date_order,
                     text(s.date_order == DateOrder::month_first ? "month first" : "day first"));
  return all;
}

constexpr std::array<std::string_view, 4> list_titles{"People", "Animals", "Depths", "How full"};

} // namespace

Sheet words_sheet(const HandoutPlan& plan) {
  Sheet sheet;
  sheet.name = words_name;
  sheet.tab_colour = colour::quiet_ink;
  sheet.page = PageLook::wide_table;
  sheet.columns = {{5.4}, {4.6}, {1.0}};
  SheetRow bands{
      0.6,
      {text_cell(Look::band_derived, "TO READ · This season"), text_cell(Look::band_derived, {}), {}},
      1};
  SheetRow heads{
      0.9, {text_cell(Look::head_derived, "Setting"), text_cell(Look::head_derived, "Value"), {}}, 1};
  const auto settings = settings_of(plan.season);
  std::size_t longest = settings.size();
  for (std::size_t at = 0; at < listed_fields().size(); ++at) {
    sheet.columns.push_back({at == 1 ? 5.0 : 4.4});
    bands.cells.push_back(
        text_cell(Look::band_derived, at == 0 ? "TO READ · Offered in the drop-downs" : ""));
    heads.cells.push_back(text_cell(Look::head_derived, std::string(list_titles[at])));
    longest = std::max(longest, offered_words(plan, listed_fields()[at]).size());
  }
  SheetRow title{1.3,
                 {text_cell(Look::title, sheet.name),
                  text_cell(Look::subtitle, "By these the other sheets "
                                            "are read; please leave them as they are.")},
                 1};
  sheet.rows = {title, bands, heads};
  for (std::size_t row = 0; row < longest; ++row) {
    SheetRow line;
    const bool setting = row < settings.size();
    const std::string_view label =
        setting ? settings_catalogue()[static_cast<std::size_t>(settings[row].first)].label
                : std::string_view{};
    line.cells.push_back(text_cell(setting ? Look::fixed_text : Look::page, std::string(label)));
    SheetCell value = text_cell(setting ? Look::fixed_text : Look::page, {});
    if (setting)
      put(value, settings[row].second, value.look);
    line.cells.push_back(std::move(value));
    line.cells.emplace_back();
    for (const Field field : listed_fields()) {
      const auto offered = offered_words(plan, field);
      line.cells.push_back(row < offered.size() ? text_cell(Look::fixed_text, offered[row]) : SheetCell{});
    }
    sheet.rows.push_back(std::move(line));
  }
  sheet.frozen_rows = first_row;
  sheet.print = Range{0, 0, sheet.columns.size() - 1, sheet.rows.size() - 1};
  return sheet;
}

} // namespace wetspell::workbook::handout
