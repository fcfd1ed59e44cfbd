// On which days a species was looked for, and on which of them its egg masses or larvae were found.
#pragma once

#include "estimate/history.hpp"
#include "estimate/occupancy.hpp"

#include <cstdint>
#include <vector>

namespace wetspell {

/// Species with a row of egg masses or larvae somewhere, found or not: indices into Season::species_names.
std::vector<std::int32_t> species_looked_for(const SeasonHistory& history);

/// One entry a pool. A look is a day on which any animals were recorded in the pool (a count of 0 too),
/// unless the visit of the day says that it was dry, within the days of the year at which the table of
/// species expects the species' egg masses or larvae (any day where it says nothing). A day with egg masses
/// or larvae of the species is a look whenever it was. A day on which nothing was recorded may have been
/// without a look at animals, and is none.
std::vector<Looks> breeding_looks(const SeasonHistory& history, std::int32_t species);

} // namespace wetspell
