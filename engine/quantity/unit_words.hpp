// The words and signs of units, as they stand in folded text.
#pragma once

#include "quantity/unit.hpp"

#include <optional>
#include <string_view>

namespace wetspell {

/// unit_named() for text that is folded already. Quotes and degree signs are left to the reader's grammar.
std::optional<Unit> unit_word(std::string_view folded);

} // namespace wetspell
