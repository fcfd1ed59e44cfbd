// A pool's depth over the season as a line of signs, small enough for a cell: bars of eight heights on one
// time axis and one scale for all pools, with signs of their own for a dry pool and for no visit.
#pragma once

#include "estimate/history.hpp"

#include <cstddef>
#include <string>

namespace wetspell {

/// The axis and the scale that the pictures of one season share.
struct DepthScale {
  double first_day = 0;      ///< of the first sign; days since 1899-12-30
  std::size_t sign_days = 7; ///< a sign stands for so many days
  std::size_t signs = 0;     ///< none: nothing to show
  double deepest = 0;        ///< m: the depth of a full bar
};

/// From the season's first to its last day as the settings give them, and wider where visits lie outside; a
/// week a sign, or as many weeks as it takes to stay within forty signs. A full bar is the deepest reading
/// that counts.
DepthScale depth_scale(const SeasonHistory& history);

/// One sign a stretch of days: a bar for a depth (the next full eighth of the deepest), U+25CB for a dry
/// pool, ~ for water of unknown depth, ? for a visit that says nothing of either, U+00B7 without a visit. Of
/// several visits in a stretch the last one that says something counts.
std::string depth_picture(const PoolHistory& pool, const DepthScale& scale);

/// What the signs mean, with the scale's numbers, for the head of the column.
std::string explained(const DepthScale& scale, const Settings& settings);

} // namespace wetspell
