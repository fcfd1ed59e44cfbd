#include "check/season_span.hpp"

#include "quantity/calendar.hpp"
#include "quantity/read.hpp"

#include <cmath>

namespace wetspell {

std::optional<SeasonSpan> season_span(const Season& season) {
  const Settings& set = season.settings;
  const double margin = season.limits[Limit::season_margin];
  if (set.first_day && set.last_day && *set.first_day <= *set.last_day)
    return SeasonSpan{*set.first_day, *set.last_day, margin};
  if (!set.season_year)
    return std::nullopt;
  const auto first = serial_of({*set.season_year, 1, 1}), last = serial_of({*set.season_year, 12, 31});
  if (!first || !last)
    return std::nullopt;
  return SeasonSpan{set.first_day.value_or(*first), set.last_day.value_or(*last), 0};
}

std::optional<TwoReadings> two_readings(const Season& season, Field field, std::uint32_t row,
                                        const Quantity& date) {
  if (date.status != Status::bad)
    return std::nullopt;
  const Cell& cell = season.cell(field, row);
  const Quantity month_first = read(cell, {Kind::date, Unit::none, DateOrder::month_first});
  const Quantity day_first = read(cell, {Kind::date, Unit::none, DateOrder::day_first});
  if (!month_first.has_value() || !day_first.has_value() || month_first.si == day_first.si)
    return std::nullopt;
  return TwoReadings{month_first.si, day_first.si};
}

bool fits_season(const Season& season, const SeasonSpan& span, double day) {
  return span.near(day) && std::floor(day) <= season.settings.today;
}

std::optional<double> in_season_year(const Season& season, const SeasonSpan& span, double day) {
  const auto typed = date_of(day), first = date_of(span.first), last = date_of(span.last);
  if (!typed || !first || !last)
    return std::nullopt;
  for (int year = first->year; year <= last->year && year <= first->year + 1; ++year) { // at most a winter
    const auto moved = serial_of({year, typed->month, typed->day});
    if (year != typed->year && moved && fits_season(season, span, *moved))
      return moved;
  }
  return std::nullopt;
}

} // namespace wetspell
