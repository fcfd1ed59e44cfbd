// The invented programme: its pools as they really are, and the people who visit them.
#pragma once

#include "demo/chance.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace wetspell::demo {

inline constexpr int season_year = 2026;
inline constexpr std::size_t pool_count = 40;
inline constexpr std::size_t person_count = 25;

/// A pool as it is, whatever people write about it.
struct TruePool {
  std::string code, name, locality;
  double longest = 0, widest = 0, deepest = 0; ///< metres, at the fullest
  double peak = 0;                             ///< share of the greatest depth that this spring reached
  double fall = 0;                             ///< metres a day after the peak
  double warmth = 0;                           ///< °C above or below what is usual
  bool isolated = true;
  bool dry_inlet = false; ///< an isolated pool with a channel that never flows in the season
  double frog_masses = 0, salamander_masses = 0;
  std::size_t visitor = 0; ///< index of the person who usually goes
};

/// How somebody writes numbers.
enum class Hand { bare, with_marks, metric };

struct TruePerson {
  std::string code, name;
  Hand hand = Hand::bare;
  bool steps = false; ///< counts every step
  bool paces = false; ///< has calibration runs and paces lengths
  double pace = 0;    ///< metres for two steps
  double course = 0;  ///< metres
};

struct Programme {
  std::vector<TruePool> pools;
  std::vector<TruePerson> people;
};

Programme invent_programme(Chance& chance);

/// The day of the year (from 1) of a month and day in the season.
int day_of_year(int month, int day);

/// Depth in metres at the deepest point on a day of the year; 0 once the pool has dried.
double depth_on(const TruePool& pool, double day);
/// Water temperature in °C on a day of the year.
double warmth_on(const TruePool& pool, double day);

} // namespace wetspell::demo
