// When the season is, as far as its settings say.
#pragma once

#include "season/season.hpp"

#include <optional>

namespace wetspell {

struct SeasonSpan {
  double first = 0; ///< days since 1899-12-30
  double last = 0;
  double margin = 0; ///< days before and after in which a visit is still usual

  [[nodiscard]] bool near(double day) const { return day >= first - margin && day < last + margin + 1; }
};

/// From the first and last day of the settings, or the season's year; nothing when neither is set.
std::optional<SeasonSpan> season_span(const Season& season);

/// Both readings of a date that can be taken in two ways.
struct TwoReadings {
  double month_first = 0, day_first = 0; ///< days since 1899-12-30
};
std::optional<TwoReadings> two_readings(const Season& season, Field field, std::uint32_t row,
                                        const Quantity& date);

/// Whether somebody can have been out on this day: near the season and not after today.
bool fits_season(const Season& season, const SeasonSpan& span, double day);

/// The same day and month in a year of the season, if only the year keeps the date from fitting.
std::optional<double> in_season_year(const Season& season, const SeasonSpan& span, double day);

} // namespace wetspell
