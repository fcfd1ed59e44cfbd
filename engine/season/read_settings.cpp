#include "season/locate.hpp"
#include "season/read_parts.hpp"
#include "season/species.hpp"
#include "season/words.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

#include <chrono>
#include <cmath>
#include <vector>

namespace wetspell {

namespace {

constexpr std::size_t rows_searched = 200; // settings stand near the top of their sheet

/// A setting's value cell with its place.
struct Given {
  const Table* table = nullptr;
  std::size_t row = 0;
  std::size_t column = 0;
  [[nodiscard]] const Cell& cell() const { return table->at(row, column); }
};
using GivenSettings = std::array<Given, settings_count>;

TextMap setting_words() {
  TextMap words;
  std::string buffer;
  std::int32_t position = 0;
  for (const SettingSpec& setting : settings_catalogue()) {
    words.emplace(plain_word(setting.label, buffer), position);
    words.emplace(plain_word(setting.name, buffer), position);
    ++position;
  }
  return words;
}

/// Position of the setting with this label; the catalogue's size when there is none. Asked of every text near
/// the top of every sheet, and again by every row of a sheet that is checked as it is typed.
std::size_t setting_labelled(std::string_view text) {
  static const TextMap words = setting_words();
  static thread_local std::string buffer;
  const auto found = text.size() > 60 ? words.end() : words.find(plain_word(text, buffer));
  return found == words.end() ? settings_catalogue().size() : static_cast<std::size_t>(found->second);
}

void take(GivenSettings& given, const Table& table, std::size_t row, std::size_t label, std::size_t value) {
  const Cell& cell = table.at(row, label);
  if (cell.kind() != CellKind::text)
    return;
  const std::size_t setting = setting_labelled(cell.text());
  if (setting < given.size() && given[setting].table == nullptr)
    given[setting] = {&table, row, value};
}

/// Labels that stand in a column, with their values in the next one.
void take_loose(GivenSettings& given, const Table& table) {
  const std::size_t rows = std::min(table.rows(), rows_searched);
  for (std::size_t column = 0; column + 1 < table.columns(); ++column) {
    std::vector<std::size_t> labels;
    for (std::size_t row = 0; row < rows; ++row)
      if (const Cell& cell = table.at(row, column);
          cell.kind() == CellKind::text && setting_labelled(cell.text()) < given.size())
        labels.push_back(row);
    if (labels.size() < 2) // one such word may be anything
      continue;
    for (std::size_t row : labels)
      take(given, table, row, column, column + 1);
  }
}

GivenSettings find_settings(const Season& season) {
  GivenSettings given;
  const Located& at = season.where(TableKind::settings);
  if (at.found()) {
    const auto label = at.columns[position(Field::setting_label)];
    const auto value = at.columns[position(Field::setting_value)];
    if (label >= 0 && value >= 0)
      for (std::size_t row = at.first_row; row < at.end_row; ++row)
        take(given, *at.table, row, static_cast<std::size_t>(label), static_cast<std::size_t>(value));
  }
  for (const auto& sheet : season.sheets)
    take_loose(given, *sheet);
  return given;
}

class SettingsReader {
public:
  SettingsReader(Season& season, const GivenSettings& given) : season_(season), given_(given) {}

  void read(double today) {
    Settings& s = season_.settings;
    if (typed(Setting::programme))
      s.programme = to_text(cell(Setting::programme));
    read_system();
    read_unit(Setting::temperature_unit, Kind::temperature, s.temperature);
    read_unit(Setting::depth_unit, Kind::depth, s.depth);
    read_unit(Setting::length_unit, Kind::length, s.length);
    read_unit(Setting::area_unit, Kind::area, s.area);
    if (at(Setting::group_by).table != nullptr) // a blank asks for no groups
      s.group_by = to_text(cell(Setting::group_by));
    read_shape();
    read_order();
    read_year();
    s.first_day = day(Setting::first_day);
    s.last_day = day(Setting::last_day);
    s.today = day(Setting::today).value_or(today);
  }

private:
  [[nodiscard]] const Given& at(Setting setting) const { return given_[static_cast<std::size_t>(setting)]; }
  [[nodiscard]] bool typed(Setting setting) const {
    return at(setting).table != nullptr && holds_something(at(setting).cell());
  }
  [[nodiscard]] const Cell& cell(Setting setting) const { return at(setting).cell(); }

  void remark(Setting setting, std::string_view instead) {
    const Given& g = at(setting);
    season_.remarks.push_back(fmt::format(
        "{}: \"{}\" cannot be read as \"{}\"; {}.", to_text(g.table->place(g.row, g.column)),
        to_text(g.cell()), settings_catalogue()[static_cast<std::size_t>(setting)].label, instead));
  }

