// What is conspicuous about a visit's readings: looked at once, so that rules about rare slips cost next to
// nothing on the rows where nothing is.
#pragma once

#include "season/season.hpp"

namespace wetspell {

/// How a measured depth stands to those of the pool's visits before and after it.
enum class OutOfLine : std::uint8_t { no, above, below };

struct Signs {
  bool temperature : 1 = false;    ///< one of the three readings or the mean as noted can be used as a number
  bool not_a_reading : 1 = false;  ///< one of them is unreadable, a range or open-ended
  bool unusual_water : 1 = false;  ///< one of them is outside the doubtful limits
  bool not_water : 1 = false;      ///< one of them is outside the limits of liquid water
  bool readings_apart : 1 = false; ///< the readings lie further apart than their limit
  bool depth_suspect : 1 = false;  ///< deeper than usual for the pool, or outside the class that was judged
  OutOfLine depth_line : 2 = OutOfLine::no;
};

/// All but `depth_line`, which needs the visits before and after.
Signs signs_of_readings(const Season& season, const Visit& visit);

/// The greatest depth that is still usual for the visit's pool: its deepest ever with a tenth and the stick's
/// slack, or the limit for pools that nobody knows.
double usual_depth(const Season& season, const Visit& visit);

/// Whether a depth (m) lies in this class of the season, or within the stick's slack of it.
bool agrees_with_class(const Season& season, double si, std::size_t row);

} // namespace wetspell
