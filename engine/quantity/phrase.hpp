// Words that stand for a whole reading.
#pragma once

#include "quantity/quantity.hpp"
#include "quantity/unit.hpp"

#include <optional>
#include <string_view>

namespace wetspell {

/// Reads a folded text that is words from end to end ("dry", "n/a", "half full") as a quantity of `kind`;
/// nothing when these words mean nothing for the kind. `assume` is the unit of the zero that "dry" stands
/// for.
std::optional<Quantity> read_phrase(std::string_view folded, Kind kind, Unit assume);

} // namespace wetspell
