// Old sheets of our own invention: the same invented visits, written in many fashions.
#pragma once

#include "audit/audit.hpp"
#include "season/field.hpp"

#include <fmt/format.h>

#include <map>
#include <string>
#include <vector>

namespace wetspell::testing {

/// Where the units stand.
enum class UnitsAt { brackets, comma, behind, row, cells, nowhere };

enum class Dates {
  cells,
  iso,
  day_first,
  month_first,
  two_digit_years,
  month_words,
  dots,
  serials,
  serials_1904,
  joined,
  parts,
  without_year
};

/// Where a sheet with pools and days at its sides names what was read.
enum class Named { corner, title, sheet };

/// How one old sheet is written.
struct Style {
  std::string name;
  std::vector<std::pair<Field, std::string>> columns; ///< in this order
  UnitsAt units = UnitsAt::brackets;
  bool metric = true;
  Dates dates = Dates::cells;
  Layout layout = Layout::row_a_visit;
  std::vector<std::string> titles;     ///< rows above the headings
  std::vector<std::string> foreign;    ///< headings of columns that are not ours
  std::map<Field, std::string> groups; ///< an upper row of headings: begins at this field
  bool sums = false, dividers = false, repeated_headings = false, footnote = false;
  bool pool_once = false, ditto = false, numbers_as_text = false, notes_in_numbers = false;

  std::string ditto_mark = "\"";
  bool days_as_sections = false;  ///< no date column: lines between the rows name the day
  bool pools_as_sections = false; ///< no pool column: lines between the rows name it
  bool sheet_a_pool = false;      ///< no pool column: one sheet a pool, called as it is
  std::size_t shift = 0;          ///< blank columns on the left
  Named named = Named::corner;    ///< of a cell a visit: its columns are pool, date and the reading
  bool days_down = false;         ///< of a cell a visit: pools stand across
};

struct TrueVisit {
  std::string pool;
  double date = 0;
  std::map<Field, double> readings; ///< in the sheet's own unit, the unit of unit_of()
  std::string water;
  std::string person;
};

/// The unit in which the sheet's numbers are, said or not.
inline Unit unit_of(Field field, bool metric) {
  switch (field) {
  case Field::visit_temperature_1:
  case Field::visit_temperature_2:
  case Field::visit_temperature_3:
  case Field::visit_temperature_mean:
    return metric ? Unit::celsius : Unit::fahrenheit;
  case Field::visit_depth:
    return metric ? Unit::centimetre : Unit::inch;
  case Field::visit_length:
  case Field::visit_width:
    return metric ? Unit::metre : Unit::foot;
  case Field::visit_fill:
    return Unit::percent;
  default:
    return Unit::none;
  }
}

/// 24 visits to 6 pools in the spring of 2019; invented.
inline std::vector<TrueVisit> true_visits(bool metric) {
  constexpr double first = 43544; // 2019-03-20
  std::vector<TrueVisit> visits;
  for (int pool = 1; pool <= 6; ++pool)
    for (int visit = 0; visit < 4; ++visit) {
      TrueVisit v;
      v.pool = fmt::format("B{:02}", pool);
      v.date = first + visit * 14 + pool;
      v.person = pool % 2 == 0 ? "RW" : "TH";
      v.water = "standing water";
      const double warm = 4.5 + 3 * visit + 0.5 * pool;
      const double t = metric ? warm : 40 + 4 * visit + pool;
      const double depth = metric ? 90 - 12 * visit - 3 * pool : 36 - 4 * visit - pool;
      const double length = metric ? 20 + pool - visit : 66 + 3 * pool - 3 * visit;
      v.readings = {{Field::visit_temperature_1, t},       {Field::visit_temperature_2, t - 0.5},
                    {Field::visit_temperature_3, t + 0.5}, {Field::visit_temperature_mean, t},
                    {Field::visit_depth, depth},           {Field::visit_fill, 95.0 - 10 * visit},
                    {Field::visit_length, length},         {Field::visit_width, length / 2}};
      visits.push_back(std::move(v));
    }
  return visits;
}

} // namespace wetspell::testing
