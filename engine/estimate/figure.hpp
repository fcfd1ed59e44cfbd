// A figure: one number that a season says, with its interval, the readings behind it, and a word of caution.
#pragma once

#include "season/settings.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// What a figure is counted in; decides its unit and how it is printed.
enum class Figured : std::uint8_t {
  temperature,       ///< °C
  temperature_apart, ///< a difference of temperatures, °C
  depth,             ///< m
  depth_a_day,       ///< m a day
  length,            ///< m
  area,              ///< m²
  volume,            ///< m³
  share,             ///< a fraction of one
  count,             ///< whole things
  number,            ///< a number without a unit: a slope of logarithms, a kappa
  days,
  date,  ///< days since 1899-12-30
  words, ///< a class or a state; the figure has `words` and no value
};

/// One entry of the figures' catalogue. A topic declares its own (`<topic>_figures.cpp`).
struct FigureSpec {
  std::string_view name;  ///< stable, in files and on the command line: "area-largest"
  std::string_view title; ///< heading on the sheets: "Largest area"
  Figured figured;
  std::string_view help;   ///< one or two sentences: what it says, how it is worked out, what n counts
  std::string_view source; ///< published source, or "common practice, no source"
};

/// SI inside. What has no value has a note that says why: never a number where there is too little to say
/// one.
struct Figure {
  const FigureSpec* spec = nullptr;
  std::string of; ///< of what, where one entry serves many: a species, a pair of people; else empty
  std::optional<double> value;     ///< empty: `words`, or nothing can be said and `note` says why
  std::optional<double> low, high; ///< the interval; one of them empty: open on that side
  double level = 0;                ///< of the interval: 0.95; 0: bounds that hold for certain, or no interval
  std::size_t n = 0;               ///< readings (visits, pools, counts) behind it, as the entry's help says
  std::string words;               ///< for Figured::words
  std::string note;                ///< "two visits: no estimate"; a caution
};

/// "area-largest", or "highest-count: wood frog, egg masses".
std::string full_name(const Figure& figure);
/// The same for people: "Largest area", "Highest count: wood frog, egg masses".
std::string full_title(const Figure& figure);

/// The unit a figure is shown in, in this workbook: "sq ft", "days", "in a day"; empty for words, dates and
/// plain numbers.
std::string shown_unit(Figured figured, const Settings& settings);
/// An SI value in that unit. Dates stay serial numbers; shares become per cent.
double shown(double si, Figured figured, const Settings& settings);
/// How many decimals of it field work can tell apart, for a column of such values.
int shown_decimals(Figured figured, const Settings& settings);
/// As people read it: "1,240 sq ft", "38%", "2026-06-14", "12 days"; three or so sensible digits.
std::string in_words(double si, Figured figured, const Settings& settings);
/// The figure's value with its interval and count: "1,240 sq ft (1,100 to 1,390; 4)"; its words or its note
/// when there is no value.
std::string in_words(const Figure& figure, const Settings& settings);

/// Every figure's entry, topic by topic, in the order of the sheets.
std::vector<const FigureSpec*> figure_catalogue();

} // namespace wetspell
