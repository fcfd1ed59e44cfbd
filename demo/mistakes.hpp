// Mistakes as people make them, of every family, each put into a season in one or two cells.
#pragma once

#include "demo/programme.hpp"
#include "demo/sheet_rows.hpp"

namespace wetspell::demo {

/// Spoils cells of the season, one mistake a pool as far as pools go, and notes each in `season.spoiled`.
void spoil(SeasonRows& season, const Programme& programme, Chance& chance);

} // namespace wetspell::demo
