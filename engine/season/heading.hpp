// Headings as people write them: the words, the unit in brackets, and the fields they can mean.
#pragma once

#include "season/field.hpp"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace wetspell {

/// A field that a heading can mean in one of the tables.
struct HeadingMatch {
  TableKind table;
  Field field;
  bool exact; ///< the catalogue's own heading, not one of the others
};

/// What stands in a heading cell.
struct Heading {
  std::span<const HeadingMatch> matches; ///< empty: no heading that is known
  Unit unit = Unit::none;                ///< "Depth (cm)", "Depth, cm", "Depth in cm"
};

/// Reads a heading: case, punctuation, line breaks and a trailing remark in brackets aside. A remark that is
/// a unit is told. "Depth (deepest\npoint)" is Depth.
Heading read_heading(std::string_view text);

/// The unit a cell names when it holds nothing else: "in", "(°F)", "[%]".
Unit lone_unit(std::string_view text);

} // namespace wetspell
