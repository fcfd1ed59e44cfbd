#include "season/settings.hpp"

#include <array>

namespace wetspell {

namespace {

// The unit lines stand at "as the system", so that one choice turns the whole workbook to metric.
constexpr std::array<SettingSpec, settings_count> catalogue{{
    {Setting::programme, "programme", "Programme", "", "",
     "The name of your programme, as it stands on prints and in files."},
    {Setting::season_year, "season_year", "Season (year)", "", "",
     "The year of this season, four digits. Dates of another year are then told apart. Example: 2026"},
    {Setting::first_day, "first_day", "First day of the season", "", "",
     "The first day on which visits are planned. Example: 2026-03-15"},
    {Setting::last_day, "last_day", "Last day of the season", "", "",
     "The last day on which visits are planned. Example: 2026-08-31"},
    {Setting::unit_system, "unit_system", "Unit system", "US customary", "US customary|metric",
     "The units of all numbers that stand without one: °F, in, ft, sq ft; or °C, cm, m, m²."},
    {Setting::temperature_unit, "temperature_unit", "Temperatures in", "as the system", "as the system|°F|°C",
     "The unit of temperatures that stand without one."},
    {Setting::depth_unit, "depth_unit", "Depths in", "as the system", "as the system|in|ft|cm|m",
     "The unit of depths that stand without one."},
    {Setting::length_unit, "length_unit", "Lengths in", "as the system", "as the system|ft|yd|m",
     "The unit of lengths and widths that stand without one."},
    {Setting::area_unit, "area_unit", "Areas in", "as the system", "as the system|sq ft|acre|m²|ha",
     "The unit in which areas are shown."},
    {Setting::basin_shape, "basin_shape", "Shape of basins", "2", "",
     "How basins widen upwards, for volumes of pools too little measured to tell: 1 a cone, 2 a bowl "
     "(judgement), larger a tub. Published: 0.91, 1.72, 3.3."},
    {Setting::date_order, "date_order", "A date like 3/4/2026 is", "refused", "refused|month first|day first",
     "Refused: it may be 4 March or 3 April, and the check asks. Otherwise which of the two comes first."},
    {Setting::group_by, "group_by", "Pools grouped by", "Owner", "",
     "Headings of columns on the sheet of pools, with commas between: the programme's figures are given for "
     "each of "
     "their contents too. Blank: for all pools only. Example: Owner, Locality"},
    {Setting::today, "today", "Check as of", "", "",
     "Blank: the day on which the check runs. Otherwise a day; visits after it lie in the future. Example: "
     "2026-09-15"},
}};

} // namespace

std::span<const SettingSpec> settings_catalogue() {
  return catalogue;
}

void Settings::use(UnitSystem system) {
  const bool metric = system == UnitSystem::metric;
  units = system;
  temperature = metric ? Unit::celsius : Unit::fahrenheit;
  depth = metric ? Unit::centimetre : Unit::inch;
  length = metric ? Unit::metre : Unit::foot;
  area = metric ? Unit::square_metre : Unit::square_foot;
}

Unit Settings::unit_of(Kind kind) const {
  switch (kind) {
  case Kind::temperature:
    return temperature;
  case Kind::depth:
    return depth;
  case Kind::length:
    return length;
  case Kind::area:
    return area;
  case Kind::volume:
    return units == UnitSystem::us_customary ? Unit::cubic_foot : Unit::cubic_metre;
  case Kind::percent:
    return Unit::percent;
  case Kind::count:
  case Kind::date:
  case Kind::time:
  case Kind::truth:
    break;
  }
  return Unit::none;
}

} // namespace wetspell
