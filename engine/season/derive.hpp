// What follows from one visit's readings: the derived columns, worked out the same way for all.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"
#include "measure/three_readings.hpp"
#include "season/season.hpp"

#include <cstddef>
#include <optional>

namespace wetspell {

/// SI. An empty optional: nothing typed, or it cannot be worked out (then the rules say why).
struct DerivedVisit {
  std::optional<ReadingsMean> temperature;
  std::optional<Measured> depth;          ///< as measured; 0 for a pool without standing water
  std::optional<std::size_t> depth_class; ///< from the measured depth
  std::optional<std::size_t> fill_class;  ///< from the judged per cent
  std::optional<Measured> length;         ///< by tape, or paces times the person's pace
  std::optional<Measured> width;
  std::optional<Measured> area;
  std::optional<Measured> edge;
};

DerivedVisit derive(const Season& season, const Visit& visit);

/// A visit's length or width in metres with its uncertainty: taped as typed, paced by the pace of `paced_by`
/// (or of the visit's person). Refuses in words: no calibration, a range, unreadable.
Result<Measured> line_length(const Season& season, const Visit& visit, const Quantity& typed);

/// The cell a derived field shows, in the season's units, rounded as a field sheet would; empty for nothing.
Cell derived_cell(const Season& season, const DerivedVisit& derived, Field field);

} // namespace wetspell
