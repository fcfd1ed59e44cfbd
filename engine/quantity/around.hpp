// Words before and after a number: "about", "or more", "deep".
#pragma once

#include "quantity/unit.hpp"

#include <cstdint>
#include <optional>
#include <string_view>

namespace wetspell {

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
