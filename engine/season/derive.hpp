// What follows from one visit's readings: the derived columns, worked out the same way for all.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"
#include "measure/three_readings.hpp"
#include "season/season.hpp"

#include <cstddef>
#include <optional>

namespace wetspell {

/// The mean of a visit's readings and what it is worth; see ReadingsMean.
struct MeanTemperature {
  double mean = 0;        ///< °C
  double spread = 0;      ///< °C; NaN with fewer than two readings
  double uncertainty = 0; ///< °C
  int read = 0;           ///< how many readings it rests on
};

/// SI. An empty optional: nothing typed, or it cannot be worked out (then the rules say why). Small, because
/// there is one for each visit.
struct DerivedVisit {
  std::optional<MeanTemperature> temperature;
  std::optional<Measured> depth;            ///< as measured; 0 for a pool without standing water
  std::optional<std::uint16_t> depth_class; ///< row of the class table, from the measured depth
  std::optional<std::uint16_t> fill_class;  ///< the same from the judged per cent
  std::optional<Measured> length;           ///< by tape, or paces times the person's pace
  std::optional<Measured> width;
  std::optional<Measured> area;
  double correlation = 0; ///< of the errors of length and width
};

/// Uncertainties (standard, rectangular unless said otherwise, in quadrature after GUM 5.1.2; the half-widths
/// are common practice, no source):
/// - every reading: the step of its last digit;
/// - depth by stick, line or an unnamed tool: 1 in either way for soft ground and for finding the deepest
///   point; by eye: a quarter of the depth;
/// - length and width by tape: 1 % (standard) for a line that is not straight or not quite the longest; by
///   eye: a quarter; already turned into a length from paces: 5 % (standard);
/// - "about": a tenth of the value more.
/// Depth: as typed; 0 where the water column says no standing water and no depth is typed (its uncertainty is
/// then not known, 0). The depth class follows from the depth; ranges and "over 48" have a class too.
/// Area and edge: errors of length and width are correlated as far as one person's pace serves both.
DerivedVisit derive(const Season& season, const Visit& visit);

/// Length around the ellipse on length and width. Apart from the rest because no rule asks for it and it
/// takes longer than all of them.
std::optional<Measured> edge_of(const DerivedVisit& derived);

/// A depth that was read by stick, line or an unnamed tool; it has one value.
Measured depth_by_stick(const Quantity& typed);

/// The greatest depth ever read in a pool, with the uncertainty of a reading by stick.
std::optional<Measured> deepest_ever(const Pool& pool);

/// How many paces or steps a length or width is, if it is a count: "12 paces", or a bare number where the
/// visit says that its size was found by paces (then counted in the person's own way).
struct LineCount {
  double count = 0;
  CountedAs counted = CountedAs::paces;
};
std::optional<LineCount> line_count(const Season& season, const Visit& visit, const Quantity& typed);

/// The person whose paces a visit's are: `paced_by`, or the visit's person when that is blank.
Ref pacer(const Visit& visit);

/// A visit's length or width in metres with its uncertainty: taped as typed, a count times the pace of
/// pacer(). Refuses in words: no calibration, a range, unreadable (bad_argument); blank, not measured
/// (not_enough).
Result<Measured> line_length(const Season& season, const Visit& visit, const Quantity& typed);

/// The cell a derived field shows, in season.unit(field), empty for nothing. Rounded to nearest, ties to
/// even: temperatures, depths and lengths to the decimals in which messages print that unit, areas to three
/// digits.
Cell derived_cell(const Season& season, const DerivedVisit& derived, Field field);

} // namespace wetspell
