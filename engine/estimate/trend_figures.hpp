// What several seasons say together: whether a figure rises or falls over the years.
#pragma once

#include "estimate/summary.hpp"
#include "measure/kendall.hpp"
#include "measure/sen_line.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace wetspell {

/// One season among several.
struct SeasonOfYear {
  int year = 0;
  const Season* season = nullptr;
  const SeasonSummary* summary = nullptr;
};

/// What a trend compares.
enum class Comparison : std::uint8_t {
  years,  ///< one value a year with the others
  pools,  ///< each pool's values with each other, over all pools
  months, ///< the values of a month with those of the same month (and the same pool)
};
std::string_view in_words(Comparison compared);

/// One figure over the years, of one pool or of the programme.
struct Trend {
  std::string pool;          ///< its code; empty for the programme
  std::string column, group; ///< of the programme's pools, as in ProgrammeFigure
  const FigureSpec* spec = nullptr;
  std::string of; ///< as in Figure
  Comparison compared = Comparison::years;
  std::vector<Series> series; ///< x: years; y: SI; one where years are compared
  std::size_t years = 0;      ///< with a value
  std::optional<Kendall> kendall;
  std::optional<SenLine> sen; ///< change a year, SI
  std::string note;           ///< why nothing more can be said; a caution
};

/// Fewer years show no slope worth printing.
inline constexpr std::size_t fewest_years = 3;

/// Every figure with a value in three seasons or more: the programme's first, then each pool compared with
/// itself and each month with the same month, both over all pools; then pool by pool in the order of the
/// newest season its figures and its months. Pools are the same when their codes are. Words and dates of
/// visits have no trend: dates are told as days after the first of January of their year. Seasons stand in
/// any order; of two of one year the later in the list counts. Pools and months of one year are not taken as
/// independent.
std::vector<Trend> trends(std::span<const SeasonOfYear> seasons, double level = 0.95);

/// What a change of such a figure is counted in: it has no zero of the scale, and dates change by days.
Figured change_of(Figured figured);

/// "rises by 12 sq ft a year (-3 to 25; 6 years, p = 0.14): no trend shown".
std::string in_words(const Trend& trend, const Settings& settings);

/// What so few years can show at best: "with 3 years even a steady rise has p = 0.33".
std::string best_of_years(std::size_t years);

} // namespace wetspell
