// The points of a walk from a file: a GPX track, or a plain list of coordinates.
#pragma once

#include "base/result.hpp"
#include "measure/walk.hpp"

#include <string_view>
#include <vector>

namespace wetspell {

/// GPX 1.0 or 1.1: the points of its one track (segments joined in order), or of its one route when there is
/// no track. Refuses what is no XML or no GPX, more than one track, and points whose degrees cannot be read
/// (bad_argument); no point at all (not_enough).
Result<std::vector<Position>> read_gpx(std::string_view text);

/// "latitude, longitude" a line; a comma, semicolon, tab or blanks between. Blank lines, lines that begin
/// with # and a first line of headings are passed over. Refuses other lines, with their number
/// (bad_argument).
Result<std::vector<Position>> read_positions(std::string_view text);

/// Either, by what the text begins with.
Result<std::vector<Position>> read_walk(std::string_view text);

} // namespace wetspell