  void read_system() {
    if (!typed(Setting::unit_system))
      return;
    const Choice choice = choice_from(to_text(cell(Setting::unit_system)), unit_system_words());
    if (!choice.chosen()) {
      remark(Setting::unit_system, "US customary is taken");
      return;
    }
    season_.settings.use(static_cast<UnitSystem>(choice.index));
    season_.settings.says_units = true;
  }

  /// `unit` is that of the system; it stays where the line says no other.
  void read_unit(Setting setting, Kind kind, Unit& unit) {
    if (!typed(setting))
      return;
    const std::string text = to_text(cell(setting));
    std::string buffer;
    if (plain_word(text, buffer) == "asthesystem")
      return;
    const auto named = unit_named(text);
    if (named && fits(*named, kind) && *named != Unit::pace && *named != Unit::step) {
      unit = *named;
      season_.settings.says_units = true;
    } else {
      remark(setting, fmt::format("{} is taken", symbol(unit)));
    }
  }

  /// The number in a cell, as a number or as typed; 0 where there is none.
  static double number(const Cell& given, const ReadOptions& as) {
    if (given.kind() != CellKind::text)
      return given.number();
    const Quantity q = wetspell::read(given.text(), as);
    return q.has_value() ? q.si : 0;
  }

  void read_shape() {
    if (!typed(Setting::basin_shape))
      return;
    const Cell& given = cell(Setting::basin_shape);
    const double shape = number(given, {.kind = Kind::percent, .assume = Unit::one});
    if (given.kind() != CellKind::date && shape >= 0.25 && shape <= 20)
      season_.settings.basin_shape = shape;
    else
      remark(Setting::basin_shape, fmt::format("{} is taken", season_.settings.basin_shape));
  }

  void read_order() {
    if (!typed(Setting::date_order))
      return;
    std::string buffer;
    const std::string text = to_text(cell(Setting::date_order));
    const auto word = plain_word(text, buffer);
    if (word == "monthfirst")
      season_.settings.date_order = DateOrder::month_first;
    else if (word == "dayfirst")
      season_.settings.date_order = DateOrder::day_first;
    else if (word != "refused")
      remark(Setting::date_order, "such dates are refused");
  }

  void read_year() {
    if (!typed(Setting::season_year))
      return;
    const Cell& given = cell(Setting::season_year);
    const double year = number(given, {.kind = Kind::count});
    if (given.kind() != CellKind::date && year >= 1900 && year <= 2200 && year == std::floor(year))
      season_.settings.season_year = static_cast<int>(year);
    else
      remark(Setting::season_year, "no year is taken");
  }

  /// A date, or a day of the season's year.
  std::optional<double> day(Setting setting) {
    if (!typed(setting))
      return std::nullopt;
    const Quantity q =
        wetspell::read(cell(setting), {.kind = Kind::date, .date_order = season_.settings.date_order});
    if (q.has_value())
      return q.si;
    const int of_year = cell(setting).kind() == CellKind::text ? day_of_year_from(cell(setting).text()) : -1;
    if (of_year > 0 && season_.settings.season_year) {
      using namespace std::chrono;
      const year_month_day date{year{*season_.settings.season_year},
                                month{static_cast<unsigned>(of_year / 100)},
                                std::chrono::day{static_cast<unsigned>(of_year % 100)}};
      if (date.ok())
        return serial_of(sys_days{date});
    }
    remark(setting, "it is taken as blank");
    return std::nullopt;
  }

  Season& season_;
  const GivenSettings& given_;
};

} // namespace

bool names_setting(std::string_view text) {
  return setting_labelled(text) < settings_catalogue().size();
}

void read_settings(Season& season, double today) {
  const GivenSettings given = find_settings(season);
  SettingsReader(season, given).read(today);
}

void settle_units(Season& season) {
  for (const TableSpec& t : tables()) {
    Located& at = season.located[static_cast<std::size_t>(t.table)];
    if (!at.found())
      continue;
    const auto specs = fields(t.table);
    const Unit classes = t.table == TableKind::depth_classes  ? season.depth_classes.unit
                         : t.table == TableKind::fill_classes ? season.fill_classes.unit
                                                              : Unit::none;
    for (std::size_t i = 0; i < specs.size(); ++i) {
      if (classes != Unit::none && specs[i].type == FieldType::quantity)
        at.units[i] = classes;
      else if (specs[i].type != FieldType::quantity)
        at.units[i] = Unit::none;
      else if (at.units[i] == Unit::none || !fits(at.units[i], specs[i].kind))
        at.units[i] = season.settings.unit_of(specs[i].kind);
    }
  }
}

} // namespace wetspell
