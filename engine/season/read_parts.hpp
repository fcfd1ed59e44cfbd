// The parts of reading a season, in the order in which read_season calls them.
#pragma once

#include "season/season.hpp"

namespace wetspell {

/// Settings from a table of labels and values, or from labels with a value at their right anywhere.
void read_settings(Season& season, double today);
/// Whether a text is the name of a setting, which take a value at their right wherever they stand.
bool names_setting(std::string_view text);
/// Class tables: the workbook's where it has them, the usual ones otherwise. Needs the units of the headings.
void read_classes(Season& season);
/// Gives every located field the unit of its bare numbers: the heading's, or else the settings'.
void settle_units(Season& season);
/// Species and limits: the workbook's where it has them, the catalogue's otherwise.
void read_species(Season& season);
void read_limits(Season& season);
/// Pools, people, visits and life counts.
void read_records(Season& season);

} // namespace wetspell
