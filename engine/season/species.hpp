// The animals that a season may expect where its workbook has no table of its own.
#pragma once

#include "season/choice.hpp"

#include <span>
#include <string>
#include <string_view>

namespace wetspell {

/// One animal in one form. Days are month * 100 + day; 0: open. A first day after the last one means a time
/// over the turn of the year.
struct SpeciesSpec {
  std::string_view name;
  SeenAs seen_as;
  int first_day;
  int last_day;
  double most; ///< 0: no limit of its own
};

/// Animals that breed or live in woodland pools of eastern North America, by their trade names, with wide
/// windows. Common practice, from memory, no source: a programme sets its own in the workbook.
std::span<const SpeciesSpec> species_catalogue();

/// "March 1": a day of the year as the workbook shows it; empty for 0.
std::string day_of_year_text(int day);
/// Reads "March 1", "1 Mar", "03-01", "3/1" (month first) and 301; -1 for anything else.
int day_of_year_from(std::string_view text);
/// Whether a day (since 1899-12-30) lies in a time of year from its first to its last day, month * 100 + day;
/// 0 is open.
bool within_days(double serial, int first_day, int last_day);

} // namespace wetspell
