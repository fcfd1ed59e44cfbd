// A visit's two lines, length and width: which is meant, how it was got, and how it stands in a sentence.
#pragma once

#include "check/rule.hpp"

#include <cmath>
#include <string>

namespace wetspell {

enum class Line : std::uint8_t { length, width };

inline Field field_of(Line line) {
  return line == Line::length ? Field::visit_length : Field::visit_width;
}
inline std::string_view word(Line line) {
  return line == Line::length ? "length" : "width";
}
inline Line other(Line line) {
  return line == Line::length ? Line::width : Line::length;
}
inline const Quantity& typed(const Visit& visit, Line line) {
  return line == Line::length ? visit.length : visit.width;
}
inline const std::optional<Measured>& metres(const DerivedVisit& derived, Line line) {
  return line == Line::length ? derived.length : derived.width;
}
/// What the pool's edge was at its fullest along this line.
inline const Quantity& fullest(const Pool& pool, Line line) {
  return line == Line::length ? pool.longest : pool.widest;
}

/// Whether the line stands there as a count of paces or steps. Most lines are seen at a glance not to.
inline bool counted(const Season& season, const Visit& visit, const Quantity& line) {
  return (visit.size_tool.is(SizeTool::paces) || line.status == Status::paces ||
          line.status == Status::steps) &&
         line_count(season, visit, line).has_value();
}
inline bool any_counted(const Season& season, const Visit& visit) {
  return counted(season, visit, visit.length) || counted(season, visit, visit.width);
}

/// The line as typed: "23 paces", "24 ft"; "nothing" where it is blank.
std::string line_words(const SeasonView& view, const Visit& visit, const Quantity& line);
/// "2026-03-10", or "an earlier visit" where the date cannot be read.
std::string day_words(const Quantity& date);

} // namespace wetspell
