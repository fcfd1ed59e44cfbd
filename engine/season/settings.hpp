// The settings of a season: declared once, shown on the workbook's start page.
#pragma once

#include "quantity/read.hpp"
#include "season/choice.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace wetspell {

enum class Setting : std::uint8_t {
  programme,
  season_year,
  first_day,
  last_day,
  unit_system,
  temperature_unit,
  depth_unit,
  length_unit,
  area_unit,
  basin_shape,
  date_order,
  group_by,
  today,
};

inline constexpr std::size_t settings_count = static_cast<std::size_t>(Setting::today) + 1;

struct SettingSpec {
  Setting setting;
  std::string_view name;          ///< "temperature_unit"
  std::string_view label;         ///< "Temperatures in"
  std::string_view default_value; ///< as it stands in a fresh US customary workbook
  std::string_view choices;       ///< allowed words separated by "|"; empty: free
  std::string_view help;
};
std::span<const SettingSpec> settings_catalogue();

struct Settings {
  std::string programme;
  std::optional<int> season_year;
  std::optional<double> first_day, last_day; ///< days since 1899-12-30
  UnitSystem units = UnitSystem::us_customary;
  Unit temperature = Unit::fahrenheit;
  Unit depth = Unit::inch;
  Unit length = Unit::foot;
  Unit area = Unit::square_foot;
  bool says_units = false; ///< a person wrote one of the units above, or the system
  double basin_shape = 2;  ///< shape of a basin where too little was measured: measure/basin.hpp
  DateOrder date_order = DateOrder::unknown;
  std::string group_by = "Owner"; ///< headings of the pools' columns by which figures are told apart
  double today = 0;               ///< days since 1899-12-30; dates after it lie in the future

  /// The unit in which a bare number of this kind is read and results are printed.
  [[nodiscard]] Unit unit_of(Kind kind) const;
  /// Takes the units of a system.
  void use(UnitSystem system);
};

} // namespace wetspell
