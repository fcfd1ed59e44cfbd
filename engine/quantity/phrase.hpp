// Words that stand for a whole reading, and words before and after a number.
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

/// What words around a number do to it.
enum class Around : std::uint8_t {
  about,
  over,
  under,
  between, ///< "between 24 and 26"
  from,    ///< "from 24 to 26"
  minus,
  nothing, ///< says again what the column is: "25 in deep"
};

std::optional<Around> word_before(std::string_view words);
std::optional<Around> word_after(std::string_view words, Kind kind);

} // namespace wetspell
