// The season as careful people would have written it down: five rounds of visits and the counts of life.
#pragma once

#include "demo/programme.hpp"
#include "demo/sheet_rows.hpp"

namespace wetspell::demo {

/// Settings, pools, people, visits and life counts without a mistake in them.
SeasonRows write_season(const Programme& programme, Chance& chance);

/// A visit on a day between the rounds, by whoever usually goes there, alone.
SheetRow write_visit_between(const Programme& programme, const TruePool& pool, int day, Chance& chance);

/// How a person writes a depth, a length or a temperature (SI) in a sheet that expects inches, feet and °F.
Cell written_depth(double metres, Hand hand);
Cell written_length(double metres, Hand hand);
Cell written_temperature(double celsius, Hand hand);

/// Days since 1899-12-30 of a day of the season's year.
double serial_of(int day_of_year);

} // namespace wetspell::demo
